package curvestock.answer;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.BlockPlan;
import curvestock.helix.build.BlockScrews;
import curvestock.helix.build.Braces;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Riser;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** How tall, thin blocks are braced, in sentences. */
final class BraceWords {

  private final HelixPlan plan;
  private final Riser.WoodBlocks wood;
  private final boolean imperial;

  BraceWords(HelixPlan plan, Riser.WoodBlocks wood, Figures figures) {
    this.plan = plan;
    this.wood = wood;
    imperial = figures.isImperial();
  }

  /** Nothing where no block is tall and thin. */
  List<String> all() {
    BlockPlan blocks = plan.supports().blocks().orElseThrow();
    List<Braces.Brace> braces = plan.supports().braces().orElseThrow().all();
    List<String> lines = new ArrayList<>();
    if (!blocks.slender().isEmpty()) {
      lines.add(
          "These blocks are tall and thin: %s. Brace each pair across the track as you set it: hold a brace of the same wood (%s) flat against the two blocks, on the faces that you see looking along the track, from the foot of one to the top of the other. Mark what sticks out, take the brace down and saw it off. %s"
              .formatted(
                  blocks.slender().stream()
                      .map(BlockPlan.Block::id)
                      .collect(Collectors.joining(", ")),
                  wood.stock().isPresent() ? "on the cut list of boards" : "on the cut layouts",
                  fastened(BlockScrews.brace(wood, false))));
    }
    List<String> along =
        braces.stream()
            .filter(Braces.Brace::along)
            .map(
                brace ->
                    "one from the top of %s to %s"
                        .formatted(
                            brace.row().station().name(),
                            brace
                                .other()
                                .map(other -> "the foot of " + other.station().name())
                                .orElse("the base")))
            .distinct()
            .toList();
    if (!along.isEmpty()) {
      lines.add(
          "Brace %s along the track too, on the inside faces of the blocks, toward the middle of the roadbed: fix %s. Where two braces meet, trim one to fit. %s"
              .formatted(
                  inPairs(braces) ? "each row of blocks" : "these",
                  Figures.list(along),
                  fastened(BlockScrews.brace(wood, true))));
    }
    String alone = alone(blocks, braces);
    if (!alone.isEmpty()) {
      lines.add(
          "%s: nothing stands near enough to brace to. Brace to a wall or the benchwork."
              .formatted(alone));
    }
    return lines;
  }

  private String fastened(Optional<BlockScrews> screws) {
    return screws
        .map(
            size ->
                "At each end drill a %s hole through the brace and a %s pilot hole into the block, and screw the brace on dry with one %s screw. Glue it when the heights are right."
                    .formatted(size.clearanceHole(imperial), size.pilotHole(imperial), size.name()))
        .orElse(
            "Glue it when the heights are right, and clamp it until dry: a screw would split the wood.");
  }

  /** Whether those along the track stand at both edges everywhere. */
  private static boolean inPairs(List<Braces.Brace> braces) {
    return braces.stream()
        .filter(Braces.Brace::along)
        .allMatch(brace -> brace.row().edges() == SupportRow.Edges.BOTH);
  }

  /** Tall blocks that no brace holds. */
  private static String alone(BlockPlan blocks, List<Braces.Brace> braces) {
    return blocks.slender().stream()
        .flatMap(block -> block.rows().stream())
        .filter(row -> row.edges().supports() > 0)
        .filter(row -> braces.stream().noneMatch(brace -> brace.holds(row)))
        .map(BuildTables::place)
        .distinct()
        .collect(Collectors.joining(", "));
  }
}

package curvestock.answer;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What lies between the roadbed and its blocks, and so takes height from them. */
final class BlockTopWords {

  /** More supports than this are told by what they have in common. */
  private static final int NAMED = 12;

  private final HelixPlan plan;
  private final Figures figures;

  BlockTopWords(HelixPlan plan, Figures figures) {
    this.plan = plan;
    this.figures = figures;
  }

  /** Empty if the roadbed rests on the blocks everywhere. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    boolean cross = plan.spec().supports().riser().crossPiece().millimetres() > 0;
    if (cross) {
      lines.add(crossPieces(plan.spec().supports().riser().crossPiece()));
    }
    plates().ifPresent(thickness -> lines.add(plates(thickness, cross)));
    Set<String> partly =
        new TreeSet<>(
            Comparator.comparing((String name) -> name.replaceAll("\\d", ""))
                .thenComparingInt(name -> Integer.parseInt(name.replaceAll("\\D", ""))));
    if (plates().isPresent()) {
      plan.supports().partlyUnderPlates().forEach(row -> partly.add(row.station().name()));
    }
    if (!partly.isEmpty()) {
      lines.add(
          "Where the plate covers only part of the block it lies on, glue a scrap as thick as the plate beside it to fill the rest: %s."
              .formatted(
                  partly.size() > NAMED ? "see the footprint" : "at " + String.join(", ", partly)));
    }
    return lines;
  }

  private String crossPieces(Length thick) {
    boolean single =
        plan.supports().rows().stream()
            .map(SupportRow::edges)
            .anyMatch(edges -> edges == SupportRow.Edges.INNER || edges == SupportRow.Edges.OUTER);
    return "Glue a cross piece across the blocks of each support, under the roadbed; the block heights leave room for its %s.%s"
        .formatted(
            figures.given(thick), single ? " A block at one edge alone takes no cross piece." : "");
  }

  private String plates(Length thickness, boolean cross) {
    return "Where a splice plate lies on %s, the block there is shorter by the plate's %s."
        .formatted(cross ? "a cross piece" : "a block", figures.sawn(thickness));
  }

  private Optional<Length> plates() {
    return plan.spec().construction() instanceof Construction.ButtWithPlate butt
            && plan.spec().supports().riser() instanceof Riser.WoodBlocks
            && plan.supports().rows().stream().anyMatch(row -> row.plate().millimetres() > 0)
        ? Optional.of(butt.plate().thickness())
        : Optional.empty();
  }
}

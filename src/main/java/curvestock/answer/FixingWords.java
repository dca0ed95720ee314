package curvestock.answer;

import curvestock.helix.build.BlockPlan;
import curvestock.helix.build.BlockScrews;
import curvestock.helix.build.Joint;
import curvestock.helix.build.PieceKind;
import curvestock.helix.build.SidePlates;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Where to drill, and how joints and supports are fastened, in sentences. */
public final class FixingWords {

  /** Less of a screw in a lap's lower half holds nothing: our own choice. */
  private static final Length LEAST_IN_LAP = Length.ofMillimetres(2);

  /** Where rods are joined. */
  static final String COUPLED =
      "A rod longer than the stock is cut in parts, 1 the lowest, joined by a coupling nut at the height in the table of rods: never in wood or where a nut sits. Screw both parts in to the nut's middle, once the nuts of the turns below are on the lower part.";

  private final Building helix;
  private final HelixSpec spec;
  private final Figures figures;

  public FixingWords(Building helix, Figures figures) {
    this.helix = helix;
    this.spec = helix.plan().spec();
    this.figures = figures;
  }

  /** Everything, the holes first. */
  public List<String> all() {
    List<String> lines = new ArrayList<>();
    lines.add(holes());
    if (spec.supports().riser() instanceof Riser.WoodBlocks wood) {
      lines.add(blocks(wood));
    } else {
      platesOnRods().ifPresent(lines::add);
    }
    lines.add(joints());
    return lines;
  }

  /** Plates are cut alike, so none has the hole that only some of them need. */
  private Optional<String> platesOnRods() {
    String names =
        helix.plan().supports().rows().stream()
            .filter(row -> row.plate().millimetres() > 0)
            .map(row -> row.station().name())
            .distinct()
            .collect(Collectors.joining(", "));
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "At %s the rods pass through splice plates: fix the plate, then drill on through it from the holes in the roadbed. The heights of the lower nuts leave room for the plate."
                .formatted(names));
  }

  private String holes() {
    int holes =
        helix.plan().roadbed().kinds().stream()
            .map(PieceKind::holes)
            .mapToInt(List::size)
            .max()
            .orElse(0);
    boolean inParts =
        helix.plan().demands().stream()
            .anyMatch(demand -> !demand.piece().shape().outline().holes().isEmpty());
    return holes == 0 && !inParts
        ? "The layouts have no screw holes: drill as you assemble."
        : "Drill the holes that the layouts show before a piece leaves its sheet.";
  }

  /** The size of screw is a rule of thumb, as no job names one: common practice, no source. */
  private String blocks(Riser.WoodBlocks wood) {
    if (!BlockScrews.hold(wood)) {
      return "Blocks: glue both ends, weigh the roadbed down until it is dry, and use no screws: wood this"
          + " narrow splits. (Rule of thumb.)";
    }
    BlockScrews down = BlockScrews.down(spec, wood);
    BlockScrews foot = BlockScrews.foot(wood);
    boolean across = wood.crossPiece().millimetres() > 0;
    boolean plated =
        helix.plan().supports().rows().stream().anyMatch(row -> row.plate().millimetres() > 0);
    return "Blocks: glue both ends. Drill a "
        + down.clearanceHole(figures.isImperial())
        + " clearance hole through the roadbed"
        + (plated
            ? across
                ? ", any splice plate and the cross piece under it, "
                : " and any splice plate under it, "
            : across ? " and the cross piece under it, " : ", ")
        + figures.length(wood.width().times(0.5))
        + " from the roadbed's edge"
        + (single() ? " (where a single block stands in the middle, drill there)" : "")
        + " on the line of the support, then a "
        + down.pilotHole(figures.isImperial())
        + " pilot hole into the block, as deep as the screw goes. Countersink, and drive one "
        + down.name()
        + " screw down into each block."
        + atSeams(wood)
        + " Drive one more"
        + (down.equals(foot) ? "" : ", " + foot.name() + ",")
        + " at an angle down through the foot of each block that stands on the base; drill for it the same"
        + " way."
        + otherBlocks(wood, down)
        + " (Rule of thumb; your job names no screws.)";
  }

  /** Whether some block stands alone in the middle of the roadbed. */
  private boolean single() {
    return helix.plan().supports().rows().stream()
        .anyMatch(row -> row.edges() == SupportRow.Edges.MIDDLE);
  }

  /** Where two pieces butt on a block, a screw in the middle would hold neither. */
  private String atSeams(Riser.WoodBlocks wood) {
    return blocks().stream()
            .allMatch(block -> BlockScrews.atSeams(spec, wood, helix.plan().joints(), block) == 0)
        ? ""
        : " Where a joint sits on a block, drive two, one down through each piece, "
            + figures.length(wood.along().times(0.25))
            + " from the seam.";
  }

  private List<BlockPlan.Block> blocks() {
    return helix.plan().supports().blocks().orElseThrow().blocks();
  }

  /** Blocks that a plate lies on, or so low that the screw would come out below. */
  private String otherBlocks(Riser.WoodBlocks wood, BlockScrews usual) {
    Map<String, List<String>> longer = new LinkedHashMap<>();
    Map<String, List<String>> shorter = new LinkedHashMap<>();
    for (BlockPlan.Block block : blocks()) {
      Optional<BlockScrews> size = BlockScrews.down(spec, wood, block);
      if (!size.equals(Optional.of(usual))) {
        boolean more = size.filter(each -> each.length().compareTo(usual.length()) > 0).isPresent();
        (more ? longer : shorter)
            .computeIfAbsent(
                size.map(each -> sized(each, usual)).orElse("glue alone"), key -> new ArrayList<>())
            .add(block.id());
      }
    }
    String less =
        wood.crossPiece().millimetres() > 0
            ? " Low blocks, and those without a cross piece, take less: "
            : " Low blocks take less: ";
    return told(" A block with a splice plate on it takes a longer screw: ", longer)
        + told(less, shorter);
  }

  /** With the holes, where they are not the usual ones. */
  private String sized(BlockScrews size, BlockScrews usual) {
    boolean imperial = figures.isImperial();
    String hole = size.clearanceHole(imperial);
    return "a "
        + size.name()
        + " screw"
        + (hole.equals(usual.clearanceHole(imperial))
            ? ""
            : " (holes of " + hole + " and " + size.pilotHole(imperial) + ")");
  }

  private static String told(String opening, Map<String, List<String>> blocks) {
    return blocks.isEmpty()
        ? ""
        : blocks.entrySet().stream()
            .map(
                each ->
                    String.join(", ", each.getValue())
                        + (each.getValue().size() == 1 ? " takes " : " take ")
                        + each.getKey())
            .collect(Collectors.joining("; ", opening, "."));
  }

  /** Joints whose lap a block's screw goes through. */
  private int onBlocks() {
    return spec.supports().riser() instanceof Riser.WoodBlocks
            && spec.construction() instanceof Construction.HalfLap half
        ? helix
            .plan()
            .stations()
            .jointsOnStations(helix.plan().joints(), half.lap().millimetres() / 2)
            .size()
        : 0;
  }

  /** A screw passes the upper half and must not come out of the lower. */
  private String lapScrews() {
    Length longest = spec.plywood().minus(BlockScrews.SKIN);
    if (longest.minus(spec.plywood().times(0.5)).compareTo(LEAST_IN_LAP) < 0) {
      return " Use no screws: in plywood this thin none holds without coming through.";
    }
    return " If you screw a lap%s, use screws shorter than %s so that none comes through."
        .formatted(
            spec.supports().riser() instanceof Riser.WoodBlocks
                ? " that has no block under it"
                : "",
            figures.atMost(longest));
  }

  private String joints() {
    Construction construction = spec.construction();
    if (construction instanceof Construction.HalfLap) {
      return "Half-laps: glue and clamp until dry."
          + (onBlocks() > 0
              ? " Where a joint sits on a block, the block's screw goes down through both halves of"
                  + " the lap into the block, and the lap needs no other screw."
              : "")
          + (onBlocks() < helix.plan().joints().all().size() ? lapScrews() : "")
          + " (Rule of thumb.)";
    }
    if (construction instanceof Construction.ButtWithPlate butt) {
      Optional<BlockScrews> screw =
          BlockScrews.plate(butt.plate(), spec.plywood(), figures.isImperial());
      return "Joints: drill %s holes through the plates, and %spilot holes into the roadbed, not through it. On the bench, glue each plate under the upper end of a piece, with %s up through it. When you glue the turn, glue the next piece onto it and drive %s more up from below, with a short screwdriver. %s%s could come through the top."
          .formatted(
              figures.given(butt.plate().screwHole()),
              screw.map(each -> each.pilotHole(figures.isImperial()) + " ").orElse(""),
              Figures.count(butt.plate().screwsEachSide(), "screw"),
              butt.plate().screwsEachSide(),
              screw
                  .map(each -> "Use " + each.name() + " screws: any longer than ")
                  .orElse("Screws longer than "),
              figures.atMost(BlockScrews.mostThrough(butt.plate(), spec.plywood())));
    }
    return construction instanceof Construction.TwoLayers
        ? "Layers: glue them face to face over the whole surface and clamp until dry, or screw them"
            + " while the glue dries."
        : helix.plan().sidePlates().map(this::sidePlates).orElse("");
  }

  /** How a straight plate is fitted to a round edge is common practice, no source. */
  private String sidePlates(SidePlates plates) {
    Length up = plates.plate().height().minus(spec.stack().plywood());
    return "Joints: glue a side plate to each edge, its middle at the joint and its lower edge flush with the underside%s, and clamp until dry.%s%s"
        .formatted(
            up.millimetres() > 0
                ? ", so that it stands up %s beside the track".formatted(figures.length(up))
                : "",
            plates.needShaping() ? " " + shaped(plates) : "",
            replaced(plates));
  }

  private String shaped(SidePlates plates) {
    String gaps =
        "The plates are straight and the edges are not: a plate stands off %s at both its ends at the outer edge, and %s in its middle at the inner edge. Glue does not fill that."
            .formatted(figures.length(plates.gap(true)), figures.length(plates.gap(false)));
    return gaps
        + (plates.needLayers()
            ? " Shaping would take over half of the plate's thickness, so build each plate up of thin layers bent round the edge, glued one after the other."
            : " Lay the piece on the plate's long edge, where the plate goes, and trace the piece's edge onto it. Clamp the plate and saw or sand its face to that line. It is still %s thick at its thinnest."
                .formatted(figures.length(plates.thinnest())))
        + " Dry-fit: no gap, no rocking. (Rule of thumb.)";
  }

  private static String replaced(SidePlates plates) {
    String told = "";
    for (boolean outer : new boolean[] {true, false}) {
      List<Joint> joints = plates.replaced(outer);
      if (!joints.isEmpty()) {
        told +=
            " No side plate at the %s edge at %s: the edge strip runs past the joint there and does its work."
                .formatted(
                    outer ? "outer" : "inner",
                    joints.stream().map(Joint::name).collect(Collectors.joining(", ")));
      }
    }
    return plates.shortenSome()
        ? told + " Where an edge strip would run into a side plate, end the strip at the plate."
        : told;
  }
}

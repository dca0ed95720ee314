package curvestock.answer;

import curvestock.helix.build.PieceKind;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Where to drill, and how joints and supports are fastened, in sentences. */
public final class FixingWords {

  /** What the thread of a screw must not come out of; our own choice. */
  private static final Length SKIN = Length.ofMillimetres(3);

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
    }
    lines.add(joints());
    return lines;
  }

  private String holes() {
    int holes =
        helix.plan().roadbed().kinds().stream()
            .map(PieceKind::holes)
            .mapToInt(List::size)
            .max()
            .orElse(0);
    return holes == 0
        ? "No holes are cut in the sheets: drill for screws as you assemble."
        : "Drill the holes that the layouts show before a piece leaves its sheet.";
  }

  /** The size of screw is a rule of thumb, as no job names one: common practice, no source. */
  private String blocks(Riser.WoodBlocks wood) {
    boolean inches = figures.isImperial();
    return "Blocks: glue both ends, and drive one "
        + (inches ? "No. 8 × 1 1/2 in" : "4 × 40 mm")
        + " screw down through the roadbed into each. Drill "
        + (inches ? "3/16 in" : "4.5 mm")
        + " through the roadbed, "
        + figures.length(wood.width().times(0.5))
        + " from its edge on the line of the support, and "
        + (inches ? "3/32 in" : "2.5 mm")
        + " into the block. Countersink it, so that the head is below the surface. Fasten the lowest"
        + " blocks to the base with screws driven at an angle, or with a cleat. (Rule of thumb; your"
        + " job names no screws.)";
  }

  private String joints() {
    Construction construction = spec.construction();
    if (construction instanceof Construction.HalfLap) {
      return "Half-laps: glue and clamp until dry. If you screw them together as well, use screws"
          + " shorter than "
          + figures.atMost(spec.plywood().minus(SKIN))
          + " so that none comes through. (Rule of thumb.)"
          + (spec.supports().riser() instanceof Riser.WoodBlocks
              ? " Where a lap sits on blocks, the screws into the blocks go through it once the glue is"
                  + " dry."
              : "");
    }
    if (construction instanceof Construction.ButtWithPlate butt) {
      return "Joints: glue the plate under both pieces and drive "
          + Figures.count(butt.plate().screwsEachSide(), "screw")
          + " into each, shorter than "
          + figures.atMost(spec.plywood().plus(butt.plate().thickness()).minus(SKIN))
          + " so that none comes through. Holes of "
          + figures.given(butt.plate().screwHole())
          + ".";
    }
    return construction instanceof Construction.TwoLayers
        ? "Layers: glue them face to face over the whole surface and clamp until dry, or screw them"
            + " while the glue dries."
        : "Joints: glue the side plates to both edges and clamp until dry.";
  }
}

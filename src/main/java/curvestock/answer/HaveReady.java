package curvestock.answer;

import curvestock.helix.build.BlockScrews;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.sheet.Cutting;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Tools and consumables that the steps of the papers ask for, and only those; not counted and not
 * priced.
 */
public final class HaveReady {

  /** The thinnest common router bit: common practice, no source. */
  private static final Length THINNEST_BIT = Length.ofMillimetres(3);

  private final Figures figures;
  private final Optional<Building> helix;
  private final Cutting cutting;

  public HaveReady(Answer answer, Cutting cutting) {
    this.cutting = cutting;
    this.figures = answer.figures();
    this.helix = answer.building();
  }

  /** What cuts between pieces that lie so near; gaps for a laser are too narrow for a router. */
  public static String cutter(Cutting cutting) {
    return takesBit(cutting) ? "bit or blade" : "blade or laser beam";
  }

  private static boolean takesBit(Cutting cutting) {
    return cutting.spacing().compareTo(THINNEST_BIT) >= 0;
  }

  /** A line for each kind of work. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "To protect yourself: safety glasses, hearing protection, a dust mask and an extractor.");
    lines.add(
        "To mark out: caliper for the thickness, tape measure, straightedge, square, pencil, a trammel (trammel.pdf), scrap plywood for"
            + " pivots, double-sided tape.");
    lines.add(
        "To cut: sawhorses and scrap boards; circular saw and guide for straight cuts; %s; spare blades or bits; clamps; a file or sandpaper for the edges; tape or glue stick for full-size patterns."
            .formatted(
                takesBit(cutting)
                    ? "jigsaw, or router with a straight bit no wider than the gap between pieces; a bearing bit if you cut to a template"
                    : "jigsaw with a blade that cuts no wider than the gap between pieces (a gap too narrow for a router bit)"));
    helix.ifPresent(building -> lines.add(toBuild(building.plan().spec(), building)));
    return lines;
  }

  private String toBuild(HelixSpec spec, Building building) {
    List<String> things = new ArrayList<>(List.of("tape measure", "level"));
    if (spec.supports().riser() instanceof Riser.WoodBlocks wood) {
      things.add("mitre saw with a stop");
      if (!BlockScrews.hold(wood)) {
        things.add("drill");
      } else {
        things.add(
            "drill with %s bits and a countersink"
                .formatted(
                    Figures.list(
                        Stream.concat(
                                building.plan().supports().blocks().orElseThrow().blocks().stream()
                                    .flatMap(block -> BlockScrews.down(spec, wood, block).stream())
                                    .flatMap(
                                        size ->
                                            Stream.of(
                                                size.clearanceHole(figures.isImperial()),
                                                size.pilotHole(figures.isImperial()))),
                                spec.construction() instanceof Construction.ButtWithPlate butt
                                    ? Stream.of(figures.given(butt.plate().screwHole()))
                                    : Stream.empty())
                            .distinct()
                            .toList())));
        things.add("screwdriver");
      }
    } else {
      things.add("drill");
      things.add("hacksaw and file for the rods");
      things.add("two wrenches for the nuts");
      if (spec.construction() instanceof Construction.ButtWithPlate) {
        things.add("screwdriver");
      }
    }
    if (spec.construction() instanceof Construction.HalfLap) {
      things.add("chisel or router for the laps");
    }
    things.add("glue brush and rags");
    things.add(
        building.plan().stations().hasStrips()
            ? "clamps for the joints and the edge strips"
            : "clamps for the joints");
    things.add("pencil for the numbers");
    return "To build: " + String.join(", ", things) + ".";
  }
}

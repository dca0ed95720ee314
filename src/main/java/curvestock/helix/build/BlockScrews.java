package curvestock.helix.build;

import curvestock.helix.build.BlockPlan.Block;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser.WoodBlocks;
import curvestock.helix.spec.SplicePlate;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Wood screws: those that hold a riser block to the roadbed on it, to the base and to its braces,
 * and those up through a splice plate. Their sizes are a rule of thumb, as no job names one: common
 * practice, no source.
 *
 * @param gauge as asked for in a shop: {@code No. 8} or {@code 4}, of millimetres
 * @param length from the head's flat side to the point
 * @param inches whether the shop sells by the inch
 */
public record BlockScrews(String gauge, Length length, boolean inches) {

  /** What the thread of a screw must not come out of; our own choice. */
  public static final Length SKIN = Length.ofMillimetres(3);

  /** In the block, 3/4 in or 20 mm: common practice, no source. */
  private static final double BITE_INCHES = 0.75;

  private static final double BITE_METRIC = 20;

  /** Less holds nothing: our own choice. */
  private static final Length LEAST_BITE = Length.ofMillimetres(9);

  /** Narrower wood splits at a screw: our own choice. */
  private static final Length NARROWEST = Length.ofMillimetres(12);

  /** As sold, in inches and in millimetres, with their gauges. From memory. */
  private static final List<BlockScrews> SOLD_BY_INCH =
      List.of(
          inch("No. 6", 0.75),
          inch("No. 6", 1),
          inch("No. 8", 1.25),
          inch("No. 8", 1.5),
          inch("No. 8", 1.75),
          inch("No. 8", 2),
          inch("No. 8", 2.5),
          inch("No. 8", 3),
          inch("No. 10", 3.5),
          inch("No. 10", 4),
          inch("No. 10", 5),
          inch("No. 10", 6));

  private static final List<BlockScrews> SOLD_BY_MILLIMETRE =
      List.of(
          metric("3", 16),
          metric("3", 20),
          metric("3.5", 25),
          metric("3.5", 30),
          metric("4", 35),
          metric("4", 40),
          metric("4", 45),
          metric("4", 50),
          metric("4", 60),
          metric("4", 70),
          metric("5", 80),
          metric("5", 90),
          metric("5", 100),
          metric("5", 120),
          metric("5", 160));

  /** Thread diameters of Nos. 4 to 10, in mm: 0.060 in and 0.013 in a number. From memory. */
  private static final Map<String, Double> NUMBERS =
      Map.of("No. 4", 2.84, "No. 6", 3.51, "No. 8", 4.17, "No. 10", 4.83);

  private static final Map<String, Double> METRIC =
      Map.of("2.5", 2.5, "3", 3.0, "3.5", 3.5, "4", 4.0, "4.5", 4.5, "5", 5.0);

  /** Common lengths that are sold in all these gauges; from memory. */
  private static final List<Length> SHORT_INCHES =
      Stream.of(0.5, 0.625, 0.75, 1.0, 1.25, 1.5).map(Length::ofInches).toList();

  private static final List<Length> SHORT_METRIC =
      Stream.of(12, 16, 20, 25, 30, 35, 40).map(Length::ofMillimetres).toList();

  private static BlockScrews inch(String gauge, double length) {
    return new BlockScrews(gauge, Length.ofInches(length), true);
  }

  private static BlockScrews metric(String gauge, double length) {
    return new BlockScrews(gauge, Length.ofMillimetres(length), false);
  }

  /** Whether the wood is wide enough for screws; else it is glued alone. */
  public static boolean hold(WoodBlocks blocks) {
    return blocks.width().compareTo(NARROWEST) >= 0;
  }

  /** The usual one, at an angle through a block's foot. */
  public static BlockScrews foot(WoodBlocks blocks) {
    return blocks.inches() ? inch("No. 8", 1.5) : metric("4", 40);
  }

  /** The usual one, down through the roadbed and a cross piece under it. */
  public static BlockScrews down(HelixSpec spec, WoodBlocks blocks) {
    return biting(spec.plywood().plus(blocks.crossPiece()), blocks);
  }

  /**
   * Down through all that lies on a block: shorter where it would come out below; empty where none
   * would hold.
   */
  public static Optional<BlockScrews> down(HelixSpec spec, WoodBlocks blocks, Block block) {
    Length above = spec.plywood().plus(block.between());
    return hold(blocks)
        ? through(above, block.height(), biting(above, blocks).length(), blocks)
        : Optional.empty();
  }

  /**
   * The thickest that slips through the hole of a splice plate, and the longest that stays inside
   * the roadbed; empty where none would hold.
   */
  public static Optional<BlockScrews> plate(SplicePlate plate, Length plywood, boolean inches) {
    Length most = mostThrough(plate, plywood);
    Length least = plate.thickness().plus(LEAST_BITE.times(0.5));
    Optional<Length> length =
        (inches ? SHORT_INCHES : SHORT_METRIC)
            .stream()
                .filter(each -> each.compareTo(most) < 0 && each.compareTo(least) >= 0)
                .reduce((shorter, longer) -> longer);
    Optional<String> gauge =
        (inches ? NUMBERS : METRIC)
            .entrySet().stream()
                .filter(each -> each.getValue() < plate.screwHole().millimetres())
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey);
    return gauge.flatMap(thick -> length.map(longest -> new BlockScrews(thick, longest, inches)));
  }

  /** A longer one, up through a splice plate, could come out on top. */
  public static Length mostThrough(SplicePlate plate, Length plywood) {
    return plywood.plus(plate.thickness()).minus(SKIN);
  }

  /** The shortest that bites as it should below what it passes. */
  private static BlockScrews biting(Length above, WoodBlocks blocks) {
    Length wanted = above.plus(bite(blocks)).longer(foot(blocks).length());
    List<BlockScrews> sold = sold(blocks);
    return sold.stream()
        .filter(each -> each.length().compareTo(wanted) >= 0)
        .findFirst()
        .orElse(sold.get(sold.size() - 1));
  }

  /**
   * How many blocks of one kind a butt joint sits on: each takes a second screw, so that each piece
   * has one. A lap's halves share one.
   */
  public static long atSeams(HelixSpec spec, WoodBlocks blocks, Joints joints, Block block) {
    boolean butt =
        spec.construction() instanceof Construction.ButtWithPlate
            || spec.construction() instanceof Construction.PlatesBeside;
    double reach = blocks.along().millimetres() / 2;
    return butt && hold(blocks)
        ? block.rows().stream()
            .filter(
                row ->
                    joints.all().stream()
                        .anyMatch(joint -> Math.abs(joint.at() - row.at()) < reach / 2))
            .mapToLong(row -> row.edges().supports())
            .sum()
        : 0;
  }

  /**
   * Through a brace of the same wood, laid flat, into a block; empty where it is glued alone.
   *
   * @param along whether it lies on the face that looks across the track, as under a lead
   */
  public static Optional<BlockScrews> brace(WoodBlocks blocks, boolean along) {
    Length flat = blocks.width().compareTo(blocks.along()) < 0 ? blocks.width() : blocks.along();
    Length into = along ? blocks.width() : blocks.along();
    return hold(blocks) ? through(flat, into, flat.plus(bite(blocks)), blocks) : Optional.empty();
  }

  /** As long as wanted or the longest that stays inside. */
  private static Optional<BlockScrews> through(
      Length thickness, Length into, Length wanted, WoodBlocks blocks) {
    Length most = thickness.plus(into).minus(SKIN);
    List<BlockScrews> fitting =
        sold(blocks).stream()
            .filter(each -> each.length().compareTo(most) <= 0)
            .filter(each -> each.length().compareTo(thickness.plus(LEAST_BITE)) >= 0)
            .toList();
    return fitting.stream()
        .filter(each -> each.length().compareTo(wanted) >= 0)
        .findFirst()
        .or(() -> fitting.stream().reduce((shorter, longer) -> longer));
  }

  private static Length bite(WoodBlocks blocks) {
    return blocks.inches() ? Length.ofInches(BITE_INCHES) : Length.ofMillimetres(BITE_METRIC);
  }

  private static List<BlockScrews> sold(WoodBlocks blocks) {
    return blocks.inches() ? SOLD_BY_INCH : SOLD_BY_MILLIMETRE;
  }

  /** As asked for in a shop: {@code No. 8 × 1 1/2 in}, {@code 4 × 40 mm}. */
  public String name() {
    LengthStyle style = inches ? LengthStyle.INCH_FRACTIONS : LengthStyle.METRIC;
    return gauge + " × " + style.format(length);
  }

  /** Of the hole through what lies on the block, in the unit of print. */
  public String clearanceHole(boolean imperial) {
    return isThick() ? imperial ? "13/64 in" : "5.5 mm" : imperial ? "3/16 in" : "4.5 mm";
  }

  /** Of the hole for the thread, in the unit of print. */
  public String pilotHole(boolean imperial) {
    return isThick()
        ? imperial ? "7/64 in" : "3 mm"
        : List.of("No. 4", "2.5", "3").contains(gauge)
            ? imperial ? "1/16 in" : "1.5 mm"
            : imperial ? "3/32 in" : "2.5 mm";
  }

  private boolean isThick() {
    return gauge.equals("No. 10") || gauge.equals("5");
  }
}

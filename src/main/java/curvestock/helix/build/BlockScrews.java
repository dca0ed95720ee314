package curvestock.helix.build;

import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser.WoodBlocks;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The screws that hold a riser block to the roadbed on it and to the base. Their sizes are a rule
 * of thumb, as no job names one: common practice, no source.
 *
 * @param gauge as asked for in a shop: {@code No. 8} or {@code 4}, of millimetres
 * @param length from the head's flat side to the point
 * @param inches whether the shop sells by the inch
 */
public record BlockScrews(String gauge, Length length, boolean inches) {

  /** What the thread of a screw must not come out of; our own choice. */
  public static final Length SKIN = Length.ofMillimetres(3);

  /** In the block at least, 3/4 in or 20 mm: common practice, no source. */
  private static final double BITE_INCHES = 0.75;

  private static final double BITE_METRIC = 20;

  /** As sold, from the usual one on; longer ones are thicker. From memory. */
  private static final List<Double> INCHES = List.of(1.5, 1.75, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0, 6.0);

  private static final List<Double> METRIC =
      List.of(40.0, 45.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0, 120.0, 160.0);

  private static final double THIN_TO_INCHES = 3;
  private static final double THIN_TO_METRIC = 70;

  /** At an angle through a block's foot. */
  public static BlockScrews foot(WoodBlocks blocks) {
    return atLeast(Length.ZERO, blocks.inches());
  }

  /** Down through all that lies on a block: the shortest that bites as it should. */
  public static BlockScrews down(HelixSpec spec, WoodBlocks blocks) {
    return through(above(spec, blocks), blocks.inches());
  }

  /** Through a brace of the same wood, laid flat, into a block. */
  public static BlockScrews brace(WoodBlocks blocks) {
    boolean flat = blocks.width().compareTo(blocks.along()) < 0;
    return through(flat ? blocks.width() : blocks.along(), blocks.inches());
  }

  private static BlockScrews through(Length thickness, boolean inches) {
    Length bite = inches ? Length.ofInches(BITE_INCHES) : Length.ofMillimetres(BITE_METRIC);
    return atLeast(thickness.plus(bite), inches);
  }

  /** What a screw passes before it reaches the block: the roadbed and a cross piece under it. */
  public static Length above(HelixSpec spec, WoodBlocks blocks) {
    return spec.plywood().plus(blocks.crossPiece());
  }

  private static BlockScrews atLeast(Length wanted, boolean inches) {
    List<Double> sold = inches ? INCHES : METRIC;
    double least = inches ? wanted.inches() : wanted.millimetres();
    double longest = sold.get(sold.size() - 1);
    double size =
        DoubleStream.of(sold.stream().mapToDouble(Double::doubleValue).toArray())
            .filter(each -> each >= least - 1e-6)
            .findFirst()
            .orElse(longest);
    return inches
        ? new BlockScrews(size > THIN_TO_INCHES ? "No. 10" : "No. 8", Length.ofInches(size), true)
        : new BlockScrews(size > THIN_TO_METRIC ? "5" : "4", Length.ofMillimetres(size), false);
  }

  /** As asked for in a shop: {@code No. 8 × 1 1/2 in}, {@code 4 × 40 mm}. */
  public String name() {
    LengthStyle style = inches ? LengthStyle.INCH_FRACTIONS : LengthStyle.METRIC;
    return gauge + " × " + style.format(length);
  }

  /** Of the hole through what lies on the block, in the unit of print. */
  public String clearanceHole(boolean imperial) {
    return isThin() ? imperial ? "3/16 in" : "4.5 mm" : imperial ? "13/64 in" : "5.5 mm";
  }

  /** Of the hole for the thread, in the unit of print. */
  public String pilotHole(boolean imperial) {
    return isThin() ? imperial ? "3/32 in" : "2.5 mm" : imperial ? "7/64 in" : "3 mm";
  }

  private boolean isThin() {
    return gauge.equals("No. 8") || gauge.equals("4");
  }
}

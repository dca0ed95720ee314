package curvestock.compare;

import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import java.util.List;

/**
 * Turns per sheet against the segment's angle, by regular patterns.
 *
 * @param sheet the main sheet
 * @param samples by rising angle; between two of them with the same count the count was not seen to
 *     change
 * @param bestForSheet most turns per sheet
 * @param front fewest pieces for the whole helix for each number of sheets; fewer pieces with every
 *     sheet more
 * @param bestForJob the one of them that costs least, sheets and joints together
 */
public record AngleScan(
    SheetStock sheet,
    List<Sample> samples,
    Sample bestForSheet,
    List<ForJob> front,
    ForJob bestForJob) {

  /** How many of a segment a regular pattern lays on the sheet. */
  public record Sample(Angle angle, int perSheet) {

    public double turnsPerSheet() {
      return perSheet * angle.degrees() / 360;
    }
  }

  /** What an angle comes to for the whole helix. */
  public record ForJob(Sample sample, int pieces, int sheets) {}

  public AngleScan {
    samples = List.copyOf(samples);
    front = List.copyOf(front);
  }

  /**
   * Where one piece fewer fits as the angle grows: the largest angle found for each number of
   * pieces, in tenths of a degree.
   */
  public List<Sample> steps() {
    return java.util.stream.IntStream.range(0, samples.size() - 1)
        .filter(i -> samples.get(i + 1).perSheet() < samples.get(i).perSheet())
        .mapToObj(samples::get)
        .toList();
  }
}

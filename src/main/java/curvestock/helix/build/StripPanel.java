package curvestock.helix.build;

import curvestock.units.Length;
import curvestock.units.LengthStyle;

/**
 * The thin panel that the layers of edge strips are cut from, so that they bend: the strips lie
 * across its face grain, side by side, a saw cut between two.
 *
 * @param rows how many lie end to end
 * @param across the panel's size across the face grain
 * @param along its size along the face grain
 */
record StripPanel(int rows, Length across, Length along) {

  /** A panel of 4 × 8 ft, the grain along its length: strips are not to need more of it. */
  private static final Length SOLD_ACROSS = Length.ofInches(48);

  private static final Length SOLD_ALONG = Length.ofInches(96);

  /** The least panel for so many layers; end to end only where one row would be too long. */
  static StripPanel of(long layers, Bridge.Cut cut, LengthStyle style) {
    Length saw = saw(style);
    int most = Math.max(1, fits(SOLD_ACROSS, cut.length(), saw));
    int abreast = Math.max(1, fits(SOLD_ALONG, cut.depth(), saw));
    int rows = (int) Math.min(most, (layers + abreast - 1) / abreast);
    int columns = Math.toIntExact((layers + rows - 1) / rows);
    return new StripPanel(rows, with(cut.length(), rows, saw), with(cut.depth(), columns, saw));
  }

  private static Length saw(LengthStyle style) {
    return style.unit().isImperial() ? Length.ofInches(1.0 / 8) : Length.ofMillimetres(3);
  }

  private static int fits(Length room, Length each, Length saw) {
    return (int) Math.floor(room.plus(saw).millimetres() / each.plus(saw).millimetres() + 1e-9);
  }

  private static Length with(Length each, int count, Length saw) {
    return each.times(count).plus(saw.times(count - 1));
  }

  String words(LengthStyle style) {
    return "they need a thin panel, %s across its face grain and %s along it, with %s for each saw cut"
        .formatted(
            style.formatGiven(across), style.formatGiven(along), style.formatGiven(saw(style)));
  }
}

package curvestock.drawing;

/** How a part too small for its whole name is called on a picture. */
public final class ShortName {

  /** How it is read. */
  public static final String LEGEND =
      "Parts too small for their whole name show it short: 34-2 for block-34-2, br3-1 for brace-3-1, p5 for plate-5.";

  private ShortName() {}

  /** {@code 34-2} for block-34-2, {@code p5} for plate-5; other names as they are. */
  public static String of(String name) {
    return name.replaceFirst("^block-|^(br)ace-|^(p)late-", "$1$2");
  }
}

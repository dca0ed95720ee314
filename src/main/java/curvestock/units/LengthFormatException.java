package curvestock.units;

/** Says that a text is not a length, what it was, and what is accepted instead. */
public final class LengthFormatException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** The forms that are read, for messages and help texts. */
  public static final String ACCEPTED =
      "a number with a unit, such as \"27.5 in\", \"27 1/2 in\", \"2 ft 3 1/2 in\", \"8 ft\","
          + " \"700 mm\", \"70 cm\" or \"1.22 m\"";

  private static final int LONGEST_SHOWN = 40;

  LengthFormatException(String text, String problem) {
    super("\"" + shorten(text) + "\" is not a length (" + problem + "); write " + ACCEPTED);
  }

  private static String shorten(String text) {
    // A message is one line, whatever was given.
    String line = text.replaceAll("\\p{Cntrl}+", " ");
    return line.length() <= LONGEST_SHOWN ? line : line.substring(0, LONGEST_SHOWN) + "...";
  }
}

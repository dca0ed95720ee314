package curvestock.report;

import java.util.Locale;

/** Names of the files of one sheet in the result folder. */
public final class SheetFiles {

  private SheetFiles() {}

  /** The drawing for people: everything, with numbers and title block. */
  public static String annotated(int number) {
    return String.format(Locale.ROOT, "sheets/sheet-%02d.svg", number);
  }

  /** The drawing for machines: outlines and marks only, exactly as large as the sheet. */
  public static String clean(int number) {
    return String.format(Locale.ROOT, "sheets/sheet-%02d-cut.svg", number);
  }

  /** The picture for looking at. */
  public static String picture(int number) {
    return String.format(Locale.ROOT, "sheets/sheet-%02d.png", number);
  }
}

package curvestock.report;

import curvestock.machine.MachineSetup;
import java.util.Locale;

/** Names of the files of one sheet in the result folder. */
public final class SheetFiles {

  private SheetFiles() {}

  /** The drawing for people: everything, with numbers and title block. */
  public static String annotated(int number) {
    return String.format(Locale.ROOT, "sheets/sheet-%02d.svg", number);
  }

  /** The SVG for machines, exactly as large as the sheet; its name says if outlines are offset. */
  public static String clean(int number, MachineSetup setup) {
    return cut(String.format(Locale.ROOT, "sheets/sheet-%02d-", number), setup) + ".svg";
  }

  /** The DXF for machines; its name says the unit. */
  public static String dxf(int number, MachineSetup setup) {
    return cut(String.format(Locale.ROOT, "sheets/sheet-%02d-", number), setup)
        + "-"
        + setup.dxfUnit().symbol()
        + ".dxf";
  }

  /** The SVG of the sheet's underside. */
  public static String flip(int number) {
    return String.format(Locale.ROOT, "sheets/sheet-%02d-flip.svg", number);
  }

  /** The DXF of the sheet's underside. */
  public static String flipDxf(int number, MachineSetup setup) {
    return String.format(
        Locale.ROOT, "sheets/sheet-%02d-flip-%s.dxf", number, setup.dxfUnit().symbol());
  }

  /** The SVG of the test cut's underside. */
  public static final String TEST_FLIP = "test-flip.svg";

  /** The DXF of the test cut's underside. */
  public static String testFlipDxf(MachineSetup setup) {
    return "test-flip-" + setup.dxfUnit().symbol() + ".dxf";
  }

  /** The SVG of the test cut. */
  public static String testCut(MachineSetup setup) {
    return cut("test-", setup) + ".svg";
  }

  /** The DXF of the test cut. */
  public static String testCutDxf(MachineSetup setup) {
    return cut("test-", setup) + "-" + setup.dxfUnit().symbol() + ".dxf";
  }

  private static String cut(String stem, MachineSetup setup) {
    return stem + (setup.isOffset() ? "cut-offset" : "cut");
  }

  /** Name of the picture of a machine's way, which only the printed report has. */
  public static String toolpath(int number) {
    return String.format(Locale.ROOT, "toolpaths/sheet-%02d", number);
  }

  /** The picture for looking at. */
  public static String picture(int number) {
    return String.format(Locale.ROOT, "sheets/sheet-%02d.png", number);
  }
}

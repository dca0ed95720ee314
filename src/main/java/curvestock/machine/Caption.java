package curvestock.machine;

import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the files of a sheet say of themselves, so that whoever gets them without a word knows what
 * he has.
 *
 * @param job what the job is called
 * @param what part of it the file is, such as {@code sheet 1 of 2}
 * @param style of lengths
 * @param warning to whoever opens the files, such as that the helix fails
 */
public record Caption(String job, String what, LengthStyle style, Optional<String> warning) {

  /** For drawings that belong to no job. */
  public static final Caption PLAIN =
      new Caption("", "sheet", LengthStyle.METRIC, Optional.empty());

  /** In a line: job, sheet, size, thickness. */
  public String title(MachineSheet sheet, boolean bottom) {
    return (job.isEmpty() ? "" : job + ", ")
        + what
        + (bottom ? ", underside" : "")
        + ": "
        + facts(sheet, bottom).get(0);
  }

  /** Sheet, work zero, kerf, form and the side that lies up, a clause each. */
  public List<String> facts(MachineSheet sheet, boolean bottom) {
    Length thickness = sheet.layout().sheet().thickness();
    List<String> facts = new ArrayList<>();
    facts.add(
        size(sheet.layout().sheet().length())
            + " x "
            + size(sheet.layout().sheet().width())
            + ", "
            + both(thickness)
            + " thick");
    facts.add("material " + sheet.layout().sheet().name());
    facts.add("work zero at the lower left corner of the sheet, x to the right, y up");
    facts.add(
        bottom
            ? "this is the underside, mirrored: run this file first, then turn the sheet over"
            : "good side up, as drawn");
    facts.add("kerf " + both(sheet.layout().cutting().kerf()));
    facts.add("bit " + both(sheet.setup().bitOrKerf(sheet.layout().cutting())));
    facts.add(
        sheet.setup().isOffset()
            ? "outlines already offset by half the kerf: do not offset them again"
            : "outlines at finished size");
    warning.ifPresent(words -> facts.add("warning: " + words));
    return facts;
  }

  private String size(Length length) {
    return style.unit().isImperial()
        ? style.formatGiven(length) + " (" + millimetres(length, "%.1f") + " mm)"
        : millimetres(length, "%.1f") + " mm";
  }

  private String both(Length length) {
    return style.unit().isImperial()
        ? style.formatGiven(length) + " (" + millimetres(length, "%.3f") + " mm)"
        : millimetres(length, "%.3f") + " mm";
  }

  private static String millimetres(Length length, String format) {
    String text = String.format(Locale.ROOT, format, length.millimetres());
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }
}

package curvestock.job;

import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.List;
import java.util.stream.Collectors;

/** Whether some sheet is as thick as a piece asks for. */
final class Thicknesses {

  private Thicknesses() {}

  /**
   * Notes that no sheet is, and which there are.
   *
   * @param otherwise what else the user may do, a clause
   */
  static void noteIfNone(
      Field field, Length wanted, List<SheetStock> sheets, LengthStyle style, String otherwise) {
    if (sheets.stream().noneMatch(sheet -> sheet.isAsThickAs(wanted))) {
      String offered =
          sheets.stream()
              .map(sheet -> described(sheet, style))
              .distinct()
              .collect(Collectors.joining(", "));
      field.note(
          "must be the thickness of one of the sheets ("
              + offered
              + "), but was "
              + field.shown()
              + "; add a sheet of that thickness to `sheets:`, "
              + otherwise);
    }
  }

  private static String described(SheetStock sheet, LengthStyle style) {
    String measured = style.formatGiven(sheet.thickness());
    String nominal = style.formatGiven(sheet.nominalThickness());
    return measured.equals(nominal) ? measured : measured + ", sold as " + nominal;
  }
}

package curvestock.check;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether a drawing says one millimetre per user unit in every way an importer may read it. */
final class DrawingScale {

  private static final Pattern MILLIMETRES = Pattern.compile("(\\d{1,7}(?:\\.\\d{1,6})?)mm");

  private static final Pattern VIEW_BOX =
      Pattern.compile("(-?[\\d.]{1,14}) (-?[\\d.]{1,14}) ([\\d.]{1,14}) ([\\d.]{1,14})");

  /** Relative; width and viewBox are written from the same numbers. */
  private static final double EQUAL = 1e-6;

  private DrawingScale() {}

  static void judge(DrawingFile file, Findings findings) {
    Matcher width = MILLIMETRES.matcher(file.width());
    Matcher height = MILLIMETRES.matcher(file.height());
    Matcher view = VIEW_BOX.matcher(file.viewBox());
    if (!width.matches() || !height.matches() || !view.matches()) {
      findings.add(
          Finding.Kind.SCALE,
          "width and height must be in mm and the viewBox four numbers, but were '"
              + file.width()
              + "', '"
              + file.height()
              + "' and '"
              + file.viewBox()
              + "'");
      return;
    }
    if (!equal(width.group(1), view.group(3)) || !equal(height.group(1), view.group(4))) {
      findings.add(
          Finding.Kind.SCALE,
          "one user unit must be one millimetre, but the width is "
              + file.width()
              + ", the height "
              + file.height()
              + " and the viewBox "
              + file.viewBox());
    }
  }

  private static boolean equal(String a, String b) {
    try {
      double x = Double.parseDouble(a);
      return x > 0 && Math.abs(x - Double.parseDouble(b)) <= EQUAL * x;
    } catch (NumberFormatException e) {
      return false;
    }
  }
}

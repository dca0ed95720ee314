package curvestock.check;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether a drawing says one millimetre per user unit in every way an importer may read it. */
final class DrawingScale {

  /** The units of length that do not depend on a screen, as SVG 1.1 section 7.10 names them. */
  private static final Map<String, Double> MILLIMETRES = Map.of("mm", 1.0, "cm", 10.0, "in", 25.4);

  private static final Pattern LENGTH = Pattern.compile("(\\d{1,7}(?:\\.\\d{1,15})?)(mm|cm|in)");

  private static final Pattern VIEW_BOX =
      Pattern.compile(
          "\\s*(-?[\\d.]{1,22})[\\s,]+(-?[\\d.]{1,22})[\\s,]+([\\d.]{1,22})[\\s,]+([\\d.]{1,22})\\s*");

  /** Relative; width and viewBox are written from the same numbers. */
  private static final double EQUAL = 1e-6;

  private DrawingScale() {}

  static void judge(String width, String height, String viewBox, Findings findings) {
    Optional<Double> across = millimetres(width);
    Optional<Double> down = millimetres(height);
    Optional<double[]> size = size(viewBox);
    if (across.isEmpty() || down.isEmpty() || size.isEmpty()) {
      findings.add(
          Finding.Kind.SCALE,
          "width and height must be in mm, cm or in and the viewBox four numbers, but were '"
              + width
              + "', '"
              + height
              + "' and '"
              + viewBox
              + "'");
    } else if (!equal(across.get(), size.get()[0]) || !equal(down.get(), size.get()[1])) {
      findings.add(
          Finding.Kind.SCALE,
          "one user unit must be one millimetre, but the width is "
              + width
              + ", the height "
              + height
              + " and the viewBox "
              + viewBox);
    }
  }

  /** Width and height of a viewBox, if it can be read. */
  static Optional<double[]> size(String viewBox) {
    Matcher view = VIEW_BOX.matcher(viewBox);
    try {
      return view.matches()
          ? Optional.of(
              new double[] {Double.parseDouble(view.group(3)), Double.parseDouble(view.group(4))})
          : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private static Optional<Double> millimetres(String length) {
    Matcher matcher = LENGTH.matcher(length);
    return matcher.matches()
        ? Optional.of(Double.parseDouble(matcher.group(1)) * MILLIMETRES.get(matcher.group(2)))
        : Optional.empty();
  }

  private static boolean equal(double a, double b) {
    return a > 0 && Math.abs(a - b) <= EQUAL * a;
  }
}

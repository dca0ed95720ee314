package curvestock.report;

import curvestock.answer.Figures;
import curvestock.machine.Drilling;
import curvestock.machine.MachineSheet;
import curvestock.machine.Operation;
import curvestock.machine.Pocket;
import curvestock.machine.TestCut;
import curvestock.machine.Turning;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What {@code machine.txt} says of half-laps, of turning a sheet over and of holes to drill. */
final class ShopNotes {

  private ShopNotes() {}

  /** Half-laps: their depth, their sides, how to turn the sheet; nothing if there are none. */
  static List<String> underside(List<MachineSheet> sheets, TestCut testCut, LengthStyle style) {
    List<Pocket> pockets =
        sheets.stream().flatMap(sheet -> sheet.machining().pockets().stream()).toList();
    List<String> lines = new ArrayList<>();
    if (pockets.isEmpty()) {
      return lines;
    }
    lines.add("");
    lines.add("Half-laps (pocket-top, pocket-bottom)");
    add(
        lines,
        "Clear each closed area to its depth with a flat-bottomed bit that stays inside the line."
            + " The areas run past the end and the sides of the piece, so that the bit leaves no rounded corner in the lap; at"
            + " the shoulder they stop on the line.");
    add(
        lines,
        "The depth in the file is half the thickness that your job gives. Measure the sheet where you"
            + " cut, and set the depth to half of that.");
    add(
        lines,
        "'Above' or 'below' beside a lap tells you which face to cut it from; 'up' marks the upper face.");
    if (sheets.stream().anyMatch(sheet -> sheet.machining().turning().isPresent())) {
      turning(lines);
    }
    for (int i = 0; i < sheets.size(); i++) {
      if (!sheets.get(i).machining().pockets().isEmpty()) {
        add(lines, "Sheet " + (i + 1) + ": " + depths(sheets.get(i), style));
      }
    }
    if (testCut.laps().stream().anyMatch(laps -> !laps.isEmpty())) {
      add(lines, "The test cut has one such joint at full size and a flip file for it.");
    }
    return lines;
  }

  private static void turning(List<String> lines) {
    add(
        lines,
        "Laps cut from below are in the flip files, mirrored. Work in this order: 1. Lay the sheet"
            + " with its underside up. On the edge of the sheet, pencil a mark at the corner that sits at the work zero."
            + " 2. Set the drill to go through the sheet and far enough into the spoil board to hold a dowel,"
            + " and run the flip file: it drills two dowel holes in the waste and clears pocket-bottom. 3. Flip the"
            + " sheet the way that the list below says, and set it on two dowels in the same holes. Check"
            + " where the marked corner is now: a sheet turned the wrong way fits the dowels just as"
            + " well. Cut the dowels flush with the surface or a hair below. 4. Leave the X and Y zero as they are: do not zero on the"
            + " flipped sheet. If your Z zero is the face of the sheet, set it again on the new face. 5. Run the"
            + " cut file; outlines come last.");
    add(lines, "CAUTION: never run a tool over a dowel or a clamp.");
  }

  private static String depths(MachineSheet sheet, LengthStyle style) {
    List<Pocket> above = sheet.machining().pockets(Operation.POCKET_TOP);
    List<Pocket> below = sheet.machining().pockets(Operation.POCKET_BOTTOM);
    String depth = MachineNotes.exact(style, sheet.machining().pockets().get(0).depth());
    return "%s laps from above and %s from below, %s deep%s."
        .formatted(
            above.size(),
            below.size(),
            depth,
            sheet.machining().turning().map(turning -> ". " + dowels(turning, style)).orElse(""));
  }

  private static String dowels(Turning turning, LengthStyle style) {
    String flip =
        "Flip the sheet %s; the marked corner ends at the ".formatted(turning.flip())
            + (turning.line().upright() ? "lower right" : "upper left");
    return turning.dowels().isEmpty()
        ? "%s. The waste has no room for dowels, so set the same two edges of the sheet against stops both times"
            .formatted(flip)
        : "%s. Set it on %s dowels at %s and %s %s"
            .formatted(
                flip,
                MachineNotes.exact(style, turning.diameter()),
                place(turning, 0, style),
                place(turning, 1, style),
                style.unit().symbol());
  }

  private static String place(Turning turning, int index, LengthStyle style) {
    double unit = Length.of(1, style.unit()).millimetres();
    return String.format(
        Locale.ROOT,
        style.unit().isImperial() ? "(%.3f, %.3f)" : "(%.1f, %.1f)",
        turning.dowels().get(index).x() / unit,
        turning.dowels().get(index).y() / unit);
  }

  /** Holes to drill, by diameter; nothing if there are none. */
  static List<String> drills(List<MachineSheet> sheets, LengthStyle style) {
    Map<Length, Integer> holes = new TreeMap<>();
    sheets.stream()
        .flatMap(sheet -> sheet.machining().drillings().stream())
        .map(Drilling::diameter)
        .forEach(diameter -> holes.merge(diameter, 1, Integer::sum));
    List<String> lines = new ArrayList<>();
    if (holes.isEmpty()) {
      return lines;
    }
    lines.add("");
    lines.add("Holes (drill)");
    holes.forEach(
        (diameter, count) ->
            add(
                lines,
                "%s, %s in diameter"
                    .formatted(Figures.count(count, "hole"), MachineNotes.exact(style, diameter))));
    add(
        lines,
        "Circles are drawn at the finished diameter. Drill at their centres with a bit of that size. A"
            + " laser can cut them along the inside of the line.");
    return lines;
  }

  private static void add(List<String> lines, String words) {
    lines.addAll(TextPaper.wrapped("- ", words));
  }
}

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
            + " The areas reach past the end and the sides of the piece by the bit's radius, so that"
            + " no corner stays; at the shoulder they end at the lap.");
    add(
        lines,
        "Depth: half the sheet's thickness as given in the job, in the names of layers and in"
            + " data-depth. Measure the sheet where you cut: half of what you measure is right.");
    add(
        lines,
        "'above' and 'below' beside a lap say from which face it is cut, 'up' which face is up.");
    if (sheets.stream().anyMatch(sheet -> sheet.machining().turning().isPresent())) {
      turning(lines);
    }
    for (int i = 0; i < sheets.size(); i++) {
      if (!sheets.get(i).machining().pockets().isEmpty()) {
        add(lines, "Sheet " + (i + 1) + ": " + depths(sheets.get(i), style));
      }
    }
    if (testCut.laps().stream().anyMatch(laps -> !laps.isEmpty())) {
      add(lines, "The test cut holds one such joint at full size, with a flip file of its own.");
    }
    return lines;
  }

  private static void turning(List<String> lines) {
    add(
        lines,
        "Laps below are in the flip files, mirrored. Order: 1. Lay the sheet with its underside up"
            + " and run the flip file: it drills two dowel holes in the waste (through the sheet, as"
            + " deep into the machine's spoil board as the dowels need) and clears pocket-bottom. 2."
            + " Turn the sheet over the line drawn in the layer flip and set it on two dowels in the"
            + " same holes; leave nothing of them standing above the wood. 3. Run the cut file;"
            + " outlines come last.");
    add(
        lines,
        "CAUTION: never drive a tool over a dowel or a clamp. Mark the corner at the work zero before"
            + " you turn the sheet: the dowels would also take it turned half round.");
  }

  private static String depths(MachineSheet sheet, LengthStyle style) {
    List<Pocket> above = sheet.machining().pockets(Operation.POCKET_TOP);
    List<Pocket> below = sheet.machining().pockets(Operation.POCKET_BOTTOM);
    String depth = MachineNotes.both(style, sheet.machining().pockets().get(0).depth());
    return above.size()
        + " from above, "
        + below.size()
        + " from below, "
        + depth
        + " deep"
        + sheet.machining().turning().map(turning -> "; " + dowels(turning, style)).orElse("")
        + ".";
  }

  private static String dowels(Turning turning, LengthStyle style) {
    String line =
        "turn it over its " + (turning.line().upright() ? "upright" : "level") + " middle";
    if (turning.dowels().isEmpty()) {
      return line
          + "; the waste has no room for dowels, so set the same two edges of the wood against stops"
          + " both times";
    }
    return line
        + " line, dowels "
        + MachineNotes.both(style, turning.diameter())
        + " thick at "
        + place(turning, 0)
        + " and "
        + place(turning, 1)
        + " mm";
  }

  private static String place(Turning turning, int index) {
    return String.format(
        Locale.ROOT,
        "(%.1f, %.1f)",
        turning.dowels().get(index).x(),
        turning.dowels().get(index).y());
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
                Figures.count(count, "hole")
                    + " of "
                    + MachineNotes.both(style, diameter)
                    + " diameter"));
    add(
        lines,
        "Circles have the finished diameter, whatever the form of the outlines: drill at their"
            + " middles with a drill of that size. A laser may cut them along the inside of the line.");
    return lines;
  }

  private static void add(List<String> lines, String words) {
    lines.addAll(TextPaper.wrapped("- ", words));
  }
}

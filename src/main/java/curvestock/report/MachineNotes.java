package curvestock.report;

import curvestock.answer.Cautions;
import curvestock.answer.Figures;
import curvestock.answer.MachineTime;
import curvestock.job.Job;
import curvestock.machine.Drilling;
import curvestock.machine.InsideCorners;
import curvestock.machine.MachineSetup;
import curvestock.machine.MachineSetup.Tabs;
import curvestock.machine.MachineSheet;
import curvestock.machine.Operation;
import curvestock.machine.TestCut;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What whoever runs the machine must know of the files, in plain words: {@code machine.txt}. */
public final class MachineNotes {

  private final Job job;
  private final MachineSetup setup;
  private final LengthStyle style;
  private final List<MachineSheet> sheets;
  private final TestCut testCut;
  private final Optional<MachineTime> time;
  private final List<List<String>> numbers;
  private final List<String> lines = new ArrayList<>();

  private MachineNotes(
      Job job,
      List<MachineSheet> sheets,
      List<List<String>> numbers,
      TestCut testCut,
      Optional<MachineTime> time) {
    this.job = job;
    this.numbers = numbers;
    this.time = time;
    this.testCut = testCut;
    this.setup = job.machine();
    this.style = job.style();
    this.sheets = sheets;
  }

  /**
   * The notes, a line each.
   *
   * @param numbers on the wood, by sheet in the order of the layout
   * @param time of the machine, if the job has rates
   */
  public static List<String> of(
      Job job,
      List<MachineSheet> sheets,
      List<List<String>> numbers,
      TestCut testCut,
      Optional<MachineTime> time) {
    return new MachineNotes(job, sheets, numbers, testCut, time).write();
  }

  /** In one sentence what the files for machines are, for title blocks. */
  public static String size(Job job) {
    String lines =
        job.machine()
            .linesWithin()
            .map(
                within ->
                    " In them arcs are straight lines that stray at most "
                        + both(job.style(), within)
                        + ".")
            .orElse("");
    return outlines(job) + lines;
  }

  /** A caution where a cut along the margin would leave the sheet; empty if none would. */
  static Optional<String> overTheEdge(Job job) {
    Length half = job.cutting().kerf().times(0.5);
    Length margin = job.cutting().margin();
    return margin.compareTo(half) >= 0
        ? Optional.empty()
        : Optional.of(
            "The margin of "
                + job.style().formatGiven(margin)
                + " is less than half the kerf of "
                + job.style().formatGiven(job.cutting().kerf())
                + ": cuts of pieces beside the sheet's edge run over it. Give a `margin:` of "
                + job.style().formatUp(half)
                + " or more if your tool must stay on the sheet.");
  }

  private static String outlines(Job job) {
    Length kerf = job.cutting().kerf();
    return job.machine().isOffset()
        ? "The files for machines are not this size: their outlines are grown by half the kerf, "
            + both(job.style(), kerf.times(0.5))
            + ", and must not be offset again."
        : "The files for machines have the finished size too: their program offsets the tool.";
  }

  private List<String> write() {
    lines.add(job.title() + ": files for machines");
    if (job.invented()) {
      lines.add("(invented data)");
    }
    lines.add("");
    testCut();
    files();
    outlines();
    operations();
    lines.addAll(ShopNotes.underside(sheets, testCut, style));
    lines.addAll(ShopNotes.drills(sheets, style));
    order();
    time.ifPresent(this::time);
    tabs();
    corners();
    lines.add("");
    lines.add("Cautions");
    lines.addAll(
        TextPaper.wrapped(
            "- ", "Cut test-cut first and measure it. Then air-cut the first sheet."));
    Cautions.ofMachines().forEach(words -> lines.addAll(TextPaper.wrapped("- ", words)));
    return lines;
  }

  private void testCut() {
    lines.add("Cut this first: test-cut (SVG and DXF)");
    SheetStock offcut = testCut.layout().sheet();
    String size = both(style, offcut.length()) + " x " + both(style, offcut.width());
    int number = 0;
    for (String words : testCut.words(size)) {
      number++;
      lines.addAll(TextPaper.wrapped(number + ". ", words));
    }
  }

  private void files() {
    lines.add("");
    lines.add("Files");
    lines.add(
        "- SVG: 1 unit = 1 mm, written in mm; the page is exactly the sheet. If a sheet comes in");
    lines.add(
        "  at 0.265 of its size, the importer took mm for pixels: scale by 3.7795 (96 / 25.4).");
    lines.add(
        "- DXF (ASCII, release 12): numbers are in "
            + setup.dxfUnit().symbol()
            + ", and the file says so ($INSUNITS);");
    lines.add(
        "  if your program asks, choose that unit. Origin at the sheet's lower left corner, y up.");
    lines.add(
        setup.linesWithin().isEmpty()
            ? "- Arcs are true arcs of at most 90° each."
            : "- Arcs are straight lines with all corners on the arc; between them they stray towards the"
                + " arc's centre by at most "
                + both(style, setup.linesWithin().get())
                + ".");
  }

  private void outlines() {
    lines.add("");
    lines.add("Size of the outlines");
    lines.add("- " + size(job));
    lines.add("- Kerf of this job: " + both(style, job.cutting().kerf()) + ".");
    if (!setup.isOffset() && job.cutting().shares()) {
      lines.addAll(
          TextPaper.wrapped(
              "- ",
              "Where straight sides lie one kerf apart, your program runs the cut between them twice."
                  + " A laser chars there, and a tab stays only where both passes leave it. With"
                  + " `outlines: offset` such a cut is drawn once."));
    }
    overTheEdge(job).ifPresent(words -> lines.addAll(TextPaper.wrapped("- ", "CAUTION: " + words)));
  }

  private void operations() {
    lines.add("");
    lines.add("Operations (group in the SVG, layer in the DXF, colour in the SVG)");
    List<List<String>> rows = new ArrayList<>();
    for (Operation operation : Operation.values()) {
      rows.add(
          List.of(
              "  " + operation.id(),
              operation.id().toUpperCase(Locale.ROOT),
              setup.colours().get(operation),
              meaning(operation)));
    }
    for (List<String> row : rows) {
      lines.add(String.format(Locale.ROOT, "%-15s %-13s %-8s %s", row.toArray()));
    }
  }

  private static String meaning(Operation operation) {
    return switch (operation) {
      case CUT -> "cut through";
      case MARK -> "draw or score: centre lines; for a helix supports, laps and screws";
      case LABEL ->
          "engrave: numbers, foot to the inner edge (35-73: block-35-73); which face is up";
      case POCKET_TOP -> "clear the closed areas to their depth, the tool staying inside them";
      case POCKET_BOTTOM -> "the same from below: in the flip files, which are run first";
      case DRILL -> "drill through, a layer for each diameter";
      case TAB -> "do not cut: where tabs are proposed";
      case SHEET -> "do not cut: edge of the sheet, defects";
      case REMNANT -> "do not cut: what is kept of the sheet";
      case FLIP -> "do not cut: the line over which the sheet is turned, and its dowels";
      case TITLE -> "do not cut: what the file is, in words (DXF)";
    };
  }

  private void order() {
    lines.add("");
    lines.add(
        "Order: marks and letters first; then piece by piece, holes before the outside. Every");
    lines.add("outline begins in the middle of a long side, away from the corners.");
    for (int i = 0; i < sheets.size(); i++) {
      MachineSheet sheet = sheets.get(i);
      lines.addAll(TextPaper.wrapped("- ", "Sheet " + (i + 1) + ": " + ways(sheet)));
      if (sheet.sharedCut() > 0) {
        lines.addAll(
            TextPaper.wrapped(
                "  ",
                metres(sheet.sharedCut())
                    + " of straight cut parts two pieces at once. It is drawn and cut once, with the"
                    + " first of them; the outline of the other is open there."));
      }
    }
  }

  private String ways(MachineSheet sheet) {
    return sheet.contours().size()
        + " outlines, "
        + metres(sheet.cut())
        + " of cut, "
        + metres(sheet.travel())
        + " with the tool lifted ("
        + metres(sheet.travelAsLaidOut())
        + " as laid out). Marks and letters: "
        + metres(sheet.markTravel() + sheet.labelTravel())
        + " lifted."
        + (sheet.otherTravel() > 0
            ? " Pockets and holes: " + metres(sheet.otherTravel()) + " lifted."
            : "");
  }

  private String metres(double millimetres) {
    return style.unit().isImperial()
        ? String.format(Locale.ROOT, "%.1f ft (%.1f m)", millimetres / 304.8, millimetres / 1000)
        : String.format(Locale.ROOT, "%.1f m", millimetres / 1000);
  }

  private void time(MachineTime machine) {
    lines.add("");
    lines.add("Time");
    Figures figures = new Figures(style, job.currency());
    machine.words(figures).forEach(words -> lines.addAll(TextPaper.wrapped("- ", words)));
  }

  private void tabs() {
    lines.add("");
    if (setup.tabs().isEmpty()) {
      lines.add("Tabs: none.");
      return;
    }
    Tabs tabs = setup.tabs().get();
    boolean gaps = tabs.form() == Tabs.Form.GAPS;
    lines.addAll(
        TextPaper.wrapped(
            "",
            "Tabs: "
                + tabs.count()
                + " to a piece, "
                + both(style, tabs.width())
                + " of wood each, on long sides with wood beyond the cut, never on a splice face;"
                + " beside a neighbour both have one in common. "
                + (gaps
                    ? "The cut is interrupted there, by the kerf more than that."
                    : "The outlines are whole; short marks beside them (tab) propose the places.")));
    for (int i = 0; i < sheets.size(); i++) {
      MachineSheet sheet = sheets.get(i);
      String name = "sheet " + (i + 1) + ": ";
      List<Integer> fewer =
          sheet.tabless().stream().filter(number -> !sheet.loose().contains(number)).toList();
      if (!fewer.isEmpty()) {
        lines.addAll(
            TextPaper.wrapped(
                "- ",
                name + "fewer tabs than " + tabs.count() + ", but held: " + listed(i, fewer)));
      }
      if (!sheet.loose().isEmpty()) {
        lines.addAll(
            TextPaper.wrapped(
                "- ",
                "CAUTION: "
                    + name
                    + "not held by tabs; screw down or tape each before it is cut: "
                    + listed(i, sheet.loose())));
      }
    }
  }

  private String listed(int sheet, List<Integer> pieces) {
    return pieces.stream()
        .map(number -> numbers.get(sheet).get(number - 1))
        .collect(Collectors.joining(", ", "", "."));
  }

  private void corners() {
    lines.add("");
    Length bit = setup.bitOrKerf(job.cutting());
    Length radius = bit.times(0.5);
    List<String> warnings = new ArrayList<>();
    for (Demand demand : job.demands()) {
      Piece piece = demand.piece();
      Optional<Length> smallest = InsideCorners.smallest(Drilling.cut(piece.shape(), bit));
      if (smallest.isPresent() && smallest.get().compareTo(radius) < 0) {
        boolean sharp = smallest.get().millimetres() == 0;
        warnings.add(
            "- CAUTION: piece "
                + piece.id()
                + " ("
                + piece.name()
                + ") has "
                + (sharp
                    ? "a sharp inside corner"
                    : "a hollow or hole of " + both(style, smallest.get()) + " radius")
                + "; a tool of "
                + both(style, bit)
                + " leaves "
                + both(style, radius)
                + (sharp
                    ? ": file it out if a part must fit."
                    : ": use a smaller tool or a drill."));
      }
    }
    if (warnings.isEmpty()) {
      lines.add("Inside corners: the tool of " + both(style, bit) + " gets into all.");
    } else {
      lines.add("Inside corners");
      lines.addAll(warnings);
    }
  }

  /** A length in the job's style, and in millimetres if that is another unit. */
  static String both(LengthStyle style, Length length) {
    String millimetres = String.format(Locale.ROOT, "%.3f mm", length.millimetres());
    return style.unit().isImperial()
        ? LengthStyle.INCH_DECIMALS.format(length) + " (" + millimetres + ")"
        : millimetres;
  }
}

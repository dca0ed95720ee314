package curvestock.report;

import curvestock.answer.Cautions;
import curvestock.answer.Figures;
import curvestock.answer.MachineTime;
import curvestock.job.Job;
import curvestock.machine.Caption;
import curvestock.machine.Drilling;
import curvestock.machine.InsideCorners;
import curvestock.machine.MachineSetup;
import curvestock.machine.MachineSetup.Tabs;
import curvestock.machine.MachineSheet;
import curvestock.machine.Operation;
import curvestock.machine.TestCut;
import curvestock.machine.Turning;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What whoever runs the machine must know of the files, in plain words: {@code machine.txt}. */
public final class MachineNotes {

  private static final String LETTERS =
      "engrave: piece numbers, and 'up' on the upper face; both read the right way up from the inner edge";

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
                    " In them, arcs are made of short straight lines, off by at most %s."
                        .formatted(exact(job.style(), within)))
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
            "The edge margin of %s is less than half the kerf of %s, so cuts along the edge run past the edge of the sheet. If your tool must stay on the sheet, write `margin: %s` or more."
                .formatted(
                    job.style().formatGiven(margin),
                    job.style().formatGiven(job.cutting().kerf()),
                    job.style().formatUp(half)));
  }

  private static String outlines(Job job) {
    Length kerf = job.cutting().kerf();
    return job.machine().isOffset()
        ? "Outlines in the machine files are not at finished size: they are already offset by half the kerf, %s. Do not offset them again."
            .formatted(exact(job.style(), kerf.times(0.5)))
        : "Outlines in the machine files are at finished size: let your machine's program offset the tool.";
  }

  private List<String> write() {
    lines.add(job.title() + ": machine files");
    if (job.invented()) {
      lines.add("(invented data)");
    }
    lines.add("");
    cautions();
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
    return lines;
  }

  private void cautions() {
    lines.add("Cautions");
    lines.addAll(
        TextPaper.wrapped("- ", "Make the test cut and measure it before you cut a sheet."));
    Cautions.ofMachines(setup.tabs().isPresent())
        .forEach(words -> lines.addAll(TextPaper.wrapped("- ", words)));
  }

  private void testCut() {
    lines.add(
        testCut.hasLaps()
            ? "Do this first: the test cut (test-flip, then test-cut; SVG and DXF)"
            : "Do this first: the test cut (test-cut; SVG and DXF)");
    Optional<Turning> turning =
        testCut
            .sheet(new Caption(job.title(), "test cut", style, job.failure()), setup)
            .machining()
            .turning();
    int number = 0;
    for (String words : testCut.words(style, turning)) {
      number++;
      lines.addAll(TextPaper.wrapped(number + ". ", words));
    }
  }

  private void files() {
    lines.add("");
    lines.add("Files");
    lines.add("- SVG: 1 unit is 1 mm, and the page is as big as the sheet. If a sheet comes in at");
    lines.add(
        "  0.265 of its size, the program read mm as pixels: set its import to mm. If it has no such"
            + "\n  setting, scale the drawing by 3.7795 (96 / 25.4) as you import it.");
    lines.add(
        "- DXF (ASCII, release 12): numbers are in "
            + setup.dxfUnit().symbol()
            + ", as the file says ($INSUNITS).");
    lines.add(
        "  If your program asks, choose that unit. Zero is the sheet's lower left corner, y up.");
    lines.add(
        setup.linesWithin().isEmpty()
            ? "- Arcs are true arcs of at most 90° each."
            : "- Arcs are made of short straight lines, which run inside the true arc by at most %s."
                .formatted(exact(style, setup.linesWithin().get())));
  }

  private void outlines() {
    lines.add("");
    lines.add("Size of the outlines");
    lines.add("- " + size(job));
    lines.add("- The kerf of this job is " + exact(style, job.cutting().kerf()) + ".");
    if (!setup.isOffset() && job.cutting().shares()) {
      lines.addAll(
          TextPaper.wrapped(
              "- ",
              "Where straight sides are one kerf apart, your program runs the cut between them twice."
                  + " A laser burns that edge twice, and a tab, if you set one, survives only if both passes skip it."
                  + " Write `outlines: offset` in the job file to have such a cut drawn once."));
    }
    overTheEdge(job).ifPresent(words -> lines.addAll(TextPaper.wrapped("- ", "CAUTION: " + words)));
  }

  private void operations() {
    lines.add("");
    lines.add("Operations (name in the SVG, layer in the DXF, colour in the SVG)");
    List<List<String>> rows = new ArrayList<>();
    for (Operation operation : Operation.values()) {
      rows.add(
          List.of(
              "  " + operation.id(),
              operation.id().toUpperCase(Locale.ROOT),
              setup.colours().get(operation),
              operation == Operation.LABEL ? letters() : meaning(operation)));
    }
    for (List<String> row : rows) {
      lines.add(String.format(Locale.ROOT, "%-15s %-13s %-8s %s", row.toArray()));
    }
  }

  /** What is engraved, and what the short form of a long name means, if there is one. */
  private String letters() {
    return numbers.stream()
        .flatMap(List::stream)
        .filter(name -> name.contains("-"))
        .findFirst()
        .map(
            name ->
                "%s (%s is engraved as %s where room is short)"
                    .formatted(LETTERS, name, name.substring(name.indexOf('-') + 1)))
        .orElse(LETTERS);
  }

  private static String meaning(Operation operation) {
    return switch (operation) {
      case CUT -> "cut through";
      case MARK ->
          "draw or score: centre lines; for a helix also supports and laps, and screws if the job file names them";
      case LABEL -> LETTERS;
      case POCKET_TOP -> "clear the closed areas to their depth; the tool stays inside them";
      case POCKET_BOTTOM ->
          "clear in the same way from below; in the flip files, which you run first";
      case DRILL -> "drill through; each diameter has its own layer";
      case TAB -> "do not cut: where to leave tabs";
      case SHEET -> "do not cut: edge of the sheet, defects";
      case REMNANT -> "do not cut: the offcut to keep";
      case FLIP ->
          "do not cut: the line that the sheet is flipped about, and circles that show the dowels";
      case TITLE -> "do not cut: title of the drawing (DXF)";
    };
  }

  private void order() {
    lines.add("");
    lines.addAll(
        TextPaper.wrapped(
            "",
            "Each cut file runs the marks and letters first, then the half-laps from above and the drilled"
                + " holes, if there are any. Then it cuts piece by piece, any holes before the outside."
                + " Every outline begins in the middle of a long side, away from the"
                + " corners."));
    for (int i = 0; i < sheets.size(); i++) {
      MachineSheet sheet = sheets.get(i);
      lines.addAll(TextPaper.wrapped("- ", "Sheet " + (i + 1) + ": " + ways(sheet)));
      if (sheet.sharedCut() > 0) {
        lines.addAll(
            TextPaper.wrapped(
                "  ",
                "%s of straight cut separates two pieces at once. It is drawn and cut once, with the first of the two pieces; the outline of the second is open there."
                    .formatted(metres(sheet.sharedCut()))));
      }
    }
  }

  private String ways(MachineSheet sheet) {
    return "%s, %s of cut."
        .formatted(Figures.count(sheet.contours().size(), "outline"), metres(sheet.cut()));
  }

  private String metres(double millimetres) {
    return style.unit().isImperial()
        ? String.format(Locale.ROOT, "%.1f ft", millimetres / 304.8)
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
      lines.addAll(
          TextPaper.wrapped(
              "",
              "There are no tabs. Before its outline is cut, hold every piece down by vacuum,"
                  + " double-sided tape, or screws inside its outline where the tool does not go."));
      return;
    }
    Tabs tabs = setup.tabs().get();
    boolean gaps = tabs.form() == Tabs.Form.GAPS;
    lines.addAll(
        TextPaper.wrapped(
            "",
            "Each piece has %s tabs of %s of wood. They are on long sides that have wood beyond the cut, never on a splice face, and neighbours share them. %s"
                .formatted(
                    tabs.count(),
                    exact(style, tabs.width()),
                    gaps
                        ? "The cut stops there, over that width and one kerf more."
                        : "The outlines are whole; short marks beside them (tab) show the places.")));
    for (int i = 0; i < sheets.size(); i++) {
      MachineSheet sheet = sheets.get(i);
      int number = i + 1;
      List<Integer> fewer =
          sheet.tabless().stream().filter(piece -> !sheet.loose().contains(piece)).toList();
      if (!fewer.isEmpty()) {
        lines.addAll(
            TextPaper.wrapped(
                "- ",
                "Sheet %s: these pieces have fewer than %s tabs, but enough to hold: %s"
                    .formatted(number, tabs.count(), listed(i, fewer))));
      }
      if (!sheet.loose().isEmpty()) {
        lines.addAll(
            TextPaper.wrapped(
                "- ",
                "CAUTION: on sheet %s tabs do not hold these pieces. Screw down or tape each one before it is cut: %s"
                    .formatted(number, listed(i, sheet.loose()))));
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
            "- CAUTION: piece %s (%s) has %s; a %s tool leaves a radius of %s: %s"
                .formatted(
                    piece.id(),
                    piece.name(),
                    sharp
                        ? "a sharp inside corner"
                        : "a hollow or hole of " + exact(style, smallest.get()) + " radius",
                    exact(style, bit),
                    exact(style, radius),
                    sharp ? "file it out if a part must fit." : "use a smaller tool or a drill."));
      }
    }
    if (warnings.isEmpty()) {
      lines.add("The %s tool reaches all inside corners.".formatted(exact(style, bit)));
    } else {
      lines.add("Inside corners");
      lines.addAll(warnings);
    }
  }

  /** A length in the job's own unit, as finely as a machine is set. */
  static String exact(LengthStyle style, Length length) {
    return style.unit().isImperial()
        ? LengthStyle.INCH_DECIMALS.format(length)
        : String.format(Locale.ROOT, "%.3f mm", length.millimetres());
  }
}

package curvestock.printing;

import curvestock.answer.BenchWords;
import curvestock.drawing.Ink;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.PaperSize;
import curvestock.drawing.TextWidth;
import curvestock.geometry.Point;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.Joint;
import curvestock.helix.build.LapEnd;
import curvestock.helix.build.ScheduleRow;
import curvestock.helix.spec.Construction;
import curvestock.job.Job;
import curvestock.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A label for every piece: its number in large figures, turn, joints, stations, which side is up
 * and where the inner edge lies. Stick it near the inner edge with the bar along it.
 */
public final class LabelSheet {

  private static final int COLUMNS = 3;
  private static final int ROWS = 7;
  private static final double MARGIN = 10;
  private static final double FOOT_LETTERS = 2.6;
  private static final Pen CUT = new Pen(Ink.SHEET, 0.2, "2 2");
  private static final Pen EDGE = Pen.of(Ink.CUT, 1.4);
  private static final Pen ARROW = Pen.of(Ink.CUT, 0.4);

  /** What a label says. */
  private record Label(String number, List<String> lines, boolean ofRoadbed) {}

  private LabelSheet() {}

  /** Labels of all pieces of the plan, sheet by sheet. */
  public static byte[] pdf(Plan plan, SpareFonts spare) {
    Job job = plan.job();
    boolean metric = job.paper() == PaperSize.A4 || job.paper() == PaperSize.A3;
    PaperSize size = metric ? PaperSize.A4 : PaperSize.LETTER;
    double width = size.width().millimetres();
    double height = size.height().millimetres();
    List<Label> labels = labels(plan);
    try (PdfBook book = new PdfBook(job.title() + ": labels", spare)) {
      for (int from = 0; from < labels.size(); from += COLUMNS * ROWS) {
        Paper page = new Paper();
        int to = Math.min(labels.size(), from + COLUMNS * ROWS);
        for (int i = from; i < to; i++) {
          double wide = (width - 2 * MARGIN) / COLUMNS;
          double high = (height - 2 * MARGIN - 12) / ROWS;
          double x = MARGIN + (i - from) % COLUMNS * wide;
          int row = (i - from) / COLUMNS;
          double y = height - MARGIN - row * high;
          draw(page, labels.get(i), x, y, wide, high);
        }
        int sheets = (labels.size() + COLUMNS * ROWS - 1) / (COLUMNS * ROWS);
        String number = "page " + (from / (COLUMNS * ROWS) + 1) + " of " + sheets;
        foot(page, job.title() + ": labels", number, width - 2 * MARGIN);
        book.page(width, height, page);
      }
      return book.bytes();
    }
  }

  /** What 'up' means, and whose labels these are. */
  private static void foot(Paper page, String title, String number, double room) {
    String how =
        "Cut the labels apart and stick each on the upper side of its piece, thick bar along the inner edge. "
            + BenchWords.UP;
    List<String> lines = new ArrayList<>(TextWidth.wrap(how, room / FOOT_LETTERS * 1.1));
    lines.add(TextWidth.wrap(title, room / FOOT_LETTERS - 12).get(0) + " · " + number);
    double y = MARGIN + 1.3 * FOOT_LETTERS * (lines.size() - 1);
    for (String line : lines) {
      page.text(line, new Point(MARGIN, y), FOOT_LETTERS, Anchor.START, false);
      y -= 1.3 * FOOT_LETTERS;
    }
  }

  private static List<Label> labels(Plan plan) {
    Map<String, ScheduleRow> rows = new HashMap<>();
    plan.job()
        .structure()
        .ifPresent(
            order ->
                order.plan().schedule().rows().forEach(row -> rows.put(row.piece().number(), row)));
    boolean halfLaps =
        plan.job()
            .structure()
            .filter(order -> order.plan().spec().construction() instanceof Construction.HalfLap)
            .isPresent();
    int layers = plan.job().structure().map(order -> order.plan().joints().layers()).orElse(1);
    List<Label> labels = new ArrayList<>();
    for (int sheet = 0; sheet < plan.layouts().size(); sheet++) {
      List<String> numbers = plan.labels().get(sheet);
      for (int i = 0; i < numbers.size(); i++) {
        String kind = plan.layouts().get(sheet).placements().get(i).piece().id();
        List<String> lines = new ArrayList<>();
        lines.add("kind " + kind + ", sheet " + (sheet + 1));
        ScheduleRow row = rows.get(numbers.get(i));
        if (row != null) {
          lines.addAll(ofRoadbed(row, halfLaps, layers));
        }
        labels.add(
            new Label(numbers.get(i), lines, row != null || plan.job().structure().isEmpty()));
      }
    }
    return labels;
  }

  private static List<String> ofRoadbed(ScheduleRow row, boolean halfLaps, int layers) {
    BedPiece piece = row.piece();
    String from = piece.lower().map(Joint::name).orElse("entry");
    String to = piece.upper().map(Joint::name).orElse("exit");
    String stations =
        piece.stations().stream()
            .map(place -> place.station().name())
            .collect(Collectors.joining(" "));
    List<String> lines = new ArrayList<>();
    String layer = piece.layer() == 1 ? "L1, lower layer" : "L2, upper layer";
    lines.add("turn " + row.turn() + (layers > 1 ? ", " + layer : ""));
    lines.add("from " + from + " up to " + to);
    if (!stations.isEmpty()) {
      lines.add("rests on " + stations);
    }
    if (halfLaps) {
      List<String> laps = new ArrayList<>();
      piece.lower().ifPresent(j -> laps.add(j.name() + " from " + LapEnd.LOWER.side()));
      piece.upper().ifPresent(j -> laps.add(j.name() + " from " + LapEnd.UPPER.side()));
      if (!laps.isEmpty()) {
        lines.add("half-lap: " + String.join(", ", laps));
      }
    }
    return lines;
  }

  private static void draw(Paper page, Label label, double x, double y, double wide, double high) {
    page.polygon(
        List.of(
            new Point(x, y),
            new Point(x + wide, y),
            new Point(x + wide, y - high),
            new Point(x, y - high),
            new Point(x, y)),
        "none",
        CUT);
    double size = Math.min(9, (wide - 24) / TextWidth.boldEms(label.number()));
    page.text(label.number(), new Point(x + 4, y - 8), size, Anchor.START, true);
    double line = y - 15;
    for (String text : label.lines()) {
      double fits = Legible.size(text, 3, wide - 8);
      for (String part : TextWidth.wrap(text, Math.max(1, (wide - 8) / fits))) {
        page.text(part, new Point(x + 4, line), fits, Anchor.START, false);
        line -= 3.5;
      }
    }
    if (!label.ofRoadbed()) {
      return;
    }
    double arrow = x + wide - 7;
    page.line(new Point(arrow, y - 11), new Point(arrow, y - 4), ARROW);
    page.line(new Point(arrow, y - 4), new Point(arrow - 2, y - 7), ARROW);
    page.line(new Point(arrow, y - 4), new Point(arrow + 2, y - 7), ARROW);
    page.text("this side up", new Point(arrow + 3, y - 13), 2.4, Anchor.END, false);
    page.line(new Point(x + 4, y - high + 2), new Point(x + wide - 4, y - high + 2), EDGE);
    page.text("inner edge", new Point(x + wide - 4, y - high + 4.6), 2.4, Anchor.END, false);
  }
}

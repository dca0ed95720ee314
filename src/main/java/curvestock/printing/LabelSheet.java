package curvestock.printing;

import curvestock.answer.BenchWords;
import curvestock.answer.SupportsUnder;
import curvestock.drawing.Ink;
import curvestock.drawing.Legible;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.PaperSize;
import curvestock.drawing.TextWidth;
import curvestock.geometry.Point;
import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
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
import java.util.Optional;

/**
 * A label for every piece: its number in large figures, turn, joints, supports, laps, which side is
 * up, where the inner edge lies and which way is uphill. Stick it near the inner edge with the bar
 * along it.
 */
public final class LabelSheet {

  private static final int COLUMNS = 3;
  private static final int ROWS = 7;
  private static final double MARGIN = 10;
  private static final double FOOT_LETTERS = 2.6;
  private static final double LETTERS = 2.8;
  private static final double LEADING = 3.5;

  /** Widths are guessed on the wide side; running text of small letters takes that much less. */
  private static final double PROSE = 1.1;

  private static final Pen CUT = new Pen(Ink.SHEET, 0.2, "2 2");
  private static final Pen EDGE = Pen.of(Ink.CUT, 1.4);
  private static final Pen ARROW = Pen.of(Ink.CUT, 0.4);

  /**
   * What a label says.
   *
   * @param lines a paragraph each
   * @param uphill which way along its lower edge the track climbs: 1 for right, −1 for left, 0 for
   *     a piece of no helix
   */
  private record Label(
      String number, String kind, List<String> lines, boolean ofRoadbed, int uphill) {}

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
        "Cut the labels apart and stick each on the upper side of its piece, thick bar along the inner edge."
            + " They come sheet by sheet. "
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
    Optional<HelixPlan> helix = plan.job().structure().map(HelixOrder::plan);
    Map<String, ScheduleRow> rows = new HashMap<>();
    helix.ifPresent(of -> of.schedule().rows().forEach(row -> rows.put(row.piece().number(), row)));
    List<Label> labels = new ArrayList<>();
    for (int sheet = 0; sheet < plan.layouts().size(); sheet++) {
      List<String> numbers = plan.labels().get(sheet);
      for (int i = 0; i < numbers.size(); i++) {
        String id = plan.layouts().get(sheet).placements().get(i).piece().id();
        String kind = "kind " + id + ", sheet " + (sheet + 1);
        ScheduleRow row = rows.get(numbers.get(i));
        labels.add(
            row == null
                ? new Label(numbers.get(i), kind, List.of(), helix.isEmpty(), 0)
                : new Label(
                    numbers.get(i),
                    kind,
                    ofRoadbed(row, helix.orElseThrow()),
                    true,
                    -helix.orElseThrow().line().inwards()));
      }
    }
    return labels;
  }

  private static List<String> ofRoadbed(ScheduleRow row, HelixPlan plan) {
    BedPiece piece = row.piece();
    String from = piece.lower().map(Joint::name).orElse("entry");
    String to = piece.upper().map(Joint::name).orElse("exit");
    List<String> lines = new ArrayList<>();
    boolean upper = piece.layer() > 1;
    if (plan.joints().layers() > 1) {
      lines.add(upper ? "L2, upper layer" : "L1, lower layer");
    }
    lines.add("turn " + row.turn() + ": from " + from + " up to " + to);
    String stations = new SupportsUnder(plan.supports()).namesWithEdges(piece, row.turn());
    if (!stations.isEmpty()) {
      lines.add((upper ? "over " : "rests on ") + stations);
    }
    if (plan.spec().construction() instanceof Construction.HalfLap) {
      List<String> laps = new ArrayList<>();
      piece.lower().ifPresent(j -> laps.add(LapEnd.LOWER.face() + " at " + j.name()));
      piece.upper().ifPresent(j -> laps.add(LapEnd.UPPER.face() + " at " + j.name()));
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
    double size = Math.min(9, (wide * 0.45) / TextWidth.boldEms(label.number()));
    page.text(label.number(), new Point(x + 4, y - 7.5), size, Anchor.START, true);
    double right = x + wide - 4;
    double room = wide * 0.55 - 6;
    double kind = Legible.size(label.kind(), LETTERS, room);
    page.text(label.kind(), new Point(right, y - 9.5), kind, Anchor.END, false);
    List<String> lines =
        label.lines().stream()
            .flatMap(text -> TextWidth.wrap(text, (wide - 8) / LETTERS * PROSE).stream())
            .toList();
    double leading = Math.min(LEADING, (high - 22) / Math.max(1, lines.size() - 1));
    for (int i = 0; i < lines.size(); i++) {
      Point at = new Point(x + 4, y - 14 - i * leading);
      page.text(lines.get(i), at, LETTERS, Anchor.START, false);
    }
    if (!label.ofRoadbed()) {
      return;
    }
    page.text("track side up", new Point(right, y - 5), LETTERS, Anchor.END, true);
    double low = y - high + 2;
    page.line(new Point(x + 4, low), new Point(right, low), EDGE);
    page.text("inner edge", new Point(right, low + 2.8), LETTERS, Anchor.END, false);
    if (label.uphill() != 0) {
      uphill(page, new Point(x + 4, low + 2.8), label.uphill());
    }
  }

  /** An arrow along the edge and its name. */
  private static void uphill(Paper page, Point from, int way) {
    Point end = from.plus(new Point(9, 0));
    Point tip = way < 0 ? from : end;
    page.line(from, end, ARROW);
    page.line(tip, tip.plus(new Point(-way * 2.2, 1.2)), ARROW);
    page.line(tip, tip.plus(new Point(-way * 2.2, -1.2)), ARROW);
    page.text("uphill", end.plus(new Point(1.5, 0)), LETTERS, Anchor.START, false);
  }
}

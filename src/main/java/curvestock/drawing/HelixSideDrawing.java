package curvestock.drawing;

import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.Paper.Words;
import curvestock.geometry.Point;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.Joint;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportRow.Part;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.Vehicle;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * A helix unrolled: along it the run of one turn, upwards the height above the base, every turn
 * over the one below as in the wood, both at true scale. The approach lies at the right, under the
 * end of the first turn.
 */
public final class HelixSideDrawing {

  private static final int STEPS = 60;

  /** Where the free heights are measured, in shares of a turn. */
  private static final double LEFT = 0.19;

  private static final double RIGHT = 0.98;
  private static final String PLYWOOD = "#d9b97c";
  private static final String TRACK = "#8d8d8d";
  private static final String TRAIN = "#dfe9f2";
  private static final String WHITE = "#ffffff";

  private final HelixPlan plan;
  private final HelixTitle title;
  private final HelixSpec spec;
  private final double stretch;
  private final double run;
  private final double size;
  private final double foot;
  private final Paper paper = new Paper();

  private HelixSideDrawing(HelixPlan plan, HelixTitle title, double stretch, double letters) {
    this.plan = plan;
    this.stretch = stretch;
    this.title = title;
    this.spec = plan.spec();
    this.run = plan.climb().runPerTurn().millimetres();
    this.foot = spec.supports().footHeight().millimetres();
    double free = plan.budgets().get(0).free().millimetres();
    this.size = letters > 0 ? run / letters : Math.max(run / 260, Math.min(run / 130, free * 0.4));
  }

  /**
   * The drawing without its words.
   *
   * @param stretch how many times too tall heights are drawn
   * @param letters how many of its largest letters' heights make the length of a turn
   */
  public static Paper figure(HelixPlan plan, HelixTitle title, double stretch, double letters) {
    HelixSideDrawing drawing = new HelixSideDrawing(plan, title, stretch, letters);
    drawing.draw();
    return drawing.paper;
  }

  private void draw() {
    base();
    supports();
    roadbed();
    train();
    joints();
    clearances();
    numbers();
  }

  /** The drawing as SVG. */
  public static String svg(HelixPlan plan, HelixTitle title) {
    HelixSideDrawing drawing = new HelixSideDrawing(plan, title, 1, 0);
    drawing.draw();
    drawing.words();
    return drawing.paper.svg(
        title.job() + ", side view of the helix",
        "One user unit is one millimetre, along the track and upwards.",
        2 * drawing.size);
  }

  private int rowOf(double at) {
    return (int) Math.floor(at / run + 1e-9);
  }

  private double x(double at) {
    return at - rowOf(at) * run;
  }

  /** Underside of the plywood above the base. */
  private double underside(double at) {
    return stretch * (foot + plan.profile().heightAt(at));
  }

  private double begin() {
    return -spec.bottom().leadIn().millimetres();
  }

  private double end() {
    return plan.climb().ringLength() + spec.top().leadIn().millimetres();
  }

  private void base() {
    Pen pen = Pen.of(Ink.CUT, size / 5);
    paper.line(new Point(0, 0), new Point(run, 0), pen);
    Pen thin = Pen.of(Ink.SHEET, size / 16);
    boolean round = !spec.ground().isOval();
    double step = round ? run / 12 : step(run / 16);
    for (int i = 0; i * step <= run * (1 + 1e-9); i++) {
      double at = i * step;
      paper.line(new Point(at, 0), new Point(at, -0.6 * size), thin);
      double bearing = plan.line().bearing(at).degrees() % 359.95;
      String words = round ? SvgNumber.of(bearing, 1) + "°" : length(at);
      paper.text(words, new Point(at, -1.4 * size), 0.8 * size, Anchor.MIDDLE, false);
    }
    heightScale(thin);
  }

  private void heightScale(Pen pen) {
    double most = underside(end()) + stretch * spec.railAboveUnderside().millimetres();
    double step = step(1.5 * size / stretch);
    double left = -1.5 * size;
    paper.line(new Point(left, 0), new Point(left, most), pen);
    for (double height = 0; stretch * height <= most + 1e-6; height += step) {
      double y = stretch * height;
      paper.line(new Point(left, y), new Point(left - 0.5 * size, y), pen);
      Point stand = new Point(left - 0.8 * size, y);
      paper.text(length(height), stand, 0.7 * size, Anchor.END, false);
    }
  }

  /** A step of a scale: 1, 2, 4 ... in or 50, 100, 200 ... mm. */
  private double step(double least) {
    double step = title.style().unit().isImperial() ? Length.ofInches(1).millimetres() : 50;
    while (step < least) {
      step *= 2;
    }
    return step;
  }

  private String length(double millimetres) {
    return title.style().formatMade(Length.ofMillimetres(millimetres));
  }

  private void supports() {
    Riser riser = spec.supports().riser();
    Pen pen = Pen.of(Ink.SHEET, size / 20);
    double width = supportWidth(riser);
    List<Words> names = new ArrayList<>();
    for (SupportRow row : plan.supports().rows()) {
      double top = stretch * row.underside().millimetres();
      double bottom = top - stretch * row.gap().millimetres();
      if (row.part() == Part.EXIT && row.standsOnBase()) {
        besideTheRing(row, width, pen);
        continue;
      }
      box(x(row.at()) - width / 2, x(row.at()) + width / 2, bottom, top, Ink.DEFECT, pen);
      if (row.standsOnBase()) {
        // Those of the lead stand between the ring's: their names go below the base.
        boolean below = plan.stations().entry().contains(row.station());
        Point stand = new Point(x(row.at()), (below ? -0.6 : 0.6) * size);
        names.add(new Words(row.station().name(), stand, 0.7 * size, Anchor.MIDDLE, false));
      }
    }
    names.forEach(this::onWhite);
  }

  /** What stands behind a name would run through its letters. */
  private void onWhite(Words words) {
    double wide = words.size() * TextWidth.ems(words.text());
    double left =
        words.at().x()
            - (words.anchor() == Anchor.START
                ? 0
                : words.anchor() == Anchor.MIDDLE ? wide / 2 : wide);
    double half = 0.5 * words.size();
    double y = words.at().y();
    box(left, left + wide, y - half, y + half, WHITE, Pen.of(WHITE, size / 20));
    paper.text(words.text(), words.at(), words.size(), words.anchor(), words.bold());
  }

  /** The exit's own supports stand on the base outside the ring: only their upper ends show. */
  private void besideTheRing(SupportRow row, double width, Pen pen) {
    double top = stretch * row.underside().millimetres();
    double middle = x(row.at());
    box(middle - width / 2, middle + width / 2, top - size, top, Ink.DEFECT, pen);
    // Above, where nothing else stands: below are the numbers of the turn below.
    double rail = stretch * spec.railAboveUnderside().millimetres();
    Point stand = new Point(middle, top + rail + 0.7 * size);
    paper.text(row.station().name(), stand, 0.7 * size, Anchor.MIDDLE, false);
  }

  private static double supportWidth(Riser riser) {
    return riser instanceof Riser.WoodBlocks blocks
        ? blocks.along().millimetres()
        : ((Riser.ThreadedRods) riser).thread().diameter().millimetres();
  }

  private void box(double left, double right, double bottom, double top, String fill, Pen pen) {
    List<Point> corners =
        List.of(
            new Point(left, bottom),
            new Point(right, bottom),
            new Point(right, top),
            new Point(left, top),
            new Point(left, bottom));
    paper.polygon(corners, fill, pen);
  }

  /** Each turn as a band of plywood with a band of track on it. */
  private void roadbed() {
    double wood = stretch * spec.plywood().millimetres();
    double rail = stretch * spec.railAboveUnderside().millimetres();
    for (int row = rowOf(begin()); row * run < end(); row++) {
      double from = Math.max(begin(), row * run);
      double to = Math.min(end(), (row + 1) * run);
      band(from, to, row, 0, wood, PLYWOOD);
      band(from, to, row, wood, rail, TRACK);
    }
  }

  private void band(double from, double to, int row, double low, double high, String fill) {
    TreeSet<Double> places = new TreeSet<>(plan.profile().breaks());
    places.removeIf(at -> at <= from || at >= to);
    for (int i = 0; i <= STEPS; i++) {
      places.add(from + (to - from) * i / STEPS);
    }
    List<Point> corners = new ArrayList<>();
    places.forEach(at -> corners.add(new Point(at - row * run, underside(at) + low)));
    places
        .descendingSet()
        .forEach(at -> corners.add(new Point(at - row * run, underside(at) + high)));
    corners.add(corners.get(0));
    paper.polygon(corners, fill, Pen.of(Ink.CUT, size / 24));
  }

  /** Flush below; what is more than the plywood stands up beside the track. */
  private void sidePlate(Construction.PlatesBeside plate, double at, double low) {
    double reach = plate.length().millimetres() / 2;
    double high = low + stretch * plate.height().millimetres();
    box(x(at) - reach, x(at) + reach, low, high, "none", Pen.of(Ink.CUT, size / 24));
  }

  private void joints() {
    double layer = stretch * spec.stack().plywood().millimetres();
    double hangs = stretch * spec.construction().hangsBelow().millimetres();
    double beside = supportWidth(spec.supports().riser()) / 2 + 0.3 * size;
    for (Joint joint : plan.joints().all()) {
      double at = joint.at();
      double low = underside(at) + (joint.layer() - 1) * layer;
      Pen pen = Pen.of(Ink.CUT, size / 6);
      paper.line(new Point(x(at), low), new Point(x(at), low + layer), pen);
      if (spec.construction() instanceof Construction.ButtWithPlate butt) {
        double reach = butt.plate().length().millimetres() / 2;
        box(x(at) - reach, x(at) + reach, low - hangs, low, PLYWOOD, Pen.of(Ink.CUT, size / 24));
      }
      plan.sidePlates()
          .filter(plates -> plates.at(joint) > 0)
          .ifPresent(plates -> sidePlate(plates.plate(), at, low));
      // Two layers' names would stand on each other.
      if (joint.layer() == 1) {
        Point stand = new Point(x(at) + beside, low - hangs - 0.5 * size);
        onWhite(new Words(joint.name(), stand, 0.65 * size, Anchor.START, false));
      }
    }
  }

  private void numbers() {
    for (BedPiece piece : plan.roadbed().pieces()) {
      // Two layers' numbers would stand on each other; the turns one by one show both.
      if (piece.layer() > 1) {
        continue;
      }
      double rail = stretch * spec.railAboveUnderside().millimetres();
      double at = numberPlace(piece);
      Point stand = new Point(x(at), underside(at) + rail + 0.9 * size);
      Words words = new Words(piece.number(), stand, size, Anchor.MIDDLE, true);
      if (isOnSupport(x(at), 0)) {
        onWhite(words);
      } else {
        paper.text(words.text(), stand, size, Anchor.MIDDLE, true);
      }
    }
  }

  /**
   * Over the piece's own part of the row, near its middle: clear of measures, if need be on a train
   * or a support.
   */
  private double numberPlace(BedPiece piece) {
    double middle = (piece.from() + piece.to()) / 2;
    int row = rowOf(middle);
    double half = size * (TextWidth.boldEms(piece.number()) / 2 + 0.2);
    double from = Math.max(piece.from(), row * run) + half;
    double to = Math.min(piece.to(), (row + 1) * run) - half;
    for (int given = 3; given >= 1; given--) {
      for (int i = 0; i <= 2 * STEPS && from < to; i++) {
        int step = (i + 1) / 2;
        double at = middle + (i % 2 == 0 ? 1 : -1) * (to - from) / 2 * step / STEPS;
        boolean clear =
            isClear(x(at), half)
                && !(given >= 2 && isOnTrain(x(at), half))
                && !(given >= 3 && isOnSupport(x(at), half));
        if (clear && at >= from && at <= to) {
          return at;
        }
      }
    }
    return middle;
  }

  /** Beside the measures and their words. */
  private boolean isClear(double x, double half) {
    double words =
        0.7 * size * TextWidth.ems(length(plan.climb().risePerTurn().millimetres())) + 0.4 * size;
    return IntStream.of(0, 1)
        .mapToDouble(i -> (i == 0 ? LEFT : RIGHT) * run)
        .noneMatch(line -> x + half > line - words && x - half < line + 0.2 * size);
  }

  private boolean isOnTrain(double x, double half) {
    return x + half > LEFT * run && x - half < LEFT * run + size + trainLength();
  }

  private boolean isOnSupport(double x, double half) {
    double reach = supportWidth(spec.supports().riser()) / 2 + half;
    return plan.supports().rows().stream().anyMatch(row -> Math.abs(x(row.at()) - x) < reach);
  }

  private double trainLength() {
    return spec.traffic()
        .longest()
        .map(Vehicle::length)
        .or(() -> spec.traffic().tallestKnown().map(height -> height.times(3)))
        .orElse(Length.ZERO)
        .millimetres();
  }

  /** The free height between each turn and the next, and at both ends where it is least. */
  private void clearances() {
    double rail = stretch * spec.railAboveUnderside().millimetres();
    for (int row = rowOf(begin()); (row + 1) * run < end(); row++) {
      for (double share : new double[] {LEFT, RIGHT}) {
        double lower = (row + share) * run;
        if (lower >= begin() && lower + run <= end()) {
          dimension(share * run, underside(lower) + rail, underside(lower + run));
        }
      }
    }
  }

  private void dimension(double x, double low, double high) {
    Pen pen = Pen.of(Ink.MARK, size / 14);
    double tip = 0.3 * size;
    paper.line(new Point(x, low), new Point(x, high), pen);
    for (double sign : new double[] {-1, 1}) {
      paper.line(new Point(x, low), new Point(x + sign * tip / 2, low + tip), pen);
      paper.line(new Point(x, high), new Point(x + sign * tip / 2, high - tip), pen);
    }
    Point stand = new Point(x - 0.4 * size, low + 0.35 * (high - low));
    onWhite(new Words(length((high - low) / stretch), stand, 0.7 * size, Anchor.END, false));
  }

  /** The tallest vehicle on each turn that has one above it. */
  private void train() {
    Optional<Length> tallest = spec.traffic().tallestKnown();
    if (tallest.isEmpty()) {
      return;
    }
    double rail = stretch * spec.railAboveUnderside().millimetres();
    double high = stretch * tallest.get().millimetres();
    double length = trainLength();
    for (int row = 0; (row + 1) * run < plan.climb().ringLength(); row++) {
      double at = (row + LEFT) * run + length / 2 + size;
      double low = underside(at) + rail;
      box(x(at) - length / 2, x(at) + length / 2, low, low + high, TRAIN, Pen.of(Ink.MARK, 1));
    }
  }

  private void words() {
    List<String> paragraphs = new ArrayList<>();
    paragraphs.add(
        title.job()
            + ": the helix unrolled, one turn to a row, left to right, each turn above the one below;"
            + " heights and lengths at one true scale. The entry is at the lower right, the exit at the"
            + " upper end. Blue: clearance from rail top to the plywood above. Numbers: pieces. J:"
            + " joint. S: support; E and X: supports of the leads (those of the exit stand on the base"
            + " beside the ring)"
            + (spec.traffic().tallestKnown().isPresent()
                ? "; boxes: the tallest vehicle, "
                    + title.style().formatMade(spec.traffic().tallestKnown().get())
                : "")
            + ".");
    paragraphs.add("A planning aid: mock up a turn with your own trains before you cut.");
    if (title.invented()) {
      paragraphs.add(SheetTitle.INVENTED_NOTE);
    }
    paper.paragraphs(paragraphs, 0.8 * size);
  }
}

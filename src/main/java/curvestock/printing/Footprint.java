package curvestock.printing;

import curvestock.answer.BaseWords;
import curvestock.answer.Figures;
import curvestock.answer.HelixWords;
import curvestock.drawing.Ink;
import curvestock.drawing.JointPlaces;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.PaperSize;
import curvestock.drawing.PlanFigure;
import curvestock.drawing.SheetTitle;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BaseFrame;
import curvestock.helix.build.Bridge;
import curvestock.helix.build.HoleRule;
import curvestock.helix.build.Joint;
import curvestock.helix.build.Station;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.Riser;
import curvestock.job.Job;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The helix from above at full size, to lay on the bench before anything is cut: base, roadbed,
 * centre line of each track, every support and every joint with its bearing.
 */
public final class Footprint {

  private static final Pen EDGE = Pen.of(Ink.CUT, 0.35);
  private static final Pen TRACK = new Pen(Ink.MARK, 0.25, "12 3 2 3");
  private static final Pen JOINT = Pen.of(Ink.CUT, 0.5);
  private static final Pen SUPPORT = Pen.of(Ink.SHEET, 0.3);
  private static final Pen SINGLE = new Pen(Ink.SHEET, 0.3, "1.5 1.5");
  private static final Pen BASE = new Pen(Ink.CUT, 0.3, "8 3");
  private static final Pen STRIP = new Pen(Ink.CUT, 0.5, "2 1");
  private static final double END_ASIDE = 55;
  static final double LETTERS = 4.5;

  /** Places to measure the whole plan between. */
  private static final int CHECKS = 4;

  private static final double CROSS = 4;

  /** Arrows in a turn, and their size. */
  private static final int ARROWS = 8;

  private static final double ARROW = 30;
  private static final double BARB = 7;
  private static final Pen ARROW_PEN = Pen.of(Ink.CUT, 0.4);

  /** Names stand beside what they name, along the line. */
  private static final double LABEL_ASIDE = 32;

  private final Job job;
  private final HelixOrder order;
  private final HelixPlan plan;
  private final GroundPlan ground;
  private final PlanFigure figure;
  private final double half;
  private final Paper paper = new Paper();
  private final SupportNames names;

  private Footprint(Job job, HelixOrder order) {
    this.job = job;
    this.order = order;
    this.plan = order.plan();
    this.ground = plan.spec().ground();
    this.figure = new PlanFigure(plan, 1, Point.ORIGIN);
    this.half = ground.width().millimetres() / 2;
    this.names = new SupportNames(plan, figure, paper);
  }

  /** The plan as a PDF on the given paper. */
  public static byte[] pdf(Job job, HelixOrder order, PaperSize size, SpareFonts spare) {
    Footprint footprint = new Footprint(job, order);
    footprint.draw();
    String title = job.title() + " · Footprint of the helix";
    try (PdfBook book = new PdfBook(title, spare)) {
      new TiledDrawing(title, footprint.notes(), footprint.paper, size).addTo(book);
      return book.bytes();
    }
  }

  static Paper drawing(Job job, HelixOrder order) {
    Footprint footprint = new Footprint(job, order);
    footprint.draw();
    return footprint.paper;
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "The helix from above, all turns on top of each other. Full lines: edges of the roadbed."
            + " Long dashes: centre line of a track. Thick lines across: joints, with their bearings."
            + " "
            + (plan.spec().supports().riser() instanceof Riser.WoodBlocks
                ? "Crossed boxes: blocks, at true size"
                : "Circles with a cross: rods")
            + ", with their names S1, S2 ... as in the support table. Arrows point uphill. Bearings run counter-clockwise; 0° points to the right of this map.");
    if (!plan.stations().bridges().isEmpty()) {
      notes.add(
          "Short thick dashes along an edge: the %s that supports it where a support is left out, as in the support table."
              .formatted(
                  plan.stations().bridges().stream()
                      .map(bridge -> bridge.form().words())
                      .distinct()
                      .collect(Collectors.joining(" or "))));
    }
    if (order.base().isPresent()) {
      notes.add("Dashed straight lines: the boards of the base." + BaseWords.pads(order));
    }
    notes.add(
        "When the pages are taped together, measure straight between the small crosses marked check on the"
            + " roadbed's outer edge: "
            + measured(0, 2)
            + ", "
            + measured(1, 3)
            + ", "
            + measured(0, 1)
            + ".");
    across().ifPresent(notes::add);
    notes.add(
        "Lay the plan on the base. Check that you can get in and out and that your longest cars"
            + " clear the walls, then mark the supports through it.");
    if (job.invented()) {
      notes.add(SheetTitle.INVENTED_NOTE);
    }
    return notes;
  }

  /** Why the report's width of the whole is more than what is measured here; empty if it is not. */
  private Optional<String> across() {
    Length beyond = plan.beyondEdge(true);
    Figures figures = Figures.of(job);
    String alone = figures.length(ground.outerEdge().times(2));
    if (order.baseIsWider()) {
      return Optional.of(
          "Floor space %s, as the report has it, is the base's. The roadbed alone is %s."
              .formatted(HelixWords.across(order, figures), alone));
    }
    if (ground.isOval() || beyond.millimetres() <= 0) {
      return Optional.empty();
    }
    String what =
        plan.sidePlates().isPresent()
            ? "the side plates"
            : !strips().isEmpty() ? "the edge strips" : "what stands out beyond the roadbed's edge";
    return Optional.of(
        "Floor space %s, as the report has it, leaves room all round for %s, %s wide. The roadbed alone is %s."
            .formatted(HelixWords.across(order, figures), what, figures.length(beyond), alone));
  }

  private List<Bridge> strips() {
    return plan.stations().bridges().stream()
        .filter(bridge -> bridge.form() == Bridge.Form.STRIP)
        .toList();
  }

  /** What bridges a gap, with its name. */
  private void bridge(Bridge bridge) {
    paper.area(figure.bridge(bridge), "none", STRIP);
    double middle = (bridge.from() + bridge.to()) / 2;
    Point stand = figure.beside(middle + LABEL_ASIDE, bridge.outer() ? half * 0.8 : -half * 0.8);
    String name = bridge.form() == Bridge.Form.STRIP ? "edge strip" : "batten";
    paper.text(name, stand, LETTERS, Anchor.MIDDLE, false);
  }

  /** Where on the line, after so many quarters of the first turn. */
  private double quarter(int number) {
    double turn = Math.min(plan.climb().ringLength(), plan.climb().runPerTurn().millimetres());
    return turn * number / CHECKS;
  }

  /** On the outer edge there. */
  private Point check(int number) {
    return figure.beside(quarter(number), half);
  }

  private String measured(int from, int to) {
    return (from + 1)
        + "\u00A0to\u00A0"
        + (to + 1)
        + ":\u00A0"
        + Ruler.forHand(job.style()).of(check(from).distance(check(to)));
  }

  private void checks() {
    for (int i = 0; i < CHECKS; i++) {
      Point at = check(i);
      paper.line(at.minus(new Point(CROSS, 0)), at.plus(new Point(CROSS, 0)), EDGE);
      paper.line(at.minus(new Point(0, CROSS)), at.plus(new Point(0, CROSS)), EDGE);
      Point stand = at.minus(figure.outwards(quarter(i)).times(3 * CROSS));
      paper.text("check " + (i + 1), stand, LETTERS, Anchor.MIDDLE, true);
    }
  }

  private void draw() {
    order.base().ifPresent(this::base);
    double ring = plan.climb().ringLength();
    double oneTurn = Math.min(ring, plan.climb().runPerTurn().millimetres());
    along(-plan.spec().bottom().leadIn().millimetres(), 0);
    int steps = 4;
    for (int i = 0; i < steps; i++) {
      along(oneTurn * i / steps, oneTurn * (i + 1) / steps);
    }
    along(ring, ring + plan.spec().top().leadIn().millimetres());
    plan.stations().all().forEach(this::station);
    plan.stations().bridges().forEach(this::bridge);
    joints();
    checks();
    arrows();
    end("entry, bottom", -plan.spec().bottom().leadIn().millimetres());
    end("exit, top", ring + plan.spec().top().leadIn().millimetres());
  }

  private void base(BaseFrame base) {
    Outline board = base.demand().piece().shape().outline();
    int count = base.demand().count();
    for (int i = 0; i < count; i++) {
      for (Loop loop : board.at(new Pose(0, 0, 2 * Math.PI * i / count)).loops().toList()) {
        paper.area(loop.edges(), "none", BASE);
      }
    }
  }

  /** Both edges and every track, between two places of the line. */
  private void along(double from, double to) {
    if (to - from < 1e-6) {
      return;
    }
    paper.line(figure.besideLine(from, to, half), EDGE);
    paper.line(figure.besideLine(from, to, -half), EDGE);
    for (Length radius : ground.trackRadii()) {
      double outwards = radius.minus(ground.bedRadius()).millimetres();
      paper.line(figure.besideLine(from, to, outwards), TRACK);
    }
  }

  private void station(Station station) {
    double at = station.places().get(0);
    List<SupportRow> rows =
        plan.supports().rows().stream().filter(row -> row.station().equals(station)).toList();
    if (rows.stream().anyMatch(row -> row.edges().atOuter())) {
      support(at, 1, SUPPORT);
    }
    if (rows.stream().anyMatch(row -> row.edges().atInner())) {
      support(at, -1, SUPPORT);
    }
    rows.stream()
        .filter(row -> row.edges() == Edges.MIDDLE)
        .forEach(row -> support(row.at(), 0, SINGLE));
    names.name(station, rows);
  }

  /** At the outer (+1) or inner (−1) edge, or in the middle (0). */
  private void support(double at, int side, Pen pen) {
    Riser riser = plan.spec().supports().riser();
    if (riser instanceof Riser.ThreadedRods rods) {
      HoleRule rule = new HoleRule(plan.spec(), plan.climb());
      Point middle = figure.beside(at, side * rule.offset(rods).millimetres());
      double radius = rule.diameter(rods).millimetres() / 2;
      paper.circle(middle, radius, "none", pen);
      paper.line(
          middle.minus(new Point(radius + 4, 0)), middle.plus(new Point(radius + 4, 0)), pen);
      paper.line(
          middle.minus(new Point(0, radius + 4)), middle.plus(new Point(0, radius + 4)), pen);
    } else if (riser instanceof Riser.WoodBlocks blocks) {
      Point middle = figure.beside(at, side * (half - blocks.width().millimetres() / 2));
      Point across = figure.outwards(at).times(blocks.width().millimetres() / 2);
      Waypoint here = plan.line().at(at);
      Point along = Point.polar(blocks.along().millimetres() / 2, here.heading());
      paper.polygon(
          List.of(
              middle.plus(across).plus(along),
              middle.plus(across).minus(along),
              middle.minus(across).minus(along),
              middle.minus(across).plus(along),
              middle.plus(across).plus(along)),
          "none",
          pen);
      paper.line(middle.plus(across).plus(along), middle.minus(across).minus(along), pen);
      paper.line(middle.plus(across).minus(along), middle.minus(across).plus(along), pen);
    }
  }

  private void joints() {
    for (List<Joint> here : JointPlaces.of(plan)) {
      double at = here.get(0).at();
      paper.line(figure.beside(at, -half), figure.beside(at, half), JOINT);
      String names = JointPlaces.names(here);
      paper.text(
          "joint " + bearing(at) + ": " + names,
          figure.beside(at + LABEL_ASIDE, half * 0.6),
          LETTERS,
          Anchor.MIDDLE,
          true);
    }
  }

  /** Which way the track climbs, so that no page is laid the wrong way round. */
  private void arrows() {
    double length = plan.climb().ringLength();
    double turn = Math.min(length, plan.climb().runPerTurn().millimetres());
    double between = turn / ARROWS;
    double inside =
        ground.trackRadii().stream()
            .mapToDouble(radius -> radius.minus(ground.bedRadius()).millimetres())
            .min()
            .orElse(0);
    double aside = (inside - half) / 2;
    for (int i = 0; i < ARROWS; i++) {
      double at = betweenStations((i + 0.5) * between);
      Point tip = figure.beside(at + ARROW / 2, aside);
      paper.line(figure.besideLine(at - ARROW / 2, at + ARROW / 2, aside), ARROW_PEN);
      paper.line(figure.beside(at + ARROW / 2 - BARB, aside + BARB / 2), tip, ARROW_PEN);
      paper.line(figure.beside(at + ARROW / 2 - BARB, aside - BARB / 2), tip, ARROW_PEN);
    }
  }

  /** The middle between two supports of the ring next to a place of the first turn. */
  private double betweenStations(double wanted) {
    List<Double> places =
        plan.stations().ring().stream().map(station -> station.places().get(0)).sorted().toList();
    double best = wanted;
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < places.size(); i++) {
      double middle = (places.get(i) + places.get(i + 1)) / 2;
      if (Math.abs(middle - wanted) < nearest) {
        nearest = Math.abs(middle - wanted);
        best = middle;
      }
    }
    return best;
  }

  private void end(String words, double at) {
    paper.line(figure.beside(at, -half), figure.beside(at, half), EDGE);
    // Beside the line: on the lead, clear of its last support.
    Point stand = figure.beside(at + (at < 0 ? END_ASIDE : -END_ASIDE), half * 0.25);
    paper.text(words, stand, LETTERS, Anchor.MIDDLE, true);
  }

  private String bearing(double at) {
    return names.bearing(at);
  }
}

package curvestock.drawing;

import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BaseFrame;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.Bridge;
import curvestock.helix.build.HoleRule;
import curvestock.helix.build.Joint;
import curvestock.helix.build.PieceKind;
import curvestock.helix.build.SidePlates;
import curvestock.helix.build.SplicePlates;
import curvestock.helix.build.Station;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A helix seen from above: a large figure at true scale with bearings, joints and stations, and a
 * small one for each turn with the numbers of its pieces.
 */
public final class HelixPlanDrawing {

  /** Letters to the width of the helix, in a drawing of its own. */
  private static final double LETTERS = 60;

  private static final String BASE = "#e4e4e4";

  /** Turns side by side in a drawing of its own. */
  private static final int COLUMNS = 3;

  /** Turns side by side on a page, which has room for less height. */
  private static final int COLUMNS_ON_A_PAGE = 4;

  private final HelixPlan plan;
  private final HelixTitle title;
  private final Optional<BaseFrame> base;
  private final GroundPlan ground;
  private final double half;
  private final double size;
  private final Paper paper = new Paper();

  private HelixPlanDrawing(
      HelixPlan plan, HelixTitle title, Optional<BaseFrame> base, double letters) {
    this.plan = plan;
    this.title = title;
    this.base = base;
    this.ground = plan.spec().ground();
    this.half = ground.width().millimetres() / 2;
    this.size = across(ground) / letters;
  }

  private static double across(GroundPlan ground) {
    return ground.outerEdge().times(2).plus(ground.straight()).millimetres();
  }

  /** The drawing of a whole order as SVG: the helix and the base under it. */
  public static String svg(HelixOrder order, HelixTitle title) {
    return svg(new HelixPlanDrawing(order.plan(), title, order.base(), LETTERS));
  }

  /** The drawing of a helix without a base as SVG. */
  public static String svg(HelixPlan plan, HelixTitle title) {
    return svg(new HelixPlanDrawing(plan, title, Optional.empty(), LETTERS));
  }

  private static String svg(HelixPlanDrawing drawing) {
    HelixTitle title = drawing.title;
    drawing.large();
    new HelixTurnsFigure(drawing.plan, title, drawing.size, COLUMNS, drawing.paper).draw();
    drawing.words();
    return drawing.paper.svg(
        title.job() + ", plan of the helix",
        "One user unit is one millimetre; the large figure is at true scale.",
        2 * drawing.size);
  }

  /**
   * The large figure alone.
   *
   * @param letters how many of its largest letters' heights make the width of the helix
   */
  public static Paper large(HelixOrder order, HelixTitle title, double letters) {
    HelixPlanDrawing drawing = new HelixPlanDrawing(order.plan(), title, order.base(), letters);
    drawing.large();
    return drawing.paper;
  }

  /** The small figures alone: the helix turn by turn. */
  public static Paper turns(HelixOrder order, HelixTitle title, double letters) {
    GroundPlan ground = order.plan().spec().ground();
    Paper paper = new Paper();
    double across = across(ground);
    paper.line(Point.ORIGIN, new Point(across, 0), Pen.of("#ffffff", 0.1));
    new HelixTurnsFigure(order.plan(), title, across / letters, COLUMNS_ON_A_PAGE, paper).draw();
    return paper;
  }

  private void large() {
    PlanFigure figure = new PlanFigure(plan, 1, Point.ORIGIN);
    base();
    Pen edge = Pen.of(Ink.CUT, size / 12);
    Map<String, PieceKind> kinds =
        plan.roadbed().kinds().stream()
            .collect(Collectors.toMap(PieceKind::id, Function.identity()));
    for (BedPiece piece : plan.roadbed().pieces()) {
      // The very outline that is cut, with its lap, lead and ears.
      paper.area(kinds.get(piece.kindId()).at(piece.pose()).outer().edges(), Ink.PIECE, edge);
    }
    tracks(figure, size / 16);
    plates();
    plan.sidePlates().ifPresent(plates -> sidePlates(plates, figure));
    bridges(figure);
    stations(figure);
    joints(figure);
    ends(figure);
    middle();
  }

  /** The pieces of the base, each where it lies. */
  private void base() {
    Pen pen = Pen.of(Ink.SHEET, size / 12);
    base.ifPresent(
        frame -> frame.inPlace().forEach(piece -> paper.area(piece.outer().edges(), BASE, pen)));
  }

  /** Splice plates and their screws, dashed as what lies below. */
  private void plates() {
    if (!(plan.spec().construction() instanceof Construction.ButtWithPlate butt)) {
      return;
    }
    SplicePlates plates = new SplicePlates(butt, ground, plan.joints().all().size());
    Pen dashed = new Pen(Ink.CUT, size / 24, SvgNumber.of(size / 4));
    Pen thin = Pen.of(Ink.CUT, size / 30);
    for (List<Joint> here : JointPlaces.of(plan)) {
      Pose pose = plates.pose(plan.line(), here.get(0));
      paper.area(plates.shape().outline().at(pose).outer().edges(), "none", dashed);
      plates.holes().forEach(hole -> paper.area(hole.rim().at(pose).edges(), "none", thin));
    }
  }

  /**
   * At each edge of a joint that has a plate there on some turn, as it lies before it is shaped.
   */
  private void sidePlates(SidePlates plates, PlanFigure figure) {
    Pen pen = Pen.of(Ink.CUT, size / 24);
    Length thick = plates.plate().thickness();
    for (List<Joint> here : JointPlaces.of(plan)) {
      for (boolean outer : new boolean[] {true, false}) {
        if (!plates.replaced(outer).containsAll(here)) {
          double out = (outer ? 1 : -1) * (half + thick.millimetres() / 2);
          paper.polygon(
              figure.block(here.get(0).at(), out, thick, plates.plate().length()), Ink.PIECE, pen);
        }
      }
    }
  }

  private void tracks(PlanFigure figure, double width) {
    Pen pen = new Pen(Ink.MARK, width, SvgNumber.of(size) + " " + SvgNumber.of(size / 3));
    double bed = ground.bedRadius().millimetres();
    for (Length radius : ground.trackRadii()) {
      for (BedPiece piece : plan.roadbed().pieces()) {
        if (piece.layer() == 1) {
          double outwards = radius.millimetres() - bed;
          paper.line(figure.besideLine(piece.cutFrom(), piece.cutTo(), outwards), pen);
        }
      }
    }
  }

  /** What carries the roadbed over supports left out: battens dashed, as they lie below. */
  private void bridges(PlanFigure figure) {
    Pen dashed = new Pen(Ink.CUT, size / 10, SvgNumber.of(size / 3));
    Pen heavy = Pen.of(Ink.MARK, size / 8);
    for (Bridge bridge : plan.stations().bridges()) {
      boolean strip = bridge.form() == Bridge.Form.STRIP;
      paper.area(figure.bridge(bridge), strip ? Ink.MARK : "none", strip ? heavy : dashed);
    }
  }

  private void stations(PlanFigure figure) {
    for (Station station : plan.stations().all()) {
      double at = station.places().get(0);
      Pen pen = Pen.of(Ink.CUT, size / 20);
      for (SupportRow row : plan.supports().rows()) {
        if (row.station().equals(station) && row.edges() == Edges.MIDDLE) {
          Pen dashed = new Pen(Ink.CUT, size / 20, SvgNumber.of(size / 4));
          support(figure, row.at(), 0, "none", dashed);
        } else if (row.station().equals(station)) {
          stand(figure, row, pen);
        }
      }
      if (plan.stations().ring().contains(station)) {
        double beyond = plan.beyondEdge(false).millimetres();
        Point inside = figure.beside(at, -half - beyond - 0.5 * size);
        String name =
            station.name() + "  " + bearing(station.places().get(station.places().size() / 2));
        label(name, inside, figure.outwards(at).times(-1), 0.75 * size, false);
      } else {
        double beyond = plan.spec().beyondEdges().millimetres();
        Point outside = figure.beside(at, half + beyond + 0.5 * size);
        label(station.name(), outside, figure.outwards(at), 0.75 * size, false);
      }
    }
  }

  private void stand(PlanFigure figure, SupportRow row, Pen pen) {
    if (row.edges().atOuter()) {
      support(figure, row.at(), 1, Ink.DEFECT, pen);
    }
    if (row.edges().atInner()) {
      support(figure, row.at(), -1, Ink.DEFECT, pen);
    }
  }

  /** A block or a rod at the outer (+1) or inner (−1) edge, or in the middle (0). */
  private void support(PlanFigure figure, double at, int side, String fill, Pen pen) {
    Riser riser = plan.spec().supports().riser();
    if (riser instanceof Riser.ThreadedRods rods) {
      HoleRule rule = new HoleRule(plan.spec(), plan.climb());
      double out = side * rule.offset(rods).millimetres();
      boolean below = figure.isUnderTheExit(at, figure.beside(at, out));
      double radius = rule.diameter(rods).millimetres() / 2;
      paper.circle(figure.beside(at, out), radius, below ? "none" : fill, below ? hidden() : pen);
    } else if (riser instanceof Riser.WoodBlocks blocks) {
      double out = side * (half - blocks.width().millimetres() / 2);
      boolean below = figure.isUnderTheExit(at, figure.beside(at, out));
      List<Point> block = figure.block(at, out, blocks);
      paper.polygon(block, below ? "none" : fill, below ? hidden() : pen);
    }
  }

  private Pen hidden() {
    return new Pen(Ink.CUT, size / 20, SvgNumber.of(size / 10));
  }

  /** Joints that lie over each other share a line and a label. */
  private void joints(PlanFigure figure) {
    for (List<Joint> here : JointPlaces.of(plan)) {
      double at = here.get(0).at();
      String words = bearing(at) + ": " + JointPlaces.names(here);
      double reach = new LabelReach(plan, size).past(figure, at, words);
      Point out = figure.beside(at, half + size);
      paper.line(figure.beside(at, -half), out, Pen.of(Ink.CUT, size / 6));
      if (reach > size) {
        paper.line(out, figure.beside(at, half + reach), Pen.of(Ink.CUT, size / 20));
      }
      Point stand = figure.beside(at, half + reach).plus(figure.outwards(at).times(0.6 * size));
      if (reach <= size) {
        backing(words, stand, figure.outwards(at), 0.9 * size);
      }
      label(words, stand, figure.outwards(at), 0.9 * size, true);
    }
  }

  /** Hides a lead's lines behind a label that stands on it. */
  private void backing(String text, Point at, Point away, double letters) {
    double wide = 0.94 * letters * TextWidth.boldEms(text);
    double left = away.x() > 0.35 ? 0 : away.x() < -0.35 ? -wide : -wide / 2;
    double y = at.y() + away.y() * letters * 0.6;
    double ring = plan.climb().ringLength();
    List<Edge> leads = new ArrayList<>();
    leads.addAll(plan.line().portion(-plan.spec().bottom().leadIn().millimetres(), 0));
    leads.addAll(plan.line().portion(ring, ring + plan.spec().top().leadIn().millimetres()));
    boolean onLead =
        IntStream.rangeClosed(0, 8)
            .mapToObj(i -> new Point(at.x() + left + wide * i / 8, y))
            .anyMatch(p -> leads.stream().anyMatch(lead -> lead.distanceTo(p) < half));
    if (onLead) {
      Point low = new Point(at.x() + left, y - letters * 0.5);
      Point high = new Point(low.x() + wide, y + letters * 0.5);
      List<Point> box =
          List.of(low, new Point(high.x(), low.y()), high, new Point(low.x(), high.y()), low);
      paper.polygon(box, Ink.PIECE, Pen.of(Ink.PIECE, 0.1));
    }
  }

  /** A text that leads away from the figure. */
  private void label(String text, Point at, Point away, double letters, boolean bold) {
    label(paper, text, at, away, letters, bold);
  }

  static void label(Paper paper, String text, Point at, Point away, double letters, boolean bold) {
    Anchor anchor = away.x() > 0.35 ? Anchor.START : away.x() < -0.35 ? Anchor.END : Anchor.MIDDLE;
    Point shift = new Point(0, away.y() * letters * 0.6);
    paper.text(text, at.plus(shift), letters, anchor, bold);
  }

  private void ends(PlanFigure figure) {
    double ring = plan.climb().ringLength();
    double enters = -plan.spec().bottom().leadIn().millimetres();
    double leaves = ring + plan.spec().top().leadIn().millimetres();
    arrow(figure, enters - 3 * size, enters - 0.5 * size);
    arrow(figure, leaves + 0.5 * size, leaves + 3 * size);
    endLabel(figure, "entry, bottom, " + bearing(enters), enters - 3.5 * size, -1);
    endLabel(figure, "exit, top, " + bearing(leaves), leaves + 3.5 * size, 1);
  }

  /** To a tenth of a degree. */
  private String bearing(double at) {
    return SvgNumber.of(plan.line().bearing(at).degrees() % 359.95, 1) + "°";
  }

  private void arrow(PlanFigure figure, double from, double to) {
    Pen pen = Pen.of(Ink.MARK, size / 5);
    Point tip = figure.beside(to, 0);
    paper.line(figure.beside(from, 0), tip, pen);
    paper.line(figure.beside(to - size, 0.5 * size), tip, pen);
    paper.line(figure.beside(to - size, -0.5 * size), tip, pen);
  }

  private void endLabel(PlanFigure figure, String text, double at, int sense) {
    Waypoint here = plan.line().at(at);
    double turn = Math.min(plan.climb().ringLength(), plan.climb().runPerTurn().millimetres());
    boolean onRing =
        plan.line().portion(0, turn).stream()
            .anyMatch(
                edge -> edge.distanceTo(here.point()) < half + size * TextWidth.boldEms(text) / 2);
    if (onRing) {
      // A short lead ends over the ring: its name stands outside.
      double ears = plan.spec().beyondEdges().millimetres();
      Point outside = figure.beside(at, half + ears + size);
      label(text, outside, figure.outwards(at), size, true);
    } else {
      label(text, here.point(), Point.polar(sense, here.heading()), size, true);
    }
  }

  private void middle() {
    double arm = size;
    Pen pen = Pen.of(Ink.CUT, size / 12);
    paper.line(new Point(-arm, 0), new Point(arm, 0), pen);
    paper.line(new Point(0, -arm), new Point(0, arm), pen);
    List<String> lines = new ArrayList<>();
    lines.add(
        (ground.trackRadii().size() == 1 ? "track at R " : "tracks at R ")
            + ground.trackRadii().stream()
                .map(title.style()::formatMade)
                .collect(Collectors.joining(" and ")));
    lines.add(
        "roadbed "
            + title.style().formatMade(ground.innerEdge())
            + " to "
            + title.style().formatMade(ground.outerEdge()));
    if (ground.isOval()) {
      lines.add("straights of " + title.style().formatMade(ground.straight()));
    }
    double y = -2 * size;
    for (String line : lines) {
      paper.text(line, new Point(0, y), size, Anchor.MIDDLE, false);
      y -= 1.5 * size;
    }
  }

  private void words() {
    List<String> paragraphs = new ArrayList<>();
    paragraphs.add(
        title.job()
            + ": plan of the helix, "
            + plan.spec().construction().title()
            + ". Large figure at true scale, all turns on top of each other; small figures turn by turn,"
            + " each piece with the turn on which it begins. J: joint, with its bearing. S: support;"
            + " E and X: supports of the entry lead and the exit lead. Numbers: pieces, as on the cut"
            + " layouts and in the schedule. Bearings run counter-clockwise from the right.");
    if (plan.joints().layers() > 1) {
      paragraphs.add("Numbers outside: lower layer; inside: upper layer.");
    }
    paragraphs.addAll(legend(plan));
    base.ifPresent(
        frame ->
            paragraphs.add(
                "Grey: the base, %s identical pieces, %s across."
                    .formatted(
                        frame.demand().count(), title.style().formatMade(frame.acrossFlats()))));
    paragraphs.add("A planning aid: mock up a turn with your own trains before you cut.");
    if (title.invented()) {
      paragraphs.add(SheetTitle.INVENTED_NOTE);
    }
    paper.paragraphs(paragraphs, 0.8 * size);
  }

  /** What the dashes and bars of the large figure stand for, a sentence each. */
  public static List<String> legend(HelixPlan plan) {
    List<String> words = new ArrayList<>();
    boolean single = plan.supports().rows().stream().anyMatch(row -> row.edges() == Edges.MIDDLE);
    if (plan.spec().top().leadIn().millimetres() > 0) {
      words.add(
          "Dashed on the exit's lead: supports that stop at a turn below; the lead does not rest on them.");
    }
    if (single) {
      words.add("Dashed: single supports under the first turn.");
    }
    if (plan.spec().construction() instanceof Construction.ButtWithPlate) {
      words.add("Dashed at the joints: splice plates below, with their screws.");
    }
    if (plan.sidePlates().isPresent()) {
      words.add("Narrow bars at the joints, outside both edges: side plates.");
    }
    if (plan.stations().hasStrips()) {
      words.add("Heavy bands outside the edge: edge strips, where a support is left out.");
    }
    if (plan.stations().bridges().stream()
        .anyMatch(bridge -> bridge.form() == Bridge.Form.BATTEN)) {
      words.add(
          "Dashed between supports: a batten under the roadbed, where a support is left out.");
    }
    return words;
  }
}

package curvestock.printing;

import curvestock.answer.BenchWords;
import curvestock.answer.HalfLapWords;
import curvestock.drawing.Ink;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.PlanFigure;
import curvestock.drawing.TextWidth;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.Joint;
import curvestock.helix.build.LapEnd;
import curvestock.helix.build.PieceKind;
import curvestock.helix.build.SplicePlates;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.SplicePlate;
import curvestock.piece.Shape;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The template of one kind of roadbed piece, seen from above, its bulge up: cut line, centre line
 * of each track, joint faces, holes, supports, corners by letters.
 */
final class BedTemplate {

  private static final Pen CUT = Pen.of(Ink.CUT, 0.35);
  private static final Pen TRACK = new Pen(Ink.MARK, 0.25, "12 3 2 3");
  private static final Pen JOINT = new Pen(Ink.CUT, 0.25, "4 2");
  private static final Pen FINE = Pen.of(Ink.CUT, 0.15);

  private static final double LETTERS = 4;
  private static final double TITLE_WIDTH = 110;

  /** Degrees to both sides of the level chord that are tried. */
  private static final int TURNS = 30;

  /** Words want so much room along the piece to both sides, in millimetres. */
  private static final double ROOM_FOR_WORDS = 75;

  private final HelixPlan plan;
  private final PieceKind kind;
  private final Ruler ruler;
  private final List<BedPiece> pieces;
  private final BedPiece piece;
  private final GroundPlan ground;
  private final PlanFigure figure;
  private final double half;
  private final Pose view;
  private final Paper paper = new Paper();
  private final List<String> notes = new ArrayList<>();
  private String letters = "";

  private BedTemplate(HelixPlan plan, PieceKind kind, LengthStyle style) {
    this.plan = plan;
    this.kind = kind;
    this.ruler = new Ruler(style);
    pieces = plan.roadbed().pieces().stream().filter(p -> p.kindId().equals(kind.id())).toList();
    piece = pieces.get(0);
    ground = plan.spec().ground();
    half = ground.width().millimetres() / 2;
    figure = new PlanFigure(plan, 1, Point.ORIGIN);
    view = view();
  }

  static PaperTemplate of(HelixPlan plan, PieceKind kind, LengthStyle style) {
    return new BedTemplate(plan, kind, style).template();
  }

  /**
   * Turns the plan so that the bulge is up and the piece takes the least height, which for an arc
   * lays its chord level: fewer pages.
   */
  private Pose view() {
    Point from = plan.line().at(piece.cutFrom()).point();
    Point chord = plan.line().at(piece.cutTo()).point().minus(from);
    Point middle = plan.line().at((piece.cutFrom() + piece.cutTo()) / 2).point().minus(from);
    double turn = (chord.cross(middle) < 0 ? Math.PI : 0) - chord.angle();
    Outline outline = kind.blank().outline().at(piece.pose());
    Pose best = new Pose(0, 0, turn);
    double least = outline.at(best).box().height();
    for (int i = -TURNS; i <= TURNS; i++) {
      Pose tried = new Pose(0, 0, turn + Math.toRadians(i));
      double high = outline.at(tried).box().height();
      if (high < least - 1) {
        least = high;
        best = tried;
      }
    }
    return best;
  }

  private PaperTemplate template() {
    draw();
    String numbers = String.join(", ", plan.roadbed().numbersOf(kind));
    notes.add(
        "Piece "
            + kind.id()
            + " is needed "
            + times(kind.count())
            + (kind.count() == 1 ? ": it is number " : ": numbers ")
            + numbers
            + " in the assembly schedule. "
            + BenchWords.NUMBER);
    boolean blocks = plan.spec().supports().riser() instanceof Riser.WoodBlocks;
    notes.add(
        "Full line: cut on its waste side. Long and short dashes by turns: centre line of a track."
            + " Dashes across the piece: joints and laps."
            + (blocks ? " Dotted boxes: blocks below." : " Circles: holes for the rods.")
            + " The printed side is the upper side.");
    notes.add(BenchWords.UP);
    notes.add(letters);
    String title = kind.id() + ", " + kind.name();
    return new PaperTemplate(kind.id(), title, kind.count(), notes, paper);
  }

  private static String times(int count) {
    return count == 1 ? "once" : count + " times";
  }

  private void draw() {
    Outline outline = kind.blank().outline().at(piece.pose());
    new SupportsBelow(plan, pieces, view, paper, notes).draw();
    Shape shape = kind.demand().piece().shape();
    for (Loop loop : shape.outline().at(piece.pose()).loops().toList()) {
      paper.area(placed(loop.edges()), "none", CUT);
    }
    for (Length radius : ground.trackRadii()) {
      double outwards = radius.minus(ground.bedRadius()).millimetres();
      paper.line(placed(figure.besideLine(piece.cutFrom(), piece.cutTo(), outwards)), TRACK);
    }
    DrillCrosses.draw(shape, piece.pose().then(view), ruler, paper).ifPresent(notes::add);
    joints();
    words();
    letters = CornerLetters.draw(outline.at(view), paper, Ruler.forHand(ruler.style()));
  }

  private List<Edge> placed(List<Edge> edges) {
    return edges.stream().map(edge -> edge.at(view)).toList();
  }

  private Point beside(double at, double outwards) {
    return view.apply(figure.beside(at, outwards));
  }

  private void across(double at, Pen pen) {
    paper.line(beside(at, -half), beside(at, half), pen);
  }

  // Joints.

  private void joints() {
    if (plan.spec().construction() instanceof Construction.HalfLap joint) {
      double lap = joint.lap().millimetres();
      piece.lower().ifPresent(at -> lap(at.at(), at.at() + lap / 2));
      piece.upper().ifPresent(at -> lap(at.at(), at.at() - lap / 2));
      List<LapEnd> ends =
          Stream.concat(
                  piece.upper().map(at -> LapEnd.UPPER).stream(),
                  piece.lower().map(at -> LapEnd.LOWER).stream())
              .toList();
      if (!ends.isEmpty()) {
        notes.add(HalfLapWords.onPattern(ends, joint.lap(), plan.spec().plywood(), ruler.style()));
      }
    } else if (plan.spec().construction() instanceof Construction.ButtWithPlate butt) {
      SplicePlates plates = new SplicePlates(butt, ground, plan.joints().all().size());
      piece.lower().ifPresent(joint -> plate(butt.plate(), plates, joint, 1));
      piece.upper().ifPresent(joint -> plate(butt.plate(), plates, joint, -1));
      notes.add(
          "The splice plate below reaches from the joint to the dashed line. Crosses are its screws,"
              + " which come up from below: drill pilot holes there.");
    }
  }

  private void lap(double joint, double shoulder) {
    across(joint, JOINT);
    across(shoulder, JOINT);
  }

  private void plate(SplicePlate plate, SplicePlates plates, Joint at, int into) {
    double joint = at.at();
    double wide = plates.width().millimetres();
    double out =
        plate.form() == SplicePlate.Form.RECTANGLE
            ? plates.middleRadius().minus(ground.bedRadius()).millimetres()
            : 0;
    double end = joint + into * plate.length().millimetres() / 2;
    if (plate.form() == SplicePlate.Form.CURVED) {
      paper.line(beside(end, -wide / 2), beside(end, wide / 2), JOINT);
    } else {
      paper.line(
          onPlate(joint, end - joint, out - wide / 2),
          onPlate(joint, end - joint, out + wide / 2),
          JOINT);
    }
    for (Point place : plan.marks().screwsOf(plates, at, into)) {
      Point screw = view.apply(place);
      paper.line(screw.minus(new Point(2.5, 0)), screw.plus(new Point(2.5, 0)), FINE);
      paper.line(screw.minus(new Point(0, 2.5)), screw.plus(new Point(0, 2.5)), FINE);
      paper.circle(screw, 1.2, "none", FINE);
    }
  }

  /** On a flat plate that touches the line at the joint. */
  private Point onPlate(double joint, double along, double outwards) {
    Waypoint here = plan.line().at(joint);
    Point ahead = Point.polar(along, here.heading());
    return view.apply(figure.beside(joint, outwards).plus(ahead));
  }

  // Words.

  private void words() {
    double at = levelPlace();
    Point middle = beside(at, 0);
    double up = Math.signum(beside(at, half).y() - middle.y());
    String title = kind.id() + "  " + kind.name();
    double size = Math.min(Math.min(7, half / 5), TITLE_WIDTH / TextWidth.boldEms(title));
    double titleAt = betweenTracks(half * 0.36, size, up);
    paper.text(title, middle.plus(new Point(0, titleAt)), size, Anchor.MIDDLE, true);
    double sideAt = betweenTracks(-half * 0.5, LETTERS, up);
    paper.text("this side up", middle.plus(new Point(0, sideAt)), LETTERS, Anchor.MIDDLE, false);
    edgeNote(at, up > 0 ? half : -half, -6, up > 0 ? "outer" : "inner", up > 0);
    edgeNote(at, up > 0 ? -half : half, 6, up > 0 ? "inner" : "outer", up <= 0);
    for (Length radius : ground.trackRadii()) {
      double outwards = radius.minus(ground.bedRadius()).millimetres();
      Point stand = beside(at, outwards).plus(new Point(0, -LETTERS * 1.6));
      paper.text("track centre line, R " + ruler.of(radius), stand, LETTERS, Anchor.MIDDLE, false);
    }
    ends();
  }

  /** Where on the ring's part level text goes best: it lies level there, away from supports. */
  private double levelPlace() {
    List<Point> corners =
        kind.blank().outline().at(piece.pose()).at(view).edges().stream().map(Edge::start).toList();
    double best = (piece.from() + piece.to()) / 2;
    double least = Double.POSITIVE_INFINITY;
    for (int i = -20; i <= 20; i++) {
      double at = (piece.from() + piece.to()) / 2 + i * (piece.to() - piece.from()) / 50;
      Point along = beside(at + 1, 0).minus(beside(at - 1, 0));
      double slope = Math.abs(Math.toDegrees(Math.atan(along.y() / along.x())));
      double nearest =
          piece.stations().stream()
              .mapToDouble(place -> Math.abs(place.at() - at))
              .min()
              .orElse(ROOM_FOR_WORDS);
      double corner =
          corners.stream()
              .mapToDouble(point -> Math.abs(point.x() - beside(at, 0).x()))
              .min()
              .orElse(ROOM_FOR_WORDS);
      double crowded =
          Math.max(0, 1 - nearest / ROOM_FOR_WORDS) * 15
              + Math.max(0, 1 - 2 * corner / ROOM_FOR_WORDS) * 6;
      double cost = slope + crowded + Math.abs(i) * 0.01;
      if (cost < least) {
        least = cost;
        best = at;
      }
    }
    return best;
  }

  /** The height nearest to the wanted one at which text meets no track's line or its name. */
  private double betweenTracks(double wanted, double size, double up) {
    for (int step = 0; step < 40; step++) {
      double height = wanted + (step % 2 == 0 ? -1 : 1) * ((step + 1) / 2) * 2;
      boolean clear =
          ground.trackRadii().stream()
              .mapToDouble(radius -> up * radius.minus(ground.bedRadius()).millimetres())
              .noneMatch(
                  track -> track > height - size && track - LETTERS * 2.4 < height + size * 1.2);
      if (clear && Math.abs(height) < half - LETTERS * 3) {
        return height;
      }
    }
    return wanted;
  }

  private void edgeNote(double at, double outwards, double shift, String name, boolean outer) {
    Length radius = outer ? ground.outerEdge() : ground.innerEdge();
    Point stand = beside(at, outwards).plus(new Point(0, shift));
    paper.text(name + " edge, R " + ruler.of(radius), stand, LETTERS, Anchor.MIDDLE, false);
  }

  /** Of a half-lap, in millimetres; zero for any other joint. */
  static double lapLength(HelixPlan plan) {
    return plan.spec().construction() instanceof Construction.HalfLap joint
        ? joint.lap().millimetres()
        : 0;
  }

  private void ends() {
    double lap = lapLength(plan);
    double reach = Math.min(Math.max(60, lap + 28), (piece.cutTo() - piece.cutFrom()) / 4);
    boolean halved = lap > 0;
    String low =
        piece.lower().isEmpty()
            ? "lower end: entry"
            : "lower end" + (halved ? ": lap from the " + LapEnd.LOWER.face() : "");
    String high =
        piece.upper().isEmpty()
            ? "upper end: exit"
            : "upper end" + (halved ? ": lap from the " + LapEnd.UPPER.face() : "");
    Point from = beside(piece.cutFrom() + reach, half * 0.45);
    Point to = beside(piece.cutTo() - reach, half * 0.45);
    paper.text(low, from, LETTERS, Anchor.MIDDLE, true);
    paper.text(high, to, LETTERS, Anchor.MIDDLE, true);
  }
}

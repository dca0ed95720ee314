package curvestock.check;

import curvestock.check.Finding.Kind;
import curvestock.geometry.Point;
import curvestock.piece.AnnularSector;
import curvestock.piece.FreeShape;
import curvestock.piece.Piece;
import curvestock.piece.Shape;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Judges what is drawn but not cut: marks and numbers lie on pieces, every piece bears its own
 * centre line and number, and no outline is drawn a second time among the marks.
 */
final class MarkCheck {

  /** Marks end on the outline; this much over it is forgiven, in millimetres. */
  private static final double OVER = 1;

  /** Ticks beside tabs stand off the outline and are 2 mm long. */
  private static final double BESIDE = 5;

  /** A centre line lies where it belongs within this, in millimetres, and its chords' straying. */
  private static final double IN_PLACE = 0.05;

  private static final int SAMPLES = 8;

  /** Groups whose closed lines may well be as large as a piece. */
  private static final Set<String> NOT_PIECES = Set.of("remnant", "flip");

  /** Numbers larger than this from corner to corner would fit on any piece of the same kind. */
  private static final double LARGE_NUMBER = 12;

  /** A hole of a larger area, in square millimetres, is more than a rod goes through. */
  private static final double LARGEST_DRILLED = 3_000;

  /** Areas of an outline and its copy differ by less than this share. */
  private static final double SAME_AREA = 0.02;

  /** Some seconds of work; a sheet of a thousand numbered pieces has a tenth of it. */
  private static final long MOST_PAIRS = 400_000_000;

  private final Expectation expectation;
  private final DrawingKind kind;
  private final CutForm form;
  private final List<Placed> pieces;
  private final List<Seen> marks;
  private final Findings findings;

  /**
   * A piece that was read.
   *
   * @param fits the ways in which it is its nominal shape; empty if it is not
   */
  record Placed(DrawnPiece drawn, List<Congruence.Fit> fits) {}

  /** A mark, what encloses it, and points all along it. */
  private record Seen(Mark mark, Bounds bounds, List<Point> points) {}

  MarkCheck(
      Expectation expectation,
      DrawingKind kind,
      CutForm form,
      List<Placed> pieces,
      List<Mark> marks,
      Findings findings) {
    this.expectation = expectation;
    this.kind = kind;
    this.form = form;
    this.pieces = pieces;
    this.findings = findings;
    this.marks = marks.stream().map(mark -> new Seen(mark, boundsOf(mark), mark.points())).toList();
  }

  private static Bounds boundsOf(Mark mark) {
    return mark.text()
        .map(at -> new Bounds(at.x(), at.y(), at.x(), at.y()))
        .orElseGet(() -> Bounds.of(mark.edges()));
  }

  /**
   * Runs all tests; where they lie only if every outline was read, as else a mark may belong to one
   * that was not.
   *
   * @throws CheckException if there are too many marks to judge
   */
  void run(boolean allRead) throws CheckException {
    if ((long) marks.size() * Math.max(1, pieces.size()) > MOST_PAIRS) {
      throw new CheckException("there are too many marks to check: " + marks.size());
    }
    findCopies();
    if (allRead && !findings.isFull()) {
      checkPlaces();
      checkCentreLines();
      checkNumbers();
    }
  }

  private void findCopies() {
    Map<String, List<Chain>> groups = new LinkedHashMap<>();
    for (Seen seen : marks) {
      groups
          .computeIfAbsent(seen.mark().group(), key -> new ArrayList<>())
          .addAll(seen.mark().lines());
    }
    groups.forEach(
        (group, chains) ->
            DxfChains.of(chains).stream()
                .filter(Chain::closed)
                .forEach(chain -> findCopy(group, chain)));
  }

  private void findCopy(String group, Chain chain) {
    TraceLoop line = new TraceLoop(chain.edges());
    if (NOT_PIECES.contains(group) || (group.equals("sheet") && isOfTheSheet(line))) {
      return;
    }
    for (Placed piece : pieces) {
      TraceLoop outer = piece.drawn().asDrawn();
      if (isAsLarge(line, outer) && Congruence.onEachOther(line, outer)) {
        findings.add(
            Kind.STRUCTURE,
            "the outline of "
                + piece.drawn().called()
                + " is drawn a second time "
                + in(group)
                + ": delete it there",
            piece.drawn().name());
        return;
      }
    }
    expectation.pieces().stream()
        .filter(piece -> isOutlineOf(piece, line))
        .findFirst()
        .ifPresent(
            piece ->
                findings.add(
                    Kind.STRUCTURE,
                    "a piece " + piece.id() + " is drawn " + in(group) + near(line) + NOT_CUT));
  }

  private static final String NOT_CUT = ", where it is not cut: move it to 'cut' or delete it";

  private static String in(String group) {
    return group.isEmpty() ? "outside all groups" : "in '" + group + "'";
  }

  private static String near(TraceLoop line) {
    return " near " + Shown.place(line.edges().get(0).at(0.5));
  }

  private boolean isOfTheSheet(TraceLoop line) {
    List<TraceLoop> own = new ArrayList<>(TraceShape.of(expectation.sheet().outline()).loops());
    expectation.sheet().defects().forEach(o -> own.addAll(TraceShape.of(o).loops()));
    return own.stream().anyMatch(loop -> Congruence.onEachOther(loop, line));
  }

  private boolean isOutlineOf(Piece piece, TraceLoop line) {
    TraceLoop nominal = TraceShape.of(piece.shape().outline()).outer();
    List<TraceLoop> readings = new ArrayList<>(List.of(line));
    try {
      readings.add(new FinishedSize(form).of(List.of(new Chain(line.edges(), true))).outer());
    } catch (CheckException e) {
      // Not of the form of the cuts: then only as it is drawn.
      return isAsLarge(line, nominal) && isShape(nominal, line);
    }
    return readings.stream().anyMatch(loop -> isAsLarge(loop, nominal) && isShape(nominal, loop));
  }

  private static boolean isAsLarge(TraceLoop a, TraceLoop b) {
    double area = Math.abs(b.area());
    return Math.abs(Math.abs(a.area()) - area) <= SAME_AREA * area;
  }

  private static boolean isShape(TraceLoop nominal, TraceLoop line) {
    return Congruence.fits(
            new TraceShape(nominal.turned(true), List.of()),
            new TraceShape(line.turned(true), List.of()))
        .stream()
        .anyMatch(fit -> fit.error() <= LayoutCheck.SHAPE_TOLERANCE);
  }

  private void checkPlaces() {
    for (Seen seen : marks) {
      Optional<Double> over =
          switch (seen.mark().group()) {
            case "mark", "label", "word" -> Optional.of(OVER);
            case "tab" -> Optional.of(BESIDE + form.grown());
            default -> Optional.empty();
          };
      if (over.isPresent() && !findings.isFull() && on(seen, over.get()).isEmpty()) {
        findings.add(
            Kind.MARK,
            (Set.of("label", "word").contains(seen.mark().group()) ? "a number or word" : "a mark")
                + " near "
                + Shown.place(seen.points().get(0))
                + " lies on no piece: move it back, or write the file again");
      }
    }
  }

  /** The piece on which a mark lies wholly. */
  private Optional<Placed> on(Seen seen, double over) {
    return pieces.stream()
        .filter(
            piece -> seen.points().stream().allMatch(point -> holds(piece.drawn(), point, over)))
        .findFirst();
  }

  private static boolean holds(DrawnPiece piece, Point point, double over) {
    return piece.bounds().holds(point, over)
        && (isInside(piece.shape(), point)
            || piece.shape().edges().stream().anyMatch(edge -> edge.distanceTo(point) <= over));
  }

  /** A centre line may run over a hole for a rod; the hollow of a ring is no part of it. */
  private static boolean isInside(TraceShape shape, Point point) {
    return shape.outer().windings(point) != 0
        && shape.holes().stream()
            .filter(hole -> Math.abs(hole.area()) > LARGEST_DRILLED)
            .allMatch(hole -> hole.windings(point) == 0);
  }

  private void checkCentreLines() {
    List<Seen> lines = marks.stream().filter(seen -> seen.mark().group().equals("mark")).toList();
    for (Placed piece : pieces) {
      List<Trace> course = piece.drawn().piece().map(MarkCheck::course).orElse(List.of());
      boolean missing =
          !lines.isEmpty()
              && !course.isEmpty()
              && !piece.fits().isEmpty()
              && piece.fits().stream().noneMatch(fit -> isMarked(course, fit.move(), lines));
      if (missing && !findings.isFull()) {
        findings.add(
            Kind.MARK,
            piece.drawn().called()
                + " does not bear its centre line: it is missing or not where it belongs",
            piece.drawn().name());
      }
    }
  }

  /** The line along the middle of a piece of roadbed. */
  private static List<Trace> course(Piece piece) {
    Shape blank = piece.shape().blank();
    if (blank instanceof AnnularSector sector) {
      double sweep = sector.sweep().radians();
      return List.of(
          new Trace.Round(Point.ORIGIN, sector.radius().millimetres(), -sweep / 2, sweep));
    }
    return blank instanceof FreeShape free
        ? free.course().stream().map(TraceLoop::trace).toList()
        : List.of();
  }

  private boolean isMarked(List<Trace> course, Congruence.Move move, List<Seen> lines) {
    double within = IN_PLACE + form.linesWithin();
    for (Trace edge : course) {
      for (int i = 0; i <= SAMPLES; i++) {
        Point point = move.apply(edge.at((double) i / SAMPLES));
        boolean drawn =
            lines.stream()
                .filter(seen -> seen.bounds().holds(point, within))
                .flatMap(seen -> seen.mark().edges().stream())
                .anyMatch(line -> line.distanceTo(point) <= within);
        if (!drawn) {
          return false;
        }
      }
    }
    return true;
  }

  private void checkNumbers() {
    IdentityHashMap<Placed, List<Seen>> labels = new IdentityHashMap<>();
    for (Seen seen : marks) {
      if (isNumber(seen.mark())) {
        on(seen, OVER)
            .ifPresent(piece -> labels.computeIfAbsent(piece, k -> new ArrayList<>()).add(seen));
      }
    }
    for (Placed piece : pieces) {
      List<Seen> own = labels.getOrDefault(piece, List.of());
      if (own.stream().filter(seen -> isWhole(seen.mark())).count() > 1) {
        findings.add(
            Kind.MARK,
            piece.drawn().called() + " bears " + own.size() + " numbers: one belongs elsewhere",
            piece.drawn().name());
      } else if (own.isEmpty() && othersBearOne(piece, labels)) {
        findings.add(
            Kind.MARK,
            piece.drawn().called() + " bears no number, though others do",
            piece.drawn().name());
      }
    }
  }

  /** On drawings for people there are other words, but only numbers are bold. */
  private boolean isNumber(Mark mark) {
    return mark.group().equals("label") && (kind != DrawingKind.ANNOTATED || mark.isBold());
  }

  /** Whether a mark is all of a number: the strokes of a DXF's letters are marks of their own. */
  private boolean isWhole(Mark mark) {
    return kind != DrawingKind.DXF || mark.text().isPresent();
  }

  /** On cut files a small piece may have no room for its number; on drawings for people all do. */
  private boolean othersBearOne(Placed piece, IdentityHashMap<Placed, List<Seen>> labels) {
    if (kind == DrawingKind.ANNOTATED) {
      return marks.stream().anyMatch(seen -> seen.mark().isBold());
    }
    return labels.entrySet().stream()
        .filter(entry -> entry.getKey().drawn().piece().equals(piece.drawn().piece()))
        .anyMatch(entry -> isLarge(entry.getValue()));
  }

  private static boolean isLarge(List<Seen> label) {
    double left = label.stream().mapToDouble(s -> s.bounds().left()).min().orElse(0);
    double right = label.stream().mapToDouble(s -> s.bounds().right()).max().orElse(0);
    double bottom = label.stream().mapToDouble(s -> s.bounds().bottom()).min().orElse(0);
    double top = label.stream().mapToDouble(s -> s.bounds().top()).max().orElse(0);
    return Math.hypot(right - left, top - bottom) >= LARGE_NUMBER;
  }
}

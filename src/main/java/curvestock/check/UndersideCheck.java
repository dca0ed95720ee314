package curvestock.check;

import curvestock.check.Finding.Kind;
import curvestock.geometry.MirrorLine;
import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Judges the drawing of a sheet's underside by that of its upper side: turned over the line in its
 * group or layer {@code flip}, its areas must clear the laps below, and nothing else; holes for
 * dowels must lie in the waste, and fit the same two dowels when the sheet is turned.
 */
final class UndersideCheck {

  /** The line must run through the sheet's middle within this, in millimetres. */
  private static final double IN_THE_MIDDLE = 0.01;

  /** Wood between a dowel and a piece beyond the kerf, at least, in millimetres. */
  private static final double WOOD = 1;

  private final Drawing underside;
  private final Expectation expectation;
  private final List<MarkCheck.Placed> pieces;
  private final Findings findings = new Findings();
  private final Bounds sheet;

  private UndersideCheck(Drawing underside, Expectation expectation, Drawing above) {
    this.underside = underside;
    this.expectation = expectation;
    pieces = LayoutCheck.pieces(above, expectation);
    sheet = Bounds.of(TraceShape.of(expectation.sheet().outline()).edges());
  }

  /** Whether a text is a drawing of an underside; no, if it cannot be read. */
  static boolean isUnderside(String text, Expectation expectation) {
    try {
      return Drawing.read(text, expectation.sheet()).isUnderside();
    } catch (CheckException e) {
      return false;
    }
  }

  /**
   * Judges an underside.
   *
   * @param above the drawing of the same sheet's upper side
   * @throws CheckException if one of the two cannot be judged
   */
  static CheckReport check(String text, String above, Expectation expectation)
      throws CheckException {
    Drawing upper = Drawing.read(above, expectation.sheet());
    Drawing under = Drawing.read(text, expectation.sheet());
    UndersideCheck check = new UndersideCheck(under, expectation, upper);
    check.run();
    return new CheckReport(
        under.kind(),
        check.findings.list(),
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        0,
        false);
  }

  private void run() throws CheckException {
    findings.addAll(underside.oddities());
    Optional<MirrorLine> line = line();
    if (line.isEmpty()) {
      findings.add(
          Kind.STRUCTURE,
          "the line over which the sheet is turned (flip) is missing or not in its middle");
      return;
    }
    List<DrawnPocket> below = new ArrayList<>();
    for (DrawnPocket pocket : underside.pockets()) {
      if (pocket.fromAbove()) {
        findings.add(
            Kind.POCKET, pocket.name() + " is cleared from above: not in this file", pocket.name());
      } else {
        below.add(turned(pocket, line.get()));
      }
    }
    new PocketCheck(expectation, false, pieces, findings).run(below);
    checkDowels(line.get());
  }

  /** The straight line of the group {@code flip} that halves the sheet. */
  private Optional<MirrorLine> line() {
    double x = (sheet.left() + sheet.right()) / 2;
    double y = (sheet.bottom() + sheet.top()) / 2;
    for (Mark mark : underside.marks()) {
      for (Trace edge : mark.group().equals("flip") ? mark.edges() : List.<Trace>of()) {
        if (edge instanceof Trace.Straight straight) {
          if (isOn(straight.from().x(), x) && isOn(straight.to().x(), x)) {
            return Optional.of(new MirrorLine(true, x));
          }
          if (isOn(straight.from().y(), y) && isOn(straight.to().y(), y)) {
            return Optional.of(new MirrorLine(false, y));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isOn(double at, double middle) {
    return Math.abs(at - middle) <= IN_THE_MIDDLE;
  }

  private static DrawnPocket turned(DrawnPocket pocket, MirrorLine line) {
    return new DrawnPocket(
        pocket.name(),
        false,
        pocket.depth(),
        () -> pocket.lines().chains().stream().map(chain -> turned(chain, line)).toList());
  }

  private static Chain turned(Chain chain, MirrorLine line) {
    return new Chain(
        chain.edges().stream().map(edge -> turned(edge, line)).toList(), chain.closed());
  }

  private static Trace turned(Trace edge, MirrorLine line) {
    if (edge instanceof Trace.Round round) {
      Point centre = line.apply(round.centre());
      double first = line.apply(round.start()).minus(centre).angle();
      return new Trace.Round(centre, round.radius(), first, -round.sweep());
    }
    return new Trace.Straight(line.apply(edge.start()), line.apply(edge.end()));
  }

  private void checkDowels(MirrorLine line) {
    List<Chain> dowels = underside.drilled();
    double clear = expectation.cutting().kerf().millimetres() + WOOD;
    for (Chain dowel : dowels) {
      DrilledHole.check(dowel, java.util.OptionalDouble.empty(), findings);
      Point at = line.apply(middle(dowel));
      boolean fits = dowels.stream().anyMatch(o -> middle(o).distance(at) <= IN_THE_MIDDLE);
      if (!fits) {
        findings.add(
            Kind.STRUCTURE, "turned over, the sheet does not fit its dowels: they lie unevenly");
      }
      double radius = middle(dowel).distance(dowel.start());
      for (MarkCheck.Placed piece : pieces) {
        TraceShape shape = piece.drawn().shape();
        boolean inWood =
            shape.holds(at)
                || shape.edges().stream().anyMatch(e -> e.distanceTo(at) < radius + clear);
        if (piece.drawn().bounds().holds(at, radius + clear) && inWood) {
          findings.add(
              Kind.STRUCTURE,
              "a dowel lies in or too near to " + piece.drawn().called(),
              piece.drawn().name());
        }
      }
    }
  }

  private static Point middle(Chain circle) {
    return circle.edges().get(0) instanceof Trace.Round round ? round.centre() : circle.start();
  }
}

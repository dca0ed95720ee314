package curvestock.machine;

import curvestock.geometry.Arc;
import curvestock.geometry.Clearance;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.build.Lap;
import curvestock.layout.Placement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Writes beside each lap from which side its wood is taken, and once on the piece which face is up:
 * on the wood that stays, its foot towards the inner edge, clear of lines and letters.
 */
final class LapWords {

  private static final double[] HEIGHTS = {8, 6, 4, 3};

  /** How far from the shoulder words may begin, in millimetres. */
  private static final double FARTHEST = 160;

  private static final double STEP = 6;

  /** From outline and lines, in millimetres. */
  private static final double CLEAR = 1.5;

  /** Between two words. */
  private static final double APART = 4;

  private final Placement placement;
  private final Outline outline;
  private final List<DrawnLine> lines;
  private final List<Outline> boxes = new ArrayList<>();

  /**
   * The words of one piece.
   *
   * @param lines that are drawn on it or near it
   * @param number of the piece, if it bears one
   */
  LapWords(Placement placement, List<Edge> lines, Optional<Engraving> number) {
    this.placement = placement;
    this.lines = DrawnLine.of(lines);
    outline = Drilling.cut(placement.piece().shape(), Drilling.LARGEST).at(placement.pose());
    number.ifPresent(letters -> boxes.add(letters.box()));
  }

  /** The words for laps in the piece's own frame. */
  List<Engraving> of(List<Lap> laps) {
    List<Engraving> words = new ArrayList<>();
    for (Lap lap : laps) {
      place(lap.at(placement.pose()), lap.end().side().toUpperCase(Locale.ROOT))
          .ifPresent(words::add);
    }
    for (Lap lap : laps.subList(0, Math.min(1, laps.size()))) {
      place(lap.at(placement.pose()), "UP").ifPresent(words::add);
    }
    return words;
  }

  private Optional<Engraving> place(Lap lap, String words) {
    for (double height : HEIGHTS) {
      double width = Engraving.width(words, height);
      for (double from = 2 * CLEAR; from < FARTHEST; from += STEP) {
        for (int side = 1; side >= -1; side -= 2) {
          Engraving tried = at(lap, words, height, from + width / 2, side);
          if (isFree(tried)) {
            boxes.add(tried.box());
            return Optional.of(tried);
          }
        }
      }
    }
    return Optional.empty();
  }

  /** The words with their middle so far from the shoulder, a quarter of the width aside. */
  private Engraving at(Lap lap, String words, double height, double along, int side) {
    double aside = side * lap.width().millimetres() / 4;
    Point middle;
    double angle;
    if (lap.course().get(0) instanceof Arc arc) {
      double direction =
          lap.shoulder().minus(arc.centre()).angle()
              - Math.signum(arc.sweep()) * along / arc.radius();
      middle = arc.centre().plus(Point.polar(arc.radius() + aside, direction));
      angle = direction - Math.PI / 2;
    } else {
      Point ahead = lap.inwards();
      middle =
          lap.shoulder()
              .plus(ahead.times(along))
              .plus(new Point(-ahead.y(), ahead.x()).times(aside));
      angle = ahead.angle();
    }
    Pose pose = new Pose(middle.x(), middle.y(), angle);
    Point corner = pose.apply(new Point(-Engraving.width(words, height) / 2, -height / 2));
    return new Engraving(words, corner, height, angle);
  }

  private boolean isFree(Engraving words) {
    Outline box = words.box();
    return Clearance.within(box, outline) >= CLEAR
        && boxes.stream().allMatch(other -> Clearance.between(box, other) >= APART)
        && lines.stream().noneMatch(line -> line.runsThrough(box, CLEAR));
  }
}

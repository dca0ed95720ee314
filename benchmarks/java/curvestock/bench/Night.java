package curvestock.bench;

import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;

/**
 * How far the overnight search has come with one case.
 *
 * @param first pieces, or square millimetres of several kinds, that quick effort gave at the
 *     beginning
 * @param seed the last one tried; 0 before the first
 * @param pairs that each seed was given to test, the last time
 * @param layout the best so far
 */
record Night(BenchCase which, double first, long seed, long pairs, Layout layout) {

  /** Pieces of a single kind, else square millimetres of pieces. */
  double value() {
    return value(which, layout);
  }

  static double value(BenchCase which, Layout layout) {
    return which.isMixed() ? layout.pieceArea() : layout.placements().size();
  }

  /**
   * Whether a search bettered what quick effort gives; areas are compared to a square millimetre.
   */
  boolean isBettered() {
    return value() > first + 0.5;
  }

  /** After the next seed, with what is better of the two layouts. */
  Night after(long tried, long tested, Layout found) {
    boolean better = value(which, found) > value() + 1e-6;
    return new Night(which, first, tried, tested, better ? found : layout);
  }

  /** What a line of the table of nights holds after the name; places to the last bit. */
  List<String> cells() {
    StringJoiner places = new StringJoiner(";");
    List<Piece> kinds = which.wanted().stream().map(Demand::piece).toList();
    for (Placement placement : layout.placements()) {
      Pose pose = placement.pose();
      places.add(
          kinds.indexOf(placement.piece())
              + " "
              + pose.x()
              + " "
              + pose.y()
              + " "
              + pose.rotation());
    }
    return List.of(
        Double.toString(first), Long.toString(seed), Long.toString(pairs), places.toString());
  }

  /** The reverse of {@link #cells}. */
  static Night parse(BenchCase which, List<String> cells) {
    List<Placement> placements = new ArrayList<>();
    for (String place : cells.get(3).split(";", -1)) {
      String[] parts = place.split(" ", -1);
      Pose pose =
          new Pose(
              Double.parseDouble(parts[1]),
              Double.parseDouble(parts[2]),
              Double.parseDouble(parts[3]));
      placements.add(new Placement(which.wanted().get(Integer.parseInt(parts[0])).piece(), pose));
    }
    return new Night(
        which,
        Double.parseDouble(cells.get(0)),
        Long.parseLong(cells.get(1)),
        Long.parseLong(cells.get(2)),
        new Layout(which.sheet(), which.cutting(), placements));
  }
}

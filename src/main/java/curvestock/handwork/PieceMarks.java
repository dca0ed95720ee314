package curvestock.handwork;

import curvestock.geometry.Point;
import curvestock.layout.Placement;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * All that is marked of one piece, as it lies on the sheet.
 *
 * @param index of the piece in its layout
 * @param corners of its outer loop, counter-clockwise; corner 0 is A on every drawing
 * @param arcs of its outer loop, in order
 * @param holes the round holes through it
 */
public record PieceMarks(
    int index, Placement placement, List<Point> corners, List<ArcMark> arcs, List<Hole> holes) {

  /** A round hole, as it lies on the sheet. */
  public record Hole(Point centre, Length diameter) {}

  public PieceMarks {
    corners = List.copyOf(corners);
    arcs = List.copyOf(arcs);
    holes = List.copyOf(holes);
  }

  /** The arcs' pivots, each once. */
  public List<ArcMark> pivots() {
    List<ArcMark> different = new ArrayList<>();
    for (ArcMark arc : arcs) {
      if (different.stream().noneMatch(d -> d.pivot().distance(arc.pivot()) < SAME_POINT)) {
        different.add(arc);
      }
    }
    return different;
  }

  private static final double SAME_POINT = 1e-3;

  /** More pivots than this are no trammel work. */
  private static final int MOST_PIVOTS = 3;

  /** Whether it is drawn with a trammel rather than by its pattern. */
  public boolean isSwung() {
    return pivots().size() <= MOST_PIVOTS;
  }

  /** Whether two arcs are parts of one circle: something stands out between them. */
  public boolean hasEars() {
    return arcs.stream()
        .anyMatch(
            arc ->
                arcs.stream()
                    .anyMatch(
                        other ->
                            !other.equals(arc)
                                && other.pivot().distance(arc.pivot()) < SAME_POINT
                                && Math.abs(other.radius() - arc.radius()) < SAME_POINT));
  }

  /** Whether a trammel that swings on past the end of an arc can cut into the piece. */
  public boolean hasStops() {
    return isSwung() && !arcs.isEmpty() && corners.size() > 4;
  }

  /**
   * The letter of a corner: A to Z, then AA, AB and so on. M is left out, since it is the point
   * halfway along an arc.
   */
  public static String letter(int corner) {
    String last = LETTERS.substring(corner % LETTERS.length(), corner % LETTERS.length() + 1);
    return corner < LETTERS.length() ? last : letter(corner / LETTERS.length() - 1) + last;
  }

  private static final String LETTERS = "ABCDEFGHIJKLNOPQRSTUVWXYZ";

  /** A distance between two corners, to measure twice by. */
  public record Check(int from, int to, double distance) {}

  /**
   * Distances that fix the corners: of four corners both diagonals; of more, from A to each that is
   * not its neighbour.
   */
  public List<Check> diagonals() {
    List<Check> checks = new ArrayList<>();
    int count = corners.size();
    for (int from = 0; from < (count == 4 ? 2 : 1); from++) {
      for (int to = from + 2; to < count - (from == 0 ? 1 : 0); to++) {
        checks.add(new Check(from, to, corners.get(from).distance(corners.get(to))));
      }
    }
    return checks;
  }

  /**
   * Two corners from which a hole is struck with arcs.
   *
   * @param from numbers of the corners
   */
  public record Struck(int from, int and) {}

  /** The two of these corners whose arcs cross most squarely at the point. */
  public Struck struck(Point at, List<Integer> among) {
    Struck best = new Struck(among.get(0), among.get(1));
    double squarest = -1;
    for (int i : among) {
      for (int j : among) {
        Point a = corners.get(i).minus(at);
        Point b = corners.get(j).minus(at);
        double square = Math.abs(a.cross(b)) / (a.norm() * b.norm());
        if (i < j && square > squarest + SAME_POINT) {
          squarest = square;
          best = new Struck(i, j);
        }
      }
    }
    return best;
  }

  /** So many corners, far from each other, that place the piece; all if it has no more. */
  public List<Integer> placing(int most) {
    List<Integer> chosen = new ArrayList<>(List.of(0));
    while (chosen.size() < Math.min(most, corners.size())) {
      int farthest = -1;
      double far = -1;
      for (int i = 0; i < corners.size(); i++) {
        Point corner = corners.get(i);
        double near =
            chosen.stream().mapToDouble(c -> corners.get(c).distance(corner)).min().orElseThrow();
        if (near > far + SAME_POINT) {
          far = near;
          farthest = i;
        }
      }
      chosen.add(farthest);
    }
    chosen.sort(null);
    return chosen;
  }
}

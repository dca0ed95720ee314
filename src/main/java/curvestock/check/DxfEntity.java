package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One entity of a DXF file, or one entry of its tables.
 *
 * @param name such as LINE or VERTEX
 * @param groups its codes and values, in the order of the file
 * @param line where it begins in the file, from 1
 */
record DxfEntity(String name, List<Group> groups, int line) {

  private static final double FARTHEST = 1e6;

  /** A group's code and its value. */
  record Group(int code, String value) {}

  /** The layer in capitals; empty if none is said. */
  String layer() {
    return last(8).orElse("").toUpperCase(Locale.ROOT);
  }

  boolean flag(int bit) throws CheckException {
    return ((int) number(70, 0) & bit) != 0;
  }

  /** The last group of the code. */
  Optional<String> last(int code) {
    return groups.stream()
        .filter(group -> group.code() == code)
        .reduce((a, b) -> b)
        .map(Group::value);
  }

  double number(int code, double otherwise) throws CheckException {
    Optional<String> text = last(code);
    return text.isEmpty() ? otherwise : number(text.get());
  }

  /**
   * The value as a number.
   *
   * @throws CheckException if it is none, or farther out than a kilometre
   */
  double number(String text) throws CheckException {
    try {
      double value = Double.parseDouble(text.strip());
      if (Math.abs(value) <= FARTHEST) {
        return value;
      }
    } catch (NumberFormatException e) {
      throw new CheckException(
          "line " + line + ": " + name + " has '" + text + "' where a number must be", e);
    }
    throw new CheckException("line " + line + ": a number of " + name + " is out of bounds");
  }

  /** Whether any group of these codes is not zero. */
  boolean isNotZero(int... codes) throws CheckException {
    for (int code : codes) {
      if (number(code, 0) != 0) {
        return true;
      }
    }
    return false;
  }

  /** The corners of a lightweight polyline, each with the bulge of the edge that follows. */
  List<Corner> corners() throws CheckException {
    List<Corner> corners = new ArrayList<>();
    double x = 0;
    for (Group group : groups) {
      switch (group.code()) {
        case 10 -> x = number(group.value());
        case 20 -> corners.add(new Corner(new Point(x, number(group.value())), 0));
        case 42 -> {
          if (!corners.isEmpty()) {
            Corner before = corners.remove(corners.size() - 1);
            corners.add(new Corner(before.at(), number(group.value())));
          }
        }
        default -> {
          // Widths and the like.
        }
      }
    }
    return corners;
  }

  /** A corner of a polyline, in the file's unit, and the bulge of the edge after it. */
  record Corner(Point at, double bulge) {}
}

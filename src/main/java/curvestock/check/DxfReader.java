package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Reads the lines of a DXF file (ASCII, release 12): LINE, ARC, CIRCLE and POLYLINE with bulges.
 * Shares no code with the writer. Stops at stated limits.
 *
 * <p>Comments (group 999) say the unit and the form of the cut: release 12 has no variable for the
 * unit. Without such a comment millimetres and the finished size are taken.
 */
final class DxfReader {

  static final String FORM = "curvestock form: ";
  static final String UNIT = "curvestock unit: ";

  private static final int MOST_CHARACTERS = 20_000_000;
  private static final int MOST_ENTITIES = 300_000;
  private static final int MOST_ODDITIES = 20;
  private static final double FARTHEST = 1e6;

  /** One entity: its name and its groups; where a group comes twice, the last counts. */
  private record Entity(String name, Map<Integer, String> groups, int line) {

    String layer() {
      return groups.getOrDefault(8, "").toUpperCase(Locale.ROOT);
    }

    boolean flag(int bit) throws CheckException {
      return ((int) number(70, 0) & bit) != 0;
    }

    double number(int code, double otherwise) throws CheckException {
      String text = groups.get(code);
      if (text == null) {
        return otherwise;
      }
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
  }

  private final List<Entity> entities = new ArrayList<>();
  private final List<Finding> oddities = new ArrayList<>();
  private final List<Chain> sheet = new ArrayList<>();
  private final List<Chain> cuts = new ArrayList<>();
  private CutForm form = CutForm.FINISHED;
  private double unit = 1;

  private DxfReader() {}

  /**
   * The lines of the layers {@code SHEET} and {@code CUT}.
   *
   * @throws CheckException if the text is no DXF that can be judged
   */
  static DxfFile read(String text) throws CheckException {
    if (text.length() > MOST_CHARACTERS) {
      throw new CheckException("the drawing is too long: " + text.length() + " characters");
    }
    DxfReader reader = new DxfReader();
    reader.split(text);
    reader.follow();
    return new DxfFile(
        reader.form, DxfChains.of(reader.sheet), DxfChains.of(reader.cuts), reader.oddities);
  }

  /** Pairs of lines: a group's code, and its value. */
  private void split(String text) throws CheckException {
    String[] lines = text.split("\\r?\\n", -1);
    boolean inEntities = false;
    String section = "";
    for (int i = 0; i + 1 < lines.length; i += 2) {
      int code = code(lines[i], i + 1);
      String value = lines[i + 1].strip();
      if (code == 999) {
        comment(value);
      } else if (code == 2 && section.equals("SECTION")) {
        inEntities = value.equals("ENTITIES");
        section = "";
      } else if (code == 0) {
        section = value;
        inEntities &= !value.equals("ENDSEC");
        if (inEntities) {
          if (entities.size() >= MOST_ENTITIES) {
            throw new CheckException("the drawing has too many entities to be checked");
          }
          entities.add(new Entity(value, new TreeMap<>(), i + 1));
        }
      } else if (inEntities && !entities.isEmpty()) {
        entities.get(entities.size() - 1).groups().put(code, value);
      }
    }
    if (!section.equals("EOF")) {
      throw new CheckException("the file is no whole DXF drawing: it does not end with EOF");
    }
  }

  private static int code(String line, int number) throws CheckException {
    try {
      return Integer.parseInt(line.strip());
    } catch (NumberFormatException e) {
      throw new CheckException(
          "line " + number + ": the file is neither SVG nor DXF: a group's code must be a number",
          e);
    }
  }

  private void comment(String value) throws CheckException {
    if (value.startsWith(FORM)) {
      form = CutForm.parse(value.substring(FORM.length()));
    } else if (value.startsWith(UNIT)) {
      String said = value.substring(UNIT.length());
      unit =
          switch (said) {
            case "mm" -> 1;
            case "in" -> 25.4;
            default -> throw new CheckException("the unit must be mm or in, but was " + said);
          };
    }
  }

  private void follow() throws CheckException {
    for (int i = 0; i < entities.size(); i++) {
      Entity entity = entities.get(i);
      boolean isCut = entity.layer().equals("CUT");
      if (!isCut && !entity.layer().equals("SHEET")) {
        continue;
      }
      List<Chain> chains = isCut ? cuts : sheet;
      switch (entity.name()) {
        case "LINE" -> add(chains, List.of(line(entity)), false);
        case "ARC" -> add(chains, List.of(arc(entity)), false);
        case "CIRCLE" ->
            add(
                chains,
                List.of(new Trace.Round(point(entity, 10), size(entity), 0, 2 * Math.PI)),
                true);
        case "POLYLINE" -> {
          int last = i + 1;
          while (last < entities.size() && entities.get(last).name().equals("VERTEX")) {
            last++;
          }
          polyline(entity, entities.subList(i + 1, last), chains);
          i = last - 1;
        }
        case "SEQEND", "VERTEX" -> {
          // The end of a polyline, read with it.
        }
        default -> {
          if (isCut && oddities.size() < MOST_ODDITIES) {
            oddities.add(
                Finding.of(
                    Finding.Kind.STRUCTURE,
                    "line "
                        + entity.line()
                        + ": "
                        + entity.name()
                        + " on the layer CUT: outlines must be lines and arcs"));
          }
        }
      }
    }
  }

  private static void add(List<Chain> chains, List<Trace> edges, boolean closed) {
    if (!edges.isEmpty()) {
      chains.add(new Chain(edges, closed));
    }
  }

  private Trace line(Entity entity) throws CheckException {
    return new Trace.Straight(point(entity, 10), point(entity, 11));
  }

  /** Counter-clockwise from the first angle to the second, in degrees. */
  private Trace arc(Entity entity) throws CheckException {
    double first = Math.toRadians(entity.number(50, 0));
    double sweep = Math.toRadians(entity.number(51, 0)) - first;
    sweep -= 2 * Math.PI * Math.floor(sweep / (2 * Math.PI));
    return new Trace.Round(point(entity, 10), size(entity), first, sweep);
  }

  private double size(Entity entity) throws CheckException {
    double radius = entity.number(40, 0) * unit;
    if (!(radius > 0)) {
      throw new CheckException("line " + entity.line() + ": a radius must be above zero");
    }
    return radius;
  }

  private Point point(Entity entity, int code) throws CheckException {
    return new Point(entity.number(code, 0) * unit, entity.number(code + 10, 0) * unit);
  }

  private void polyline(Entity head, List<Entity> vertices, List<Chain> chains)
      throws CheckException {
    boolean closed = head.flag(1);
    List<Trace> edges = new ArrayList<>();
    int count = closed ? vertices.size() : vertices.size() - 1;
    for (int i = 0; i < count; i++) {
      Point from = point(vertices.get(i), 10);
      Point to = point(vertices.get((i + 1) % vertices.size()), 10);
      if (!from.equals(to)) {
        edges.add(bulged(from, to, vertices.get(i).number(42, 0)));
      }
    }
    add(chains, edges, closed);
  }

  /** The bulge is the tangent of a quarter of the angle swept, above zero counter-clockwise. */
  private static Trace bulged(Point from, Point to, double bulge) {
    if (bulge == 0) {
      return new Trace.Straight(from, to);
    }
    double half = from.distance(to) / 2;
    // Height of the arc over its chord: bulge × half; radius by Pythagoras.
    double radius = half * (1 + bulge * bulge) / (2 * Math.abs(bulge));
    double toCentre = half * (1 - bulge * bulge) / (2 * bulge);
    Point ahead = to.minus(from).times(1 / (2 * half));
    Point centre =
        new Point(
            (from.x() + to.x()) / 2 - ahead.y() * toCentre,
            (from.y() + to.y()) / 2 + ahead.x() * toCentre);
    double sweep = 4 * Math.atan(bulge);
    return new Trace.Round(centre, radius, from.minus(centre).angle(), sweep);
  }
}

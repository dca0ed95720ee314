package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the lines of a DXF file (ASCII): LINE, ARC, CIRCLE, POLYLINE and LWPOLYLINE with bulges, as
 * release 12 and later ones write them. Shares no code with the writer. Stops at stated limits.
 *
 * <p>Comments (group 999) say the unit, the form of the cut and the pieces; a program that saves
 * the file again drops them, and later releases say the unit in {@code $INSUNITS}. The meaning of
 * groups and codes of units is from memory of the format's published reference.
 */
final class DxfReader {

  static final String FORM = "curvestock form: ";
  static final String UNIT = "curvestock unit: ";

  private static final Pattern PIECE =
      Pattern.compile(
          "curvestock piece (\\d{1,6}): (.{1,200}) at (-?\\d{1,6}\\.\\d{1,6})"
              + " (-?\\d{1,6}\\.\\d{1,6}) mm");

  /** Millimetres of the codes of {@code $INSUNITS}; 0 says nothing. */
  private static final Map<String, Double> UNITS =
      Map.of("1", 25.4, "2", 304.8, "4", 1.0, "5", 10.0, "6", 1000.0);

  private static final String CUT = "CUT";
  private static final String DRILL = "DRILL";
  private static final String POCKET_TOP = "POCKET-TOP";
  private static final String POCKET_BOTTOM = "POCKET-BOTTOM";

  private static final Pattern SIZE = Pattern.compile("[A-Z-]+-(\\d{1,4})_(\\d{1,4})(MM|IN)");

  private static final String SHEET = "SHEET";
  private static final int MOST_ODDITIES = 20;

  /** Bits of a polyline that are no plain line in the plane: curve fits, meshes, space curves. */
  private static final int NOT_PLAIN = 2 | 4 | 8 | 16 | 64;

  private final DxfText text;
  private final List<Finding> oddities = new ArrayList<>();
  private final List<Chain> sheet = new ArrayList<>();
  private final List<Chain> cuts = new ArrayList<>();
  private final Map<String, List<Chain>> others = new LinkedHashMap<>();
  private final List<Mark> texts = new ArrayList<>();
  private final List<DxfFile.Note> notes = new ArrayList<>();
  private Optional<CutForm> form = Optional.empty();
  private Optional<Double> unitSaid = Optional.empty();
  private double unit;

  private DxfReader(DxfText text) {
    this.text = text;
  }

  /** As below, in millimetres where the file says no unit. */
  static DxfFile read(String text) throws CheckException {
    return read(text, 1);
  }

  /**
   * The lines of all layers.
   *
   * @param otherwise the unit, in millimetres, if the file says none
   * @throws CheckException if the text is no DXF that can be judged
   */
  static DxfFile read(String text, double otherwise) throws CheckException {
    DxfReader reader = new DxfReader(DxfText.of(text));
    reader.readUnitAndForm(otherwise);
    reader.readLayers();
    reader.follow();
    List<Mark> marks = new ArrayList<>(reader.texts);
    List<DxfFile.Hole> drilled = new ArrayList<>();
    List<DxfFile.Cleared> pockets = new ArrayList<>();
    reader.others.forEach(
        (layer, chains) -> {
          List<Chain> whole = DxfChains.of(chains);
          OptionalDouble size = size(layer);
          if (layer.startsWith(DRILL)) {
            whole.forEach(chain -> drilled.add(new DxfFile.Hole(chain, size)));
          } else if (layer.startsWith(POCKET_TOP) || layer.startsWith(POCKET_BOTTOM)) {
            boolean fromAbove = layer.startsWith(POCKET_TOP);
            whole.forEach(chain -> pockets.add(new DxfFile.Cleared(fromAbove, size, chain)));
          } else {
            whole.forEach(chain -> marks.add(Mark.drawn(small(layer), List.of(chain))));
          }
        });
    return new DxfFile(
        reader.form,
        reader.unitSaid.isPresent(),
        DxfChains.of(reader.sheet),
        DxfChains.of(reader.cuts),
        marks,
        drilled,
        pockets,
        reader.notes,
        reader.oddities);
  }

  /** The measure at the end of a layer's name, in millimetres. */
  private static OptionalDouble size(String layer) {
    Matcher matcher = SIZE.matcher(layer);
    return matcher.matches()
        ? OptionalDouble.of(
            Double.parseDouble(matcher.group(1) + "." + matcher.group(2))
                * (matcher.group(3).equals("IN") ? 25.4 : 1))
        : OptionalDouble.empty();
  }

  private static String small(String layer) {
    return layer.toLowerCase(Locale.ROOT);
  }

  private void readUnitAndForm(double otherwise) throws CheckException {
    for (String comment : text.comments()) {
      Matcher piece = PIECE.matcher(comment);
      if (comment.startsWith(FORM)) {
        form = Optional.of(CutForm.parse(comment.substring(FORM.length())));
      } else if (comment.startsWith(UNIT)) {
        String said = comment.substring(UNIT.length());
        unitSaid =
            switch (said) {
              case "mm" -> Optional.of(1.0);
              case "in" -> Optional.of(25.4);
              default -> throw new CheckException("the unit must be mm or in, but was " + said);
            };
      } else if (piece.matches()) {
        notes.add(
            new DxfFile.Note(
                Integer.parseInt(piece.group(1)),
                piece.group(2),
                new Point(Double.parseDouble(piece.group(3)), Double.parseDouble(piece.group(4)))));
      }
    }
    String code = text.variables().getOrDefault("$INSUNITS", "0").strip();
    Optional<Double> inserted = Optional.ofNullable(UNITS.get(code));
    if (inserted.isEmpty() && !code.equals("0")) {
      odd("$INSUNITS is " + code + "; save the drawing in millimetres (4) or inches (1)");
    } else if (inserted.isPresent() && unitSaid.isPresent() && !inserted.equals(unitSaid)) {
      odd("the comment at the head and $INSUNITS " + code + " say different units: make them one");
    }
    unitSaid = unitSaid.or(() -> inserted);
    unit = unitSaid.orElse(otherwise);
  }

  private void readLayers() throws CheckException {
    for (DxfEntity layer : text.layers()) {
      if (layer.last(2).orElse("").equalsIgnoreCase(CUT)
          && (layer.number(62, 7) < 0 || layer.flag(1))) {
        odd(
            "line "
                + layer.line()
                + ": the layer CUT is switched off or frozen, and may not be cut: switch it on");
      }
    }
  }

  private void follow() throws CheckException {
    List<DxfEntity> entities = text.entities();
    for (int i = 0; i < entities.size(); i++) {
      DxfEntity entity = entities.get(i);
      if (isExact(entity.layer())) {
        requirePlain(entity);
      }
      List<Chain> chains = chains(entity.layer());
      switch (entity.name()) {
        case "LINE" -> add(chains, List.of(line(entity)), false);
        case "ARC" -> add(chains, List.of(arc(entity)), false);
        case "CIRCLE" ->
            add(
                chains,
                List.of(new Trace.Round(point(entity, 10), size(entity), 0, 2 * Math.PI)),
                true);
        case "LWPOLYLINE" -> polyline(entity.flag(1), entity.corners(), chains);
        case "POLYLINE" -> {
          int last = i + 1;
          while (last < entities.size() && entities.get(last).name().equals("VERTEX")) {
            last++;
          }
          polyline(entity.flag(1), corners(entities.subList(i + 1, last)), chains);
          i = last - 1;
        }
        case "SEQEND", "VERTEX" -> {
          // The end of a polyline, read with it.
        }
        default -> other(entity);
      }
    }
  }

  /** Layers on which nothing may be moved or hidden. */
  private static boolean isExact(String layer) {
    return Set.of(CUT, SHEET).contains(layer)
        || List.of(DRILL, POCKET_TOP, POCKET_BOTTOM).stream().anyMatch(layer::startsWith);
  }

  private List<Chain> chains(String layer) {
    return switch (layer) {
      case CUT -> cuts;
      case SHEET -> sheet;
      default -> others.computeIfAbsent(layer, key -> new ArrayList<>());
    };
  }

  private void other(DxfEntity entity) throws CheckException {
    if (entity.layer().equals(CUT)) {
      odd(
          "line "
              + entity.line()
              + ": "
              + entity.name()
              + " on the layer CUT: outlines must be lines and arcs");
    } else if (entity.name().equals("INSERT")) {
      odd("line " + entity.line() + ": a block is inserted: explode it, so that it can be checked");
    } else if (entity.name().equals("TEXT") && !entity.layer().equals("TITLE")) {
      texts.add(Mark.written(small(entity.layer()), point(entity, 10), false));
    }
  }

  /** Notes what moves or hides an entity beyond its numbers in the plane. */
  private void requirePlain(DxfEntity entity) throws CheckException {
    String what = "line " + entity.line() + ": " + entity.name() + " on the layer ";
    what += entity.layer();
    if (entity.number(230, 1) != 1 || entity.isNotZero(210, 220)) {
      odd(what + " lies in a plane of its own (groups 210 to 230): draw it in the sheet's plane");
    }
    if (entity.isNotZero(30, 31, 38)) {
      odd(what + " has a height (Z) other than 0: set it to 0");
    }
    if (entity.isNotZero(60)) {
      odd(what + " is invisible (group 60), and may not be cut");
    }
    if (entity.isNotZero(67)) {
      odd(what + " lies in paper space (group 67), not on the sheet");
    }
    if (entity.name().equals("POLYLINE") && entity.flag(NOT_PLAIN)) {
      odd(what + " is no plain polyline (group 70): explode it to lines and arcs");
    }
  }

  private void odd(String message) {
    if (oddities.size() < MOST_ODDITIES) {
      oddities.add(Finding.of(Finding.Kind.STRUCTURE, message));
    }
  }

  private static void add(List<Chain> chains, List<Trace> edges, boolean closed) {
    if (!edges.isEmpty()) {
      chains.add(new Chain(edges, closed));
    }
  }

  private Trace line(DxfEntity entity) throws CheckException {
    return new Trace.Straight(point(entity, 10), point(entity, 11));
  }

  /** Counter-clockwise from the first angle to the second, in degrees. */
  private Trace arc(DxfEntity entity) throws CheckException {
    double first = Math.toRadians(entity.number(50, 0));
    double sweep = Math.toRadians(entity.number(51, 0)) - first;
    sweep -= 2 * Math.PI * Math.floor(sweep / (2 * Math.PI));
    return new Trace.Round(point(entity, 10), size(entity), first, sweep);
  }

  private double size(DxfEntity entity) throws CheckException {
    double radius = entity.number(40, 0) * unit;
    if (!(radius > 0)) {
      throw new CheckException("line " + entity.line() + ": a radius must be above zero");
    }
    return radius;
  }

  private Point point(DxfEntity entity, int code) throws CheckException {
    return new Point(entity.number(code, 0) * unit, entity.number(code + 10, 0) * unit);
  }

  private static List<DxfEntity.Corner> corners(List<DxfEntity> vertices) throws CheckException {
    List<DxfEntity.Corner> corners = new ArrayList<>();
    for (DxfEntity vertex : vertices) {
      Point at = new Point(vertex.number(10, 0), vertex.number(20, 0));
      corners.add(new DxfEntity.Corner(at, vertex.number(42, 0)));
    }
    return corners;
  }

  private void polyline(boolean closed, List<DxfEntity.Corner> corners, List<Chain> chains) {
    List<Trace> edges = new ArrayList<>();
    int count = closed ? corners.size() : corners.size() - 1;
    for (int i = 0; i < count; i++) {
      Point from = corners.get(i).at().times(unit);
      Point to = corners.get((i + 1) % corners.size()).at().times(unit);
      if (!from.equals(to)) {
        edges.add(bulged(from, to, corners.get(i).bulge()));
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

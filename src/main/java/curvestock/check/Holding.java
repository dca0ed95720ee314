package curvestock.check;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * What still hangs together when a sheet is cut: the wood less every cut, each as wide as the kerf.
 *
 * <p>A piece is held if its wood runs on into the frame by as many necks as are needed, each a tab
 * wide all the way, through waste and through other pieces, so long as no two ways use one neck.
 * The frame is the waste along the sheet's edge; strips narrower than a tab hold nothing.
 *
 * <p>By areas of JTS: arcs are chords within {@value #FLAT} mm, and a neck may be narrower than a
 * tab by a twentieth, so that neither decides.
 */
public final class Holding {

  private static final double FLAT = 0.01;

  private static final double NEARLY = 0.95;

  /** What lies nearer touches, in millimetres. */
  private static final double TOUCH = 0.03;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final Geometry sheet;
  private final List<Polygon> pieces;
  private final double kerf;
  private final double tab;
  private final int needed;

  /**
   * A place where the outline of a piece is not cut through.
   *
   * @param at on the edge of the finished piece
   * @param outwards a unit vector away from the piece
   */
  public record Neck(Point at, Point outwards) {}

  Holding(TraceShape sheet, List<TraceShape> pieces, double kerf, double tab, int needed) {
    this.sheet = polygon(sheet);
    this.pieces = pieces.stream().map(Holding::polygon).toList();
    this.kerf = kerf;
    this.tab = tab;
    this.needed = needed;
  }

  /**
   * The pieces of a layout on its sheet.
   *
   * @param tab width of a tab's wood, in millimetres
   * @param needed tabs that a piece must hang by
   */
  public static Holding of(Layout layout, double tab, int needed) {
    return new Holding(
        TraceShape.of(layout.sheet().outline()),
        layout.placements().stream().map(p -> TraceShape.of(p.outline())).toList(),
        layout.cutting().kerf().millimetres(),
        tab,
        needed);
  }

  /** The pieces, by index, that come loose when the tool's middle has run along the lines. */
  public List<Integer> looseAlong(List<List<Edge>> lines) {
    return looseAfter(
        lines.stream().map(line -> line.stream().map(TraceLoop::trace).toList()).toList());
  }

  List<Integer> looseAfter(List<List<Trace>> lines) {
    List<Geometry> cuts = new ArrayList<>();
    for (List<Trace> line : lines) {
      Coordinate[] points = points(line).toArray(Coordinate[]::new);
      cuts.add(FACTORY.createLineString(points).buffer(kerf / 2));
    }
    return loose(cuts);
  }

  /**
   * The pieces that come loose when every outline is cut on its outside, but for necks.
   *
   * @param necks of each piece
   */
  public List<Integer> looseBut(List<List<Neck>> necks) {
    List<Geometry> cuts = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Geometry cut = pieces.get(i).buffer(kerf).difference(pieces.get(i));
      for (Neck neck : necks.get(i)) {
        cut = cut.difference(bridge(neck));
      }
      cuts.add(cut);
    }
    return loose(cuts);
  }

  /** A rectangle as wide as a tab, from within the piece to just beyond its cut. */
  private Polygon bridge(Neck neck) {
    Point out = neck.outwards();
    Point aside = new Point(-out.y(), out.x()).times(tab / 2);
    Point inner = neck.at().minus(out.times(kerf / 2));
    Point outer = neck.at().plus(out.times(kerf * 1.2));
    return FACTORY.createPolygon(
        new Coordinate[] {
          coordinate(inner.plus(aside)),
          coordinate(outer.plus(aside)),
          coordinate(outer.minus(aside)),
          coordinate(inner.minus(aside)),
          coordinate(inner.plus(aside))
        });
  }

  private List<Integer> loose(List<Geometry> cuts) {
    double inset = NEARLY * tab / 2;
    List<Geometry> whole = pieces.stream().map(piece -> piece.buffer(kerf)).toList();
    Geometry waste = sheet.difference(UnaryUnionOp.union(whole)).buffer(-inset);
    Geometry wood = sheet.difference(UnaryUnionOp.union(cuts)).buffer(-inset);
    List<Geometry> bodies = new ArrayList<>(pieces);
    List<Integer> nodes = new ArrayList<>(IntStream.range(0, pieces.size()).boxed().toList());
    int frame = pieces.size() + waste.getNumGeometries();
    for (int i = 0; i < waste.getNumGeometries(); i++) {
      Geometry body = waste.getGeometryN(i);
      if (!body.isEmpty()) {
        bodies.add(body);
        boolean atEdge = body.isWithinDistance(sheet.getBoundary(), inset + TOUCH);
        nodes.add(atEdge ? frame : pieces.size() + i);
      }
    }
    Geometry necks =
        wood.difference(UnaryUnionOp.union(pieces)).difference(waste.buffer(TOUCH / 3));
    STRtree near = new STRtree();
    for (int i = 0; i < bodies.size(); i++) {
      near.insert(bodies.get(i).getEnvelopeInternal(), i);
    }
    Necks links = new Necks(frame + 1);
    for (int i = 0; i < necks.getNumGeometries(); i++) {
      links.add(touched(necks.getGeometryN(i), near, bodies, nodes));
    }
    return IntStream.range(0, pieces.size())
        .filter(piece -> links.ways(piece, frame, needed) < needed)
        .boxed()
        .toList();
  }

  private static List<Integer> touched(
      Geometry neck, STRtree near, List<Geometry> bodies, List<Integer> nodes) {
    if (neck.isEmpty()) {
      return List.of();
    }
    org.locationtech.jts.geom.Envelope around = neck.getEnvelopeInternal();
    around.expandBy(TOUCH);
    List<Integer> touched = new ArrayList<>();
    for (Object found : near.query(around)) {
      int body = (Integer) found;
      if (!touched.contains(nodes.get(body)) && neck.isWithinDistance(bodies.get(body), TOUCH)) {
        touched.add(nodes.get(body));
      }
    }
    return touched;
  }

  private static Polygon polygon(TraceShape shape) {
    return FACTORY.createPolygon(
        FACTORY.createLinearRing(ring(shape.outer())),
        shape.holes().stream()
            .map(hole -> FACTORY.createLinearRing(ring(hole)))
            .toArray(org.locationtech.jts.geom.LinearRing[]::new));
  }

  private static Coordinate[] ring(TraceLoop loop) {
    List<Coordinate> points = points(loop.edges());
    points.set(points.size() - 1, points.get(0).copy());
    return points.toArray(Coordinate[]::new);
  }

  private static List<Coordinate> points(List<Trace> edges) {
    List<Coordinate> points = new ArrayList<>();
    points.add(coordinate(edges.get(0).start()));
    for (Trace edge : edges) {
      int parts = 1;
      while (edge.stray(0, 1.0 / parts) > FLAT) {
        parts++;
      }
      for (int i = 1; i <= parts; i++) {
        points.add(coordinate(edge.at((double) i / parts)));
      }
    }
    return points;
  }

  private static Coordinate coordinate(Point point) {
    return new Coordinate(point.x(), point.y());
  }
}

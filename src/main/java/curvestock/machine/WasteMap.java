package curvestock.machine;

import curvestock.geometry.Flattening;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * The wood of a sheet that no piece takes and no cut: where a tab finds something to hold on to.
 * Waste narrower than a tab holds nothing and is left out. Arcs are flattened within {@value #FLAT}
 * mm; where that decides, {@link curvestock.check.Holding} has the last word.
 */
final class WasteMap {

  private static final double FLAT = 0.02;

  /** So much deeper in the waste than half a tab a tab must end, in tabs. */
  private static final double DEEPER = 0.03;

  private static final double EDGE = 0.05;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final double kerf;
  private final double tab;
  private final List<PreparedGeometry> cutPieces = new ArrayList<>();
  private final STRtree near = new STRtree();
  private final List<PreparedGeometry> waste = new ArrayList<>();
  private final List<Boolean> frame = new ArrayList<>();

  /**
   * @param tab width of a tab's wood, in millimetres
   */
  WasteMap(Layout layout, double tab) {
    this.kerf = layout.cutting().kerf().millimetres();
    this.tab = tab;
    Flattening flattening = new Flattening(FLAT);
    List<Geometry> pieces = new ArrayList<>();
    for (int i = 0; i < layout.placements().size(); i++) {
      Geometry piece = flattening.around(layout.placements().get(i).outline()).buffer(kerf);
      pieces.add(piece);
      cutPieces.add(PreparedGeometryFactory.prepare(piece));
      near.insert(piece.getEnvelopeInternal(), i);
    }
    Geometry sheet = flattening.inside(layout.sheet().outline());
    Geometry left = sheet.difference(UnaryUnionOp.union(pieces)).buffer(-tab / 2);
    for (int i = 0; i < left.getNumGeometries(); i++) {
      Geometry part = left.getGeometryN(i);
      if (!part.isEmpty()) {
        waste.add(PreparedGeometryFactory.prepare(part));
        frame.add(part.isWithinDistance(sheet.getBoundary(), tab / 2 + EDGE));
      }
    }
  }

  /** Whether the waste of that index runs along the sheet's edge. */
  boolean isFrame(int index) {
    return frame.get(index);
  }

  /** How many separate parts the waste has. */
  int parts() {
    return waste.size();
  }

  /**
   * The waste that a tab reaches from a piece, or -1 if a piece or another cut is in its way.
   *
   * @param at on the edge of the finished piece
   * @param out a unit vector away from it
   */
  int reached(int piece, Point at, Point out) {
    double reach = kerf + tab * (0.5 + DEEPER);
    Point end = at.plus(out.times(reach));
    Geometry point = FACTORY.createPoint(new Coordinate(end.x(), end.y()));
    for (int i = 0; i < waste.size(); i++) {
      if (waste.get(i).contains(point)) {
        return inTheWay(at, out, reach, List.of(piece)).isEmpty() ? i : -1;
      }
    }
    return -1;
  }

  /** The pieces, but for those named, that a tab of that length would meet, cuts and all. */
  List<Integer> inTheWay(Point at, Point out, double reach, List<Integer> but) {
    Polygon way = way(at, out, reach);
    List<Integer> met = new ArrayList<>();
    for (Object found : near.query(way.getEnvelopeInternal())) {
      int piece = (Integer) found;
      if (!but.contains(piece) && cutPieces.get(piece).intersects(way)) {
        met.add(piece);
      }
    }
    met.sort(null);
    return met;
  }

  private Polygon way(Point at, Point out, double reach) {
    Point aside = new Point(-out.y(), out.x()).times(tab / 2);
    Point end = at.plus(out.times(reach));
    return FACTORY.createPolygon(
        new Coordinate[] {
          corner(at.plus(aside)),
          corner(end.plus(aside)),
          corner(end.minus(aside)),
          corner(at.minus(aside)),
          corner(at.plus(aside))
        });
  }

  private static Coordinate corner(Point point) {
    return new Coordinate(point.x(), point.y());
  }
}

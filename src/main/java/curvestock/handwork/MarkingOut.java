package curvestock.handwork;

import curvestock.geometry.Arc;
import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Marks every piece of a sheet by coordinates from the sheet's lower left corner. */
public final class MarkingOut {

  private static final double PENCIL_LINE = 0.5;

  private MarkingOut() {}

  /**
   * The marks of each piece, in the layout's order.
   *
   * @param kept the offcut promised for the next job, in the sheet's frame
   */
  public static List<PieceMarks> of(Layout layout, Optional<Box> kept) {
    List<PieceMarks> marks = new ArrayList<>();
    for (int i = 0; i < layout.placements().size(); i++) {
      marks.add(piece(layout, kept, i));
    }
    return marks;
  }

  private static PieceMarks piece(Layout layout, Optional<Box> kept, int index) {
    Placement placement = layout.placements().get(index);
    Box sheet = layout.sheet().outline().box();
    Pose home = new Pose(-sheet.minX(), -sheet.minY(), 0);
    Outline outline = placement.outline();
    List<Edge> edges = outline.outer().edges();
    List<Point> corners = new ArrayList<>();
    List<ArcMark> arcs = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      corners.add(home.apply(edges.get(i).start()));
      if (edges.get(i) instanceof Arc arc && isCurved(arc)) {
        arcs.add(
            new ArcMark(
                i,
                (i + 1) % edges.size(),
                home.apply(arc.centre()),
                PivotPlace.of(layout, kept, arc.centre()),
                arc.radius(),
                Math.abs(arc.sweep()),
                home.apply(arc.middle())));
      }
    }
    List<PieceMarks.Hole> holes = new ArrayList<>();
    for (Loop hole : outline.holes()) {
      if (hole.edges().get(0) instanceof Arc rim) {
        Length diameter = Length.ofMillimetres(2 * rim.radius());
        holes.add(new PieceMarks.Hole(home.apply(rim.centre()), diameter));
      }
    }
    return new PieceMarks(index, placement, corners, arcs, holes);
  }

  /** One that bows out by less than a pencil's line is as good as straight, and needs no pivot. */
  private static boolean isCurved(Arc arc) {
    return arc.radius() * (1 - Math.cos(Math.min(Math.PI, Math.abs(arc.sweep()) / 2)))
        > PENCIL_LINE;
  }
}

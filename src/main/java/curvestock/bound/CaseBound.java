package curvestock.bound;

import curvestock.geometry.Box;
import curvestock.packing.Control;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Proof by cases that a sheet does not hold {@code count} of a sector, for small counts of large
 * sectors such as half turns.
 *
 * <p>All placements that fit the sheet are split into cells. Pairs of cells that clash whatever the
 * placements in them ({@link ThickArc#clashesWith}) are struck out; so are cells that take part in
 * no set of {@code count} cells without a clash. The rest is halved, again and again. If nothing is
 * left, no layout of {@code count} pieces exists. If the budget ends first, nothing is claimed.
 *
 * <p>Branch and bound by boxes is a standard method of interval arithmetic; cells by arc centre and
 * direction, and the crossing of spines as the test, are our own. Sheets that are not rectangles
 * are taken for their bounding rectangle and defects for wood: that can only fail to prove.
 */
final class CaseBound {

  private static final int FIRST_DIRECTIONS = 32;
  private static final int MOST_CELLS = 30_000;

  private final AnnularSector sector;
  private final double width;
  private final double height;
  private final double margin;
  private final double gap;
  private final Control control;

  private CaseBound(AnnularSector sector, SheetStock sheet, Cutting cutting, Control control) {
    this.control = control;
    this.sector = sector;
    width = sheet.length().millimetres();
    height = sheet.width().millimetres();
    margin = cutting.margin().millimetres();
    gap = cutting.spacing().millimetres();
  }

  /**
   * Whether it is proven that no layout holds {@code count}; false says nothing.
   *
   * @param mostTests budget: pairs of cells tested
   * @param control stops the proof, which then says nothing
   */
  static boolean isImpossible(
      Piece piece, SheetStock sheet, Cutting cutting, int count, long mostTests, Control control) {
    if (count < 2 || !(piece.shape().blank() instanceof AnnularSector sector) || sector.isRing()) {
      return false;
    }
    return new CaseBound(sector, sheet, cutting, control).refutes(count, mostTests);
  }

  private boolean refutes(int count, long mostTests) {
    List<ThickArc> cells = firstCells();
    if (cells.size() > MOST_CELLS || (long) cells.size() * cells.size() / 2 > mostTests) {
      return false;
    }
    CellGraph graph = new CellGraph(cells, gap, control);
    long left = mostTests - graph.tests();
    while (true) {
      List<Integer> partakers = graph.partakers(count, left);
      if (partakers.isEmpty()) {
        return true;
      }
      List<ThickArc> children = new ArrayList<>();
      List<Integer> parents = new ArrayList<>();
      for (int parent : partakers) {
        for (ThickArc child : halves(graph.cells().get(parent))) {
          children.add(child);
          parents.add(parent);
        }
      }
      if (children.size() > MOST_CELLS || left <= 0 || control.stopped()) {
        return false;
      }
      graph = graph.refined(children, parents.stream().mapToInt(Integer::intValue).toArray());
      left -= graph.tests() + children.size();
    }
  }

  private List<ThickArc> firstCells() {
    double halfRange = Math.PI / FIRST_DIRECTIONS;
    while (halfRange > sector.sweep().radians() / 8) {
      halfRange /= 2;
    }
    int directions = (int) Math.round(Math.PI / halfRange);
    List<ThickArc> cells = new ArrayList<>();
    for (int k = 0; k < directions; k++) {
      cell(0, 0, 1e9, 1e9, (2 * k + 1) * halfRange, halfRange).ifPresent(cells::add);
    }
    return cells;
  }

  private List<ThickArc> halves(ThickArc cell) {
    double turn = cell.halfRange * sector.radius().millimetres() / 2;
    List<ThickArc> halves = new ArrayList<>();
    for (int side = -1; side <= 1; side += 2) {
      double x = cell.x;
      double y = cell.y;
      double halfX = cell.halfX;
      double halfY = cell.halfY;
      double direction = cell.direction;
      double halfRange = cell.halfRange;
      if (turn >= halfX && turn >= halfY) {
        halfRange /= 2;
        direction += side * halfRange;
      } else if (halfX >= halfY) {
        halfX /= 2;
        x += side * halfX;
      } else {
        halfY /= 2;
        y += side * halfY;
      }
      cell(x, y, halfX, halfY, direction, halfRange).ifPresent(halves::add);
    }
    return halves;
  }

  /** The cell without the arc centres from which the core surely leaves the sheet. */
  private Optional<ThickArc> cell(
      double x, double y, double halfX, double halfY, double direction, double halfRange) {
    Box core = ThickArc.coreBox(sector, direction, halfRange);
    double slack = ThickArc.ROUNDING;
    double fromX = Math.max(x - halfX, margin - core.minX() - slack);
    double toX = Math.min(x + halfX, width - margin - core.maxX() + slack);
    double fromY = Math.max(y - halfY, margin - core.minY() - slack);
    double toY = Math.min(y + halfY, height - margin - core.maxY() + slack);
    if (fromX > toX || fromY > toY) {
      return Optional.empty();
    }
    return Optional.ofNullable(
        ThickArc.of(
            sector,
            (fromX + toX) / 2,
            (fromY + toY) / 2,
            (toX - fromX) / 2,
            (toY - fromY) / 2,
            new double[] {direction, halfRange}));
  }
}

package curvestock.packing;

import curvestock.layout.Layout;
import curvestock.packing.atlas.Atlas;
import curvestock.packing.atlas.Chart;
import curvestock.packing.atlas.Proportions;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Brings layouts of an {@link Atlas} to the very sizes, gap and margin that are asked for: scaled,
 * relaxed, judged. For arcs that may lie any way on a plain rectangle; nothing for all else.
 */
final class Charted {

  /** So many layouts are relaxed at most for one answer. */
  private static final int MOST_TRIED = 24;

  private final OneSheet sheet;
  private final Atlas atlas;
  private final Arena arena;
  private final boolean upright;
  private final double along;
  private final double across;

  Charted(OneSheet sheet, Atlas atlas) {
    this.sheet = sheet;
    this.atlas = atlas;
    this.arena = sheet.arena;
    double width = arena.usableWidth() + arena.gap;
    double height = arena.usableHeight() + arena.gap;
    this.upright = height > width;
    this.along = Math.max(width, height);
    this.across = Math.min(width, height);
  }

  /**
   * A layout of more than {@code than} pieces, the same whatever is wanted; so it may hold more
   * than {@code atMost}.
   */
  Optional<Layout> more(Piece piece, int than, int atMost) {
    if (!arena.isPlain() || !piece.grain().isFree() || than >= atMost) {
      return Optional.empty();
    }
    return proportions(piece).flatMap(asked -> more(piece, asked, than));
  }

  private Optional<Layout> more(Piece piece, Proportions asked, int than) {
    List<Chart> near = atlas.near(asked, than);
    for (Chart chart : near.subList(0, Math.min(MOST_TRIED, near.size()))) {
      List<Piece> pieces = Collections.nCopies(chart.count(), piece);
      // Centre on centre, what fits inside the old piece fits at once; else the middle is nearer.
      for (double radius : new double[] {chart.proportions().middle(), asked.middle()}) {
        Optional<Layout> layout = sheet.pushed(pieces, poses(chart, radius * across));
        if (layout.isPresent()) {
          return layout;
        }
      }
    }
    return Optional.empty();
  }

  /** Of a piece on this sheet; nothing for whole rings and what is no arc. */
  Optional<Proportions> proportions(Piece piece) {
    if (!(piece.shape().blank() instanceof AnnularSector sector)
        || sector.isRing()
        || !(arena.usableWidth() > 0 && arena.usableHeight() > 0)) {
      return Optional.empty();
    }
    double outer = sector.outerRadius().millimetres() + arena.gap / 2;
    double width = sector.width().millimetres() + arena.gap;
    return width > outer
        ? Optional.empty()
        : Optional.of(
            new Proportions(
                sector.sweep().radians() + arena.gap / sector.radius().millimetres(),
                outer / across,
                width / across,
                along / across));
  }

  /**
   * The poses of a chart's pieces on this sheet.
   *
   * @param radius from a piece's centre to its middle, in millimetres
   */
  private double[] poses(Chart chart, double radius) {
    double[] poses = chart.places();
    double left = arena.box.minX() + arena.margin - arena.gap / 2;
    double low = arena.box.minY() + arena.margin - arena.gap / 2;
    for (int k = 0; k < poses.length; k += 3) {
      double angle = poses[k + 2];
      double x = along * poses[k] - radius * StrictMath.cos(angle);
      double y = across * poses[k + 1] - radius * StrictMath.sin(angle);
      poses[k] = left + (upright ? across - y : x);
      poses[k + 1] = low + (upright ? x : y);
      poses[k + 2] = upright ? angle + Math.PI / 2 : angle;
    }
    return poses;
  }

  /**
   * A chart of a layout of one kind of arc that fills a plain rectangle; the reverse of reading.
   */
  Optional<Chart> chart(Layout layout) {
    if (layout.placements().isEmpty() || !arena.isPlain()) {
      return Optional.empty();
    }
    Piece piece = layout.pieces().get(0);
    return proportions(piece)
        .map(found -> Chart.of(found, places(layout, found.middle() * across)));
  }

  private double[] places(Layout layout, double radius) {
    double[] places = OneSheet.poses(layout);
    double left = arena.box.minX() + arena.margin - arena.gap / 2;
    double low = arena.box.minY() + arena.margin - arena.gap / 2;
    for (int k = 0; k < places.length; k += 3) {
      double angle = places[k + 2];
      double x = places[k] - left + radius * StrictMath.cos(angle);
      double y = places[k + 1] - low + radius * StrictMath.sin(angle);
      places[k] = (upright ? y : x) / along;
      places[k + 1] = (upright ? across - x : y) / across;
      places[k + 2] = upright ? angle - Math.PI / 2 : angle;
    }
    return places;
  }
}

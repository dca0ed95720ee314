package curvestock.printing;

import curvestock.geometry.Box;
import curvestock.geometry.Point;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/**
 * The lines that a page of a PDF shows, read back from its content stream: each stroked path as
 * points, curves sampled finely, in millimetres from the page's lower left corner.
 */
final class PdfLines extends PDFGraphicsStreamEngine {

  /**
   * One stroked sub-path.
   *
   * @param points along it
   * @param width of the pen in millimetres
   * @param dashed whether the line has gaps
   * @param window outside of which nothing shows
   */
  record Line(List<Point> points, double width, boolean dashed, Box window) {

    /** The points that show on the page. */
    List<Point> shown() {
      return points.stream().filter(this::shows).toList();
    }

    private boolean shows(Point p) {
      return p.x() >= window.minX()
          && p.x() <= window.maxX()
          && p.y() >= window.minY()
          && p.y() <= window.maxY();
    }

    double length() {
      return points.get(0).distance(points.get(points.size() - 1));
    }
  }

  private static final double MM = 25.4 / 72;
  private static final int SAMPLES = 40;

  private final List<Line> lines = new ArrayList<>();
  private List<Point> current = new ArrayList<>();
  private final List<List<Point>> paths = new ArrayList<>();

  private PdfLines(PDPage page) {
    super(page);
  }

  static List<Line> of(PDPage page) {
    PdfLines lines = new PdfLines(page);
    try {
      lines.processPage(page);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return lines.lines;
  }

  /** The engine has already brought the points to the page. */
  private static Point mm(double x, double y) {
    return new Point(x * MM, y * MM);
  }

  @Override
  public void moveTo(float x, float y) {
    current = new ArrayList<>(List.of(mm(x, y)));
    paths.add(current);
  }

  @Override
  public void lineTo(float x, float y) {
    Point from = current.get(current.size() - 1);
    Point to = mm(x, y);
    for (int i = 1; i <= SAMPLES; i++) {
      current.add(from.plus(to.minus(from).times((double) i / SAMPLES)));
    }
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    Point p0 = current.get(current.size() - 1);
    Point p1 = mm(x1, y1);
    Point p2 = mm(x2, y2);
    Point p3 = mm(x3, y3);
    for (int i = 1; i <= SAMPLES; i++) {
      double t = (double) i / SAMPLES;
      double u = 1 - t;
      current.add(
          p0.times(u * u * u)
              .plus(p1.times(3 * u * u * t))
              .plus(p2.times(3 * u * t * t))
              .plus(p3.times(t * t * t)));
    }
  }

  @Override
  public void closePath() {
    Point first = current.get(0);
    lineTo((float) (first.x() / MM), (float) (first.y() / MM));
  }

  @Override
  public Point2D getCurrentPoint() {
    Point last = current.get(current.size() - 1);
    return new Point2D.Double(last.x() / MM, last.y() / MM);
  }

  @Override
  public void strokePath() {
    Rectangle2D clip = getGraphicsState().getCurrentClippingPath().getBounds2D();
    Box window =
        new Box(clip.getMinX() * MM, clip.getMinY() * MM, clip.getMaxX() * MM, clip.getMaxY() * MM);
    double scale = getGraphicsState().getCurrentTransformationMatrix().getScalingFactorX() * MM;
    boolean dashed = getGraphicsState().getLineDashPattern().getDashArray().length > 0;
    double width = getGraphicsState().getLineWidth() * scale;
    paths.forEach(path -> lines.add(new Line(List.copyOf(path), width, dashed, window)));
    endPath();
  }

  @Override
  public void fillPath(int rule) {
    endPath();
  }

  @Override
  public void fillAndStrokePath(int rule) {
    strokePath();
  }

  @Override
  public void clip(int rule) {
    // A rectangle: the engine is told nothing of it, so the window is set here.
    java.awt.geom.GeneralPath path = new java.awt.geom.GeneralPath();
    for (List<Point> points : paths) {
      path.moveTo(points.get(0).x() / MM, points.get(0).y() / MM);
      points.forEach(p -> path.lineTo(p.x() / MM, p.y() / MM));
    }
    getGraphicsState().intersectClippingPath(path);
  }

  @Override
  public void endPath() {
    paths.clear();
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    moveTo((float) p0.getX(), (float) p0.getY());
    lineTo((float) p1.getX(), (float) p1.getY());
    lineTo((float) p2.getX(), (float) p2.getY());
    lineTo((float) p3.getX(), (float) p3.getY());
  }

  @Override
  public void drawImage(PDImage image) {}

  @Override
  public void shadingFill(COSName name) {}
}

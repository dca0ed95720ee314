package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import java.awt.Color;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDFormContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Draws things into a stream of PDF whose user unit is one millimetre. */
final class PdfInk {

  /** Arcs are split so that a Bézier curve misses them by less than 1e-8 of the radius. */
  private static final double LARGEST_ARC = Math.PI / 8;

  /** Half the height of capitals in font sizes. */
  private static final double HALF_CAPITAL = 0.36;

  private final PDFormContentStream stream;
  private final Typeface typeface;

  PdfInk(PDFormContentStream stream, Typeface typeface) {
    this.stream = stream;
    this.typeface = typeface;
  }

  void draw(List<Paper.Thing> things) throws IOException {
    for (Paper.Thing thing : things) {
      if (thing instanceof Paper.Shape shape) {
        draw(shape);
      } else if (thing instanceof Paper.Words words) {
        draw(words);
      }
    }
  }

  private void draw(Paper.Shape shape) throws IOException {
    trace(shape.edges());
    boolean filled = shape.closed() && !shape.fill().equals("none");
    boolean stroked = shape.pen().width() > 0;
    if (filled) {
      stream.setNonStrokingColor(Color.decode(shape.fill()));
    }
    if (stroked) {
      stream.setStrokingColor(Color.decode(shape.pen().stroke()));
      stream.setLineWidth((float) shape.pen().width());
      stream.setLineDashPattern(dashes(shape.pen().dashes()), 0);
    }
    if (filled && stroked) {
      stream.closeAndFillAndStroke();
    } else if (filled) {
      stream.fill();
    } else if (shape.closed()) {
      stream.closeAndStroke();
    } else {
      stream.stroke();
    }
  }

  /** Makes the edges the current path, closed or not. */
  void trace(List<Edge> edges) throws IOException {
    move(edges.get(0).start());
    for (Edge edge : edges) {
      if (edge instanceof Arc arc) {
        curve(arc);
      } else {
        stream.lineTo((float) edge.end().x(), (float) edge.end().y());
      }
    }
  }

  private void move(Point to) throws IOException {
    stream.moveTo((float) to.x(), (float) to.y());
  }

  /** By the usual cubic whose ends, tangents and middle are those of the arc: k = 4/3 tan(t/4). */
  private void curve(Arc arc) throws IOException {
    int parts = Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / LARGEST_ARC - 1e-9));
    double step = arc.sweep() / parts;
    double handle = arc.radius() * 4 / 3 * Math.tan(step / 4);
    for (int i = 0; i < parts; i++) {
      double from = arc.startAngle() + i * step;
      Point a = arc.pointAt(from).plus(Point.polar(handle, from + Math.PI / 2));
      Point b = arc.pointAt(from + step).minus(Point.polar(handle, from + step + Math.PI / 2));
      Point end = arc.pointAt(from + step);
      stream.curveTo(
          (float) a.x(),
          (float) a.y(),
          (float) b.x(),
          (float) b.y(),
          (float) end.x(),
          (float) end.y());
    }
  }

  private static float[] dashes(String dashes) {
    if (dashes.isBlank()) {
      return new float[0];
    }
    List<Float> lengths =
        Arrays.stream(dashes.trim().split("\\s+", -1)).map(Float::valueOf).toList();
    float[] pattern = new float[lengths.size()];
    for (int i = 0; i < pattern.length; i++) {
      pattern[i] = lengths.get(i);
    }
    return pattern;
  }

  private void draw(Paper.Words words) throws IOException {
    if (words.text().isBlank()) {
      return;
    }
    double wide = typeface.ems(words.text(), false) * words.size();
    double shift =
        switch (words.anchor()) {
          case START -> 0;
          case MIDDLE -> wide / 2;
          case END -> wide;
        };
    stream.beginText();
    stream.setNonStrokingColor(Color.BLACK);
    if (words.bold()) {
      stream.setRenderingMode(RenderingMode.FILL_STROKE);
      stream.setStrokingColor(Color.BLACK);
      stream.setLineDashPattern(new float[0], 0);
      stream.setLineWidth((float) (Typeface.BOLD_STROKE * words.size()));
    } else {
      stream.setRenderingMode(RenderingMode.FILL);
    }
    stream.newLineAtOffset(
        (float) (words.at().x() - shift), (float) (words.at().y() - HALF_CAPITAL * words.size()));
    for (Typeface.Run run : typeface.runs(words.text())) {
      stream.setFont(run.font(), (float) words.size());
      stream.showText(run.text());
    }
    stream.endText();
  }
}

package curvestock.drawing;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics2D;
import java.util.function.Consumer;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * SVG of whatever paints on Java2D, for charts. Text stays text. The same painting gives the same
 * bytes on the same machine; where text stands also depends on the fonts installed. Not for cut
 * lines: arcs become curves.
 */
public final class Painting {

  private Painting() {}

  /**
   * The painting as SVG of the given size in pixels.
   *
   * @param painter paints on a white ground, y down, as Java2D does
   */
  public static String svg(int width, int height, Consumer<Graphics2D> painter) {
    Document document =
        SVGDOMImplementation.getDOMImplementation()
            .createDocument(SVGDOMImplementation.SVG_NAMESPACE_URI, "svg", null);
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment("");
    SVGGraphics2D graphics = new SVGGraphics2D(context, false);
    graphics.setSVGCanvasSize(new Dimension(width, height));
    graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 12));
    painter.accept(graphics);
    Element root = document.getDocumentElement();
    graphics.getRoot(root);
    root.setAttributeNS(null, "viewBox", "0 0 " + width + " " + height);
    removeComments(root);
    return SvgText.of(document);
  }

  private static void removeComments(Node node) {
    Node child = node.getFirstChild();
    while (child != null) {
      Node next = child.getNextSibling();
      if (child.getNodeType() == Node.COMMENT_NODE) {
        node.removeChild(child);
      } else {
        removeComments(child);
      }
      child = next;
    }
  }
}

package curvestock.drawing;

import javax.xml.XMLConstants;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** An SVG document under construction, in Batik's SVG DOM. */
final class SvgCanvas {

  static final String NAMESPACE = SVGDOMImplementation.SVG_NAMESPACE_URI;

  static final String LAYER_PREFIX = "xmlns:inkscape";

  /** In which a general vector editor says which groups it shows as layers; others pass it over. */
  private static final String LAYERS = "http://www.inkscape.org/namespaces/inkscape";

  private final Document document =
      SVGDOMImplementation.getDOMImplementation().createDocument(NAMESPACE, "svg", null);

  /** A drawing of the given part of the plane at true scale: 1 user unit = 1 mm. */
  SvgCanvas(double x, double y, double width, double height) {
    set(
        root(),
        "width",
        SvgNumber.of(width) + "mm",
        "height",
        SvgNumber.of(height) + "mm",
        "viewBox",
        String.join(
            " ", SvgNumber.of(x), SvgNumber.of(y), SvgNumber.of(width), SvgNumber.of(height)));
  }

  Element root() {
    return document.getDocumentElement();
  }

  /**
   * Adds an element with attributes.
   *
   * @param attributes names and values by turns
   */
  Element add(Element parent, String name, String... attributes) {
    Element element = document.createElementNS(NAMESPACE, name);
    set(element, attributes);
    parent.appendChild(element);
    return element;
  }

  /** Adds an element that holds text. */
  Element addText(Element parent, String name, String text, String... attributes) {
    Element element = add(parent, name, attributes);
    element.appendChild(document.createTextNode(text));
    return element;
  }

  /** Has vector editors show a group as a layer of that name. */
  void makeLayer(Element group, String name) {
    root().setAttributeNS(XMLConstants.XMLNS_ATTRIBUTE_NS_URI, LAYER_PREFIX, LAYERS);
    group.setAttributeNS(LAYERS, "inkscape:groupmode", "layer");
    group.setAttributeNS(LAYERS, "inkscape:label", name);
  }

  /** The document as text; see {@link SvgText}. */
  String text() {
    return SvgText.of(document);
  }

  private static void set(Element element, String... attributes) {
    for (int i = 0; i < attributes.length; i += 2) {
      element.setAttributeNS(null, attributes[i], attributes[i + 1]);
    }
  }
}

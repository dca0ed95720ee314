package curvestock.drawing;

import java.util.List;
import java.util.TreeMap;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * Writes a document with its attributes in one fixed order and an element a line, so that the same
 * drawing is the same text everywhere. (Batik's own writer follows the order of a hash table.)
 */
final class SvgText {

  private static final List<String> FIRST =
      List.of(
          "id",
          "inkscape:groupmode",
          "inkscape:label",
          "version",
          "width",
          "height",
          "viewBox",
          "data-piece",
          "data-pose");

  private static final char REPLACEMENT = '\uFFFD';

  private final StringBuilder out = new StringBuilder();

  private SvgText() {}

  static String of(Document document) {
    SvgText text = new SvgText();
    text.out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    text.element(document.getDocumentElement(), 0, true);
    return text.out.toString();
  }

  private void element(Element element, int depth, boolean root) {
    String indent = "  ".repeat(depth);
    out.append(indent).append('<').append(element.getTagName());
    if (root) {
      out.append(" xmlns=\"").append(SvgCanvas.NAMESPACE).append('"');
      prefixes(element);
    }
    attributes(element);
    Node child = element.getFirstChild();
    if (child == null) {
      out.append("/>\n");
      return;
    }
    out.append('>');
    boolean textOnly = child.getNodeType() == Node.TEXT_NODE;
    if (!textOnly) {
      out.append('\n');
    }
    for (; child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        element(inner, depth + 1, false);
      } else {
        out.append(escaped(child.getNodeValue()));
      }
    }
    out.append(textOnly ? "" : indent).append("</").append(element.getTagName()).append(">\n");
  }

  /** Batik also lists prefixes that nobody uses. */
  private void prefixes(Element root) {
    NamedNodeMap attributes = root.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      if (attributes.item(i).getNodeName().equals(SvgCanvas.LAYER_PREFIX)) {
        append(SvgCanvas.LAYER_PREFIX, attributes.item(i).getNodeValue());
      }
    }
  }

  private void append(String name, String value) {
    out.append(' ').append(name).append("=\"").append(escaped(value)).append('"');
  }

  private void attributes(Element element) {
    TreeMap<String, String> sorted = new TreeMap<>(SvgText::compareNames);
    NamedNodeMap attributes = element.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      // Batik also lists defaults of the SVG 1.1 DTD, which nobody set.
      if (attributes.item(i) instanceof Attr attribute
          && attribute.getSpecified()
          && !attribute.getName().startsWith("xmlns")) {
        sorted.put(attribute.getName(), attribute.getValue());
      }
    }
    sorted.forEach(this::append);
  }

  private static int compareNames(String a, String b) {
    int rankA = FIRST.contains(a) ? FIRST.indexOf(a) : FIRST.size();
    int rankB = FIRST.contains(b) ? FIRST.indexOf(b) : FIRST.size();
    return rankA != rankB ? Integer.compare(rankA, rankB) : a.compareTo(b);
  }

  /** Text with the characters replaced that XML 1.0 forbids or reads as markup. */
  private static String escaped(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\n', '\r', '\t' -> safe.append(' ');
                default -> safe.appendCodePoint(isAllowed(c) ? c : REPLACEMENT);
              }
            });
    return safe.toString();
  }

  /** XML 1.0, production 2 (Char), without the line breaks handled above. */
  private static boolean isAllowed(int c) {
    return (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
  }
}

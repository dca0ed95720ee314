package curvestock.check;

import curvestock.check.DrawingFile.OutlinePath;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Finds the outlines in a drawing's XML. Reads no document type, no entities and nothing from
 * outside, and stops at stated limits, so that a hostile file is refused and not followed.
 */
final class DrawingReader extends DefaultHandler {

  static final int MOST_CHARACTERS = 20_000_000;
  static final int MOST_OUTLINES = 5_000;
  private static final int MOST_ELEMENTS = 200_000;
  private static final int DEEPEST = 50;
  private static final int MOST_ODDITIES = 20;

  private static final String SVG = "http://www.w3.org/2000/svg";

  /** Attributes that move or hide what the path data says. */
  private static final List<String> UNCERTAIN =
      List.of("transform", "style", "class", "clip-path", "mask", "display", "visibility");

  private static final Set<String> HARMLESS = Set.of("g", "path", "title", "desc");

  private record Open(String name, String id) {}

  private final Deque<Open> open = new ArrayDeque<>();
  private final List<OutlinePath> outlines = new ArrayList<>();
  private final List<Finding> oddities = new ArrayList<>();
  private Optional<Locator> locator = Optional.empty();
  private Optional<String> sheetEdge = Optional.empty();
  private String width = "";
  private String height = "";
  private String viewBox = "";
  private final Map<String, List<String>> holes = new TreeMap<>();
  private String form = "";
  private int cutPaths;
  private boolean hasCutGroup;
  private int elements;

  private DrawingReader() {}

  /**
   * @throws CheckException if the text is too long, not well-formed XML, has a document type, is
   *     not SVG, has no group {@code cut}, or goes beyond a limit
   */
  static DrawingFile read(String svg) throws CheckException {
    if (svg.length() > MOST_CHARACTERS) {
      throw new CheckException(
          "the drawing is too long: "
              + svg.length()
              + " characters, at most "
              + MOST_CHARACTERS
              + " are read");
    }
    DrawingReader reader = new DrawingReader();
    try {
      parser().parse(new InputSource(new StringReader(svg)), reader);
    } catch (SAXParseException e) {
      throw new CheckException(
          "line " + e.getLineNumber() + ": the drawing is not readable XML: " + e.getMessage(), e);
    } catch (SAXException e) {
      throw new CheckException(e.getMessage(), e);
    } catch (IOException | ParserConfigurationException e) {
      throw new CheckException("the drawing cannot be read: " + e.getMessage(), e);
    }
    if (!reader.hasCutGroup) {
      throw new CheckException("the drawing has no group with the id 'cut', so nothing to check");
    }
    reader.addHoles();
    return new DrawingFile(
        reader.width,
        reader.height,
        reader.viewBox,
        reader.sheetEdge,
        reader.form,
        reader.outlines,
        reader.oddities);
  }

  private static SAXParser parser() throws SAXException, ParserConfigurationException {
    SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
    factory.setNamespaceAware(true);
    factory.setXIncludeAware(false);
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
    factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
    SAXParser parser = factory.newSAXParser();
    parser.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
    parser.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
    return parser;
  }

  @Override
  public void setDocumentLocator(Locator locator) {
    this.locator = Optional.of(locator);
  }

  @Override
  public void startElement(String uri, String name, String qName, Attributes attributes)
      throws SAXException {
    elements++;
    if (elements > MOST_ELEMENTS || open.size() >= DEEPEST) {
      throw new SAXException(
          where() + "the drawing has too many or too deeply nested elements to be checked");
    }
    if (open.isEmpty()) {
      startRoot(uri, name, attributes);
    }
    String id = value(attributes, "id");
    boolean inCut = isIn("cut");
    if (name.equals("g") && id.equals("cut")) {
      hasCutGroup = true;
      form = value(attributes, "data-form");
    }
    if (inCut || open.size() <= 1 || isIn("sheet")) {
      noteUncertain(name, id, attributes);
    }
    if (inCut && !HARMLESS.contains(name)) {
      odd("<" + name + "> in the group 'cut': outlines must be paths", id);
    }
    if (name.equals("style") || name.equals("script")) {
      odd("<" + name + "> may change what is drawn", id);
    }
    if (inCut && name.equals("path")) {
      addOutline(id, attributes);
    }
    if (isIn("sheet") && name.equals("path") && id.equals("edge")) {
      sheetEdge = Optional.of(value(attributes, "d"));
    }
    open.push(new Open(name, id));
  }

  @Override
  public void endElement(String uri, String name, String qName) {
    open.pop();
  }

  @Override
  public void error(SAXParseException e) throws SAXException {
    throw e;
  }

  @Override
  public void fatalError(SAXParseException e) throws SAXException {
    throw e;
  }

  private void startRoot(String uri, String name, Attributes attributes) throws SAXException {
    if (!uri.equals(SVG) || !name.equals("svg")) {
      throw new SAXException(where() + "the file is not an SVG drawing: it starts with " + name);
    }
    width = value(attributes, "width");
    height = value(attributes, "height");
    viewBox = value(attributes, "viewBox");
  }

  private void addOutline(String id, Attributes attributes) throws SAXException {
    if (++cutPaths > MOST_OUTLINES) {
      throw new SAXException(
          where() + "the drawing has more than " + MOST_OUTLINES + " outlines: not checked");
    }
    String name = id.isEmpty() ? "path at line " + line() : id;
    String owner = value(attributes, "data-hole-of");
    String data = value(attributes, "d");
    if (owner.isEmpty()) {
      outlines.add(new OutlinePath(name, value(attributes, "data-piece"), List.of(data)));
    } else {
      holes.computeIfAbsent(owner, key -> new ArrayList<>()).add(data);
    }
  }

  /** Holes are paths of their own, cut before the outside; here they come to their pieces. */
  private void addHoles() {
    for (int i = 0; i < outlines.size(); i++) {
      OutlinePath outline = outlines.get(i);
      List<String> data = new ArrayList<>(outline.data());
      data.addAll(Optional.ofNullable(holes.remove(outline.name())).orElse(List.of()));
      outlines.set(i, new OutlinePath(outline.name(), outline.piece(), data));
    }
    holes.keySet().forEach(owner -> odd("a hole belongs to " + owner + ", which is not drawn", ""));
  }

  private void noteUncertain(String name, String id, Attributes attributes) {
    for (String attribute : UNCERTAIN) {
      if (!value(attributes, attribute).isEmpty()) {
        odd("<" + name + "> has the attribute '" + attribute + "', which many importers drop", id);
      }
    }
  }

  private void odd(String what, String id) {
    if (oddities.size() < MOST_ODDITIES) {
      String[] paths = id.isEmpty() ? new String[0] : new String[] {id};
      oddities.add(Finding.of(Finding.Kind.STRUCTURE, where() + what, paths));
    }
  }

  private boolean isIn(String group) {
    return open.stream().anyMatch(element -> element.id().equals(group));
  }

  private static String value(Attributes attributes, String name) {
    return Optional.ofNullable(attributes.getValue(name)).orElse("");
  }

  private int line() {
    return locator.map(Locator::getLineNumber).orElse(0);
  }

  private String where() {
    return "line " + line() + ": ";
  }
}

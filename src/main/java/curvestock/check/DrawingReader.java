package curvestock.check;

import curvestock.check.DrawingFile.OtherPath;
import curvestock.check.DrawingFile.OutlinePath;
import curvestock.check.DrawingFile.Rectangle;
import curvestock.check.DrawingFile.Written;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
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

  private static final String POCKET_TOP = "pocket-top";
  private static final String POCKET_BOTTOM = "pocket-bottom";
  private static final String DRILL = "drill";

  private static final Set<String> HARMLESS = Set.of("g", "path", "title", "desc");

  /** The groups of a drawing, by what is done along their lines. */
  private static final Set<String> OPERATIONS =
      Set.of(
          "cut",
          "mark",
          "label",
          POCKET_TOP,
          POCKET_BOTTOM,
          DRILL,
          "tab",
          "sheet",
          "remnant",
          "flip");

  /** An element around the one that is read, and what it does to all in it. */
  private record Open(
      String name, String id, int line, List<String> oddities, Map<String, String> said) {}

  private final Deque<Open> open = new ArrayDeque<>();
  private final Set<Open> told = Collections.newSetFromMap(new IdentityHashMap<>());
  private final List<OutlinePath> outlines = new ArrayList<>();
  private final List<OtherPath> others = new ArrayList<>();
  private final List<Written> texts = new ArrayList<>();
  private final List<DrawingFile.HolePath> drilled = new ArrayList<>();
  private final List<DrawingFile.PocketPath> pockets = new ArrayList<>();
  private final List<Finding> oddities = new ArrayList<>();
  private Optional<Locator> locator = Optional.empty();
  private Optional<String> sheetEdge = Optional.empty();
  private Optional<Rectangle> remnant = Optional.empty();
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
    boolean underside = reader.isUnderside();
    if (!reader.hasCutGroup && !underside) {
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
        reader.others,
        reader.texts,
        reader.drilled,
        reader.pockets,
        underside,
        reader.remnant,
        reader.oddities);
  }

  private boolean isUnderside() {
    return !hasCutGroup && pockets.stream().anyMatch(pocket -> !pocket.fromAbove());
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
    Open element =
        new Open(
            uri.equals(SVG) ? name : qName,
            value(attributes, "id"),
            line(),
            SvgRules.oddities(attributes),
            SvgRules.properties(attributes));
    noteElement(element, uri);
    boolean isRoot = open.isEmpty();
    open.push(element);
    if (!isRoot && uri.equals(SVG)) {
      noteGroup(element, attributes);
      read(element, attributes);
    }
  }

  /** Elements that have no place in a drawing, wherever they stand. */
  private void noteElement(Open element, String uri) {
    String shown = "<" + element.name() + ">";
    boolean inDefs = open.stream().anyMatch(around -> around.name().equals("defs"));
    if (isIn("cut") && !(uri.equals(SVG) && HARMLESS.contains(element.name()))) {
      odd(shown + " in the group 'cut': outlines must be paths", element.id());
    } else if (!open.isEmpty() && SvgRules.changesTheDrawing(element.name())) {
      odd(shown + " may change what is drawn", element.id());
    } else if (inDefs && uri.equals(SVG)) {
      odd(shown + " in <defs>, where nothing is drawn: take it out", element.id());
    } else if ((isIn("mark")
            || isIn("tab")
            || isIn(DRILL)
            || isIn(POCKET_TOP)
            || isIn(POCKET_BOTTOM))
        && !(uri.equals(SVG) && HARMLESS.contains(element.name()))) {
      odd(shown + " in a group of lines: they must be paths", element.id());
    }
  }

  /** An operation's group, and all in it, is judged with everything around it. */
  private void noteGroup(Open element, Attributes attributes) {
    if (OPERATIONS.stream().anyMatch(this::isIn)) {
      List<Open> inward = new ArrayList<>(open);
      Collections.reverse(inward);
      for (Open around : inward) {
        if (told.add(around)) {
          around.oddities().forEach(what -> odd(around, what));
        }
      }
    }
    if (element.name().equals("g") && element.id().equals("cut")) {
      if (hasCutGroup) {
        odd("a second group has the id 'cut': keep one", element.id());
      }
      hasCutGroup = true;
      form = value(attributes, "data-form");
    }
  }

  private void read(Open element, Attributes attributes) throws SAXException {
    switch (element.name()) {
      case "path" -> {
        if (isIn("cut")) {
          addOutline(element.id(), attributes);
        } else if (isIn("sheet") && element.id().equals("edge")) {
          if (sheetEdge.isPresent()) {
            odd("the sheet's edge is drawn twice", element.id());
          }
          sheetEdge = Optional.of(value(attributes, "d"));
        } else if (isIn(DRILL)) {
          drilled.add(
              new DrawingFile.HolePath(
                  value(attributes, "data-hole-of"),
                  value(attributes, "data-diameter"),
                  value(attributes, "d")));
        } else if (isIn(POCKET_TOP) || isIn(POCKET_BOTTOM)) {
          pockets.add(
              new DrawingFile.PocketPath(
                  element.id().isEmpty() ? "area at line " + line() : element.id(),
                  isIn(POCKET_TOP),
                  value(attributes, "data-depth"),
                  value(attributes, "d")));
        } else {
          boolean isWord = isIn("label") && !value(attributes, "data-word").isEmpty();
          others.add(new OtherPath(isWord ? "word" : operation(), value(attributes, "d")));
        }
      }
      case "text" -> {
        if (isIn("label")) {
          addText(attributes);
        }
      }
      case "rect" -> {
        if (isIn("label") && element.id().equals("remnant")) {
          addRemnant(attributes);
        }
      }
      default -> {
        // Groups, and what has no lines of its own.
      }
    }
  }

  private String operation() {
    return open.stream()
        .filter(around -> around.name().equals("g") && OPERATIONS.contains(around.id()))
        .findFirst()
        .map(Open::id)
        .orElse("");
  }

  private void addRemnant(Attributes attributes) {
    try {
      remnant =
          Optional.of(
              new Rectangle(
                  Double.parseDouble(value(attributes, "x")),
                  Double.parseDouble(value(attributes, "y")),
                  Double.parseDouble(value(attributes, "width")),
                  Double.parseDouble(value(attributes, "height"))));
    } catch (NumberFormatException e) {
      odd("<rect> has no plain numbers for its place and size", "remnant");
    }
  }

  private void addText(Attributes attributes) {
    try {
      double x = Double.parseDouble(value(attributes, "x"));
      double y = Double.parseDouble(value(attributes, "y"));
      String size = value(attributes, "font-size");
      texts.add(
          new Written(
              x,
              y,
              size.isEmpty() ? 0 : Double.parseDouble(size),
              value(attributes, "text-anchor").equals("middle"),
              value(attributes, "font-weight").equals("bold")));
    } catch (NumberFormatException e) {
      odd("<text> has no plain numbers for x, y and font-size", value(attributes, "id"));
    }
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
    List<Map<String, String>> inherited = new ArrayList<>();
    open.descendingIterator().forEachRemaining(around -> inherited.add(around.said()));
    SvgRules.hiddenLine(inherited).ifPresent(what -> odd("<path> " + what, id));
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

  private void odd(Open element, String what) {
    odd("line " + element.line() + ": <" + element.name() + "> " + what, element.id(), "");
  }

  private void odd(String what, String id) {
    odd(what, id, where());
  }

  private void odd(String what, String id, String where) {
    if (oddities.size() < MOST_ODDITIES) {
      String[] paths = id.isEmpty() ? new String[0] : new String[] {id};
      oddities.add(Finding.of(Finding.Kind.STRUCTURE, where + what, paths));
    }
  }

  private boolean isIn(String group) {
    return open.stream()
        .anyMatch(element -> element.name().equals("g") && element.id().equals(group));
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

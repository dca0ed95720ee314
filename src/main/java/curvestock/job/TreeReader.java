package curvestock.job;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Turns YAML text into {@link Node}s. Refuses what a job file has no use for and what can make a
 * small file big or ambiguous: anchors and aliases, tags, duplicate keys, several documents, deep
 * nesting, texts over {@value #MOST_CHARACTERS} characters. Linear in the length of the text.
 */
final class TreeReader {

  static final int MOST_CHARACTERS = 1 << 20;
  static final int DEEPEST = 20;

  private static final YAMLFactory YAML = new YAMLFactory();

  private final Problems problems;
  private final int[] characters;
  private final YAMLParser parser;

  private TreeReader(String text, Problems problems) throws IOException {
    this.problems = problems;
    this.characters = text.codePoints().toArray();
    this.parser = YAML.createParser(text);
  }

  /** The tree, or nothing if a problem was found that leaves no tree. */
  static Optional<Node> read(String text, Problems problems) {
    if (text.length() > MOST_CHARACTERS) {
      problems.add(
          Place.START,
          "",
          "the file has " + text.length() + " characters; at most 1 MB is read; is it a job file?");
      return Optional.empty();
    }
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    if (!printable(plain, problems)) {
      return Optional.empty();
    }
    try {
      return new TreeReader(plain, problems).document();
    } catch (JsonProcessingException e) {
      reportSyntax(e, problems);
      return Optional.empty();
    } catch (IOException e) {
      problems.add(Place.START, "", "the text cannot be read: " + e.getMessage());
      return Optional.empty();
    }
  }

  private Optional<Node> document() throws IOException {
    try (parser) {
      JsonToken first = parser.nextToken();
      if (first == null) {
        problems.add(Place.START, "", "the file is empty; write `curvestock: 2` on its first line");
        return Optional.empty();
      }
      Optional<Node> root = node(first, 1);
      if (root.isPresent() && parser.nextToken() != null) {
        problems.add(place(), "", "a second document begins here; write one job per file");
        return Optional.empty();
      }
      return root;
    }
  }

  /** The node that begins at the current token; nothing if it is refused beyond repair. */
  private Optional<Node> node(JsonToken token, int depth) throws IOException {
    Place place = place();
    refuseSharing();
    if (depth > DEEPEST) {
      problems.add(place, "", "nested deeper than " + DEEPEST + " levels; no field needs that");
      return Optional.empty();
    }
    return switch (token) {
      case START_OBJECT -> mapping(place, depth);
      case START_ARRAY -> items(place, depth);
      default -> Optional.of(new Node.Text(place, parser.getText()));
    };
  }

  private Optional<Node> items(Place place, int depth) throws IOException {
    List<Node> items = new ArrayList<>();
    for (JsonToken token = parser.nextToken();
        token != JsonToken.END_ARRAY;
        token = parser.nextToken()) {
      Optional<Node> item = node(token, depth + 1);
      if (item.isEmpty()) {
        return item;
      }
      items.add(item.get());
    }
    return Optional.of(new Node.Items(place, items));
  }

  private Optional<Node> mapping(Place place, int depth) throws IOException {
    List<Node.Entry> entries = new ArrayList<>();
    Set<String> keys = new HashSet<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      Place keyPlace = place();
      refuseSharing();
      String key = parser.currentName();
      Optional<Node> value = node(parser.nextToken(), depth + 1);
      if (value.isEmpty()) {
        return value;
      }
      if (keys.add(key)) {
        entries.add(new Node.Entry(keyPlace, key, value.get()));
      } else {
        problems.add(
            keyPlace, "", Words.quoted(key) + " is given twice here; keep one of the two lines");
      }
    }
    return Optional.of(new Node.Mapping(place, entries));
  }

  /** Notes an anchor, an alias or a tag at the current token. */
  private void refuseSharing() throws IOException {
    JsonLocation location = parser.currentTokenLocation();
    long at = location.getCharOffset();
    int sign = at >= 0 && at < characters.length ? characters[(int) at] : ' ';
    if (parser.isCurrentAlias() || sign == '&' || sign == '*') {
      problems.add(
          place(),
          "",
          "anchors and aliases (& and *) are not used in job files; write the value out, or put"
              + " the text in quotes");
    } else if (sign == '!') {
      problems.add(
          place(), "", "tags (!) are not used in job files; leave it out, or quote the text");
    }
  }

  private Place place() {
    JsonLocation location = parser.currentTokenLocation();
    return new Place(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
  }

  /** YAML allows no control characters; finding them here gives the place. */
  private static boolean printable(String text, Problems problems) {
    int line = 1;
    int column = 1;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      if (!isPrintable(c)) {
        problems.add(
            new Place(line, column),
            "",
            String.format(
                Locale.ROOT,
                "the character U+%04X is not allowed in a text file; is this a YAML file saved as"
                    + " UTF-8?",
                c));
        return false;
      }
      boolean newLine = c == '\n';
      line += newLine ? 1 : 0;
      column = newLine ? 1 : column + 1;
      i += Character.charCount(c);
    }
    return true;
  }

  /**
   * The printable set of YAML 1.1, section 5.1, less its rare line breaks U+0085, U+2028 and
   * U+2029: editors do not count them, so that the line numbers of messages would be wrong after
   * one.
   */
  private static boolean isPrintable(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c <= 0x7E)
        || (c >= 0xA0 && c <= 0xD7FF && c != 0x2028 && c != 0x2029)
        || (c >= 0xE000 && c <= 0xFFFD && c != 0xFEFF)
        || c >= 0x10000;
  }

  private static void reportSyntax(JsonProcessingException e, Problems problems) {
    if (e.getCause() instanceof MarkedYAMLException yaml && yaml.getProblemMark() != null) {
      Place found =
          new Place(yaml.getProblemMark().getLine() + 1, yaml.getProblemMark().getColumn() + 1);
      Optional<Place> begun =
          Optional.ofNullable(yaml.getContextMark())
              .map(mark -> new Place(mark.getLine() + 1, mark.getColumn() + 1));
      SyntaxWords.report(yaml.getProblem(), found, begun, problems);
      return;
    }
    JsonLocation at = e.getLocation();
    Place place =
        at == null
            ? Place.START
            : new Place(Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
    SyntaxWords.report(e.getOriginalMessage(), place, Optional.empty(), problems);
  }
}

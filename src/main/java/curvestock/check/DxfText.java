package curvestock.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A DXF file (ASCII) split into what it holds: comments, variables, layers and entities. Blocks and
 * all else are left out.
 */
final class DxfText {

  private static final int MOST_CHARACTERS = 20_000_000;
  private static final int MOST_ENTITIES = 300_000;

  private final List<String> comments = new ArrayList<>();
  private final Map<String, String> variables = new HashMap<>();
  private final List<DxfEntity> layers = new ArrayList<>();
  private final List<DxfEntity> entities = new ArrayList<>();
  private String section = "";
  private String variable = "";
  private boolean named;
  private boolean ended;

  private DxfText() {}

  /**
   * Splits the text.
   *
   * @throws CheckException if it is no DXF, is cut off, or goes beyond a limit
   */
  static DxfText of(String text) throws CheckException {
    if (text.length() > MOST_CHARACTERS) {
      throw new CheckException("the drawing is too long: " + text.length() + " characters");
    }
    DxfText split = new DxfText();
    String[] lines = text.split("\\r?\\n", -1);
    for (int i = 0; i + 1 < lines.length; i += 2) {
      split.group(code(lines[i], i + 1), lines[i + 1].strip(), i + 1);
    }
    if (!split.ended) {
      throw new CheckException("the file is no whole DXF drawing: it does not end with EOF");
    }
    return split;
  }

  private static int code(String line, int number) throws CheckException {
    try {
      return Integer.parseInt(line.strip());
    } catch (NumberFormatException e) {
      throw new CheckException(
          "line " + number + ": the file is neither SVG nor DXF: a group's code must be a number",
          e);
    }
  }

  private void group(int code, String value, int line) throws CheckException {
    if (code == 999) {
      comments.add(value);
      return;
    }
    if (code == 0) {
      begin(value, line);
    } else if (code == 2 && named) {
      section = value;
      named = false;
    } else if (section.equals("HEADER")) {
      variable(code, value);
    } else if (section.equals("ENTITIES") && !entities.isEmpty()) {
      entities.get(entities.size() - 1).groups().add(new DxfEntity.Group(code, value));
    } else if (section.equals("TABLES") && !layers.isEmpty()) {
      layers.get(layers.size() - 1).groups().add(new DxfEntity.Group(code, value));
    }
  }

  private void begin(String value, int line) throws CheckException {
    named = value.equals("SECTION");
    ended = value.equals("EOF");
    if (named || value.equals("ENDSEC")) {
      section = "";
    } else if (section.equals("ENTITIES")) {
      add(entities, value, line);
    } else if (section.equals("TABLES")) {
      add(layers, value, line);
    }
  }

  private static void add(List<DxfEntity> list, String name, int line) throws CheckException {
    if (list.size() >= MOST_ENTITIES) {
      throw new CheckException("the drawing has too many entities to be checked");
    }
    list.add(new DxfEntity(name, new ArrayList<>(), line));
  }

  private void variable(int code, String value) {
    if (code == 9) {
      variable = value;
    } else {
      variables.putIfAbsent(variable, value);
    }
  }

  List<String> comments() {
    return List.copyOf(comments);
  }

  /** The first value of each variable of the header. */
  Map<String, String> variables() {
    return Map.copyOf(variables);
  }

  /** Entries of the table of layers. */
  List<DxfEntity> layers() {
    return layers.stream().filter(entry -> entry.name().equals("LAYER")).toList();
  }

  List<DxfEntity> entities() {
    return List.copyOf(entities);
  }
}

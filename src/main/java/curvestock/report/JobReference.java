package curvestock.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import curvestock.job.JobSchema;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/**
 * Every key of a job file as a text in Markdown, made from the {@link JobSchema}: a section for
 * each block, a row for each key with its meaning and what may be written.
 */
public final class JobReference {

  private static final String HEAD =
      """
      # Job files: every key

      Made from the schema by `curvestock schema --reference`. A dot leads into a block: `helix.joint` is the key
      `joint` in the block `helix`. An asterisk marks keys that must be there.
      """;

  private final JsonNode root;

  /** Blocks still to be written, by the path under which they are first met. */
  private final Map<String, JsonNode> blocks = new LinkedHashMap<>();

  /** Where a shared block is written already. */
  private final Map<String, String> met = new LinkedHashMap<>();

  private JobReference(JsonNode root) {
    this.root = root;
  }

  public static String text() {
    try {
      return new JobReference(new ObjectMapper().readTree(JobSchema.text())).written();
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the schema must be JSON", e);
    }
  }

  private String written() {
    StringBuilder text = new StringBuilder(HEAD);
    blocks.put("", root);
    while (!blocks.isEmpty()) {
      String path = blocks.keySet().iterator().next();
      section(text, path, blocks.remove(path));
    }
    return text.toString();
  }

  private void section(StringBuilder text, String path, JsonNode block) {
    text.append("\n## ").append(path.isEmpty() ? "The file" : "`" + path + "`").append("\n\n");
    String meaning = block.path("description").asText();
    if (!meaning.isEmpty()) {
      text.append(meaning).append("\n\n");
    }
    text.append("| key | meaning | value |\n|---|---|---|\n");
    List<String> required = texts(block.path("required"));
    block
        .path("properties")
        .properties()
        .forEach(
            field -> {
              String key = field.getKey();
              String place = path.isEmpty() ? key : path + "." + key;
              text.append("| `%s`%s | ".formatted(key, required.contains(key) ? " *" : ""))
                  .append(cell(meaning(field.getValue())))
                  .append(" | ")
                  .append(cell(value(field.getValue(), place)))
                  .append(" |\n");
            });
  }

  private String meaning(JsonNode of) {
    String own = of.path("description").asText();
    boolean shared = own.isEmpty() && of.has("$ref") && !resolved(of).has("properties");
    return shared ? resolved(of).path("description").asText() : own;
  }

  /** What may be written; blocks met on the way get a section of their own. */
  private String value(JsonNode of, String place) {
    if (of.has("enum")) {
      // Numbers stand there as texts too.
      return texts(of.path("enum")).stream().distinct().collect(Collectors.joining(", "));
    }
    if (of.has("oneOf") && !of.has("properties")) {
      return each(of.path("oneOf")).stream()
          .map(one -> value(one, place))
          .distinct()
          .collect(Collectors.joining("; or "));
    }
    if (of.has("const")) {
      return of.path("const").asText();
    }
    if (of.has("items")) {
      return "list: " + value(of.path("items"), place);
    }
    if (of.has("$ref")) {
      return shared(of, place) + range(of);
    }
    if (of.has("properties")) {
      blocks.put(place, of);
      return "block `" + place + "`";
    }
    return plain(of) + range(of);
  }

  private String shared(JsonNode of, String place) {
    String name = name(of);
    JsonNode target = resolved(of);
    if (target.has("properties")) {
      String first = met.putIfAbsent(name, place);
      if (first == null) {
        blocks.put(place, target);
      }
      return "block `" + (first == null ? place : first) + "`";
    }
    return switch (name) {
      case "words", "line" -> "text";
      case "flag" -> "true, false";
      case "amount" -> "number";
      case "size" -> "two lengths, such as 4x8 ft";
      case "point" -> "[x, y]";
      case "corners" -> "list: [x, y]";
      case "thickness", "coordinate" -> "length";
      case "colour" -> "\"#rrggbb\"";
      default -> name;
    };
  }

  private static String plain(JsonNode of) {
    JsonNode type = of.path("type");
    List<String> types = type.isArray() ? texts(type) : List.of(type.asText());
    return types.contains("object")
        ? "block"
        : types.contains("integer") || types.contains("number") ? "number" : "text";
  }

  private static String range(JsonNode of) {
    String low = of.has("minimum") ? " from " + of.path("minimum").asText() : "";
    String high = of.has("maximum") ? " to " + of.path("maximum").asText() : "";
    return low + high;
  }

  private static String name(JsonNode of) {
    String ref = of.path("$ref").asText();
    return ref.substring(ref.lastIndexOf('/') + 1);
  }

  private JsonNode resolved(JsonNode of) {
    return root.path("$defs").path(name(of));
  }

  /** One line, and no bar that would end the cell. */
  private static String cell(String text) {
    return text.replace("|", "\\|").replace('\n', ' ').strip();
  }

  private static List<JsonNode> each(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).toList();
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(one -> texts.add(one.asText()));
    return texts;
  }
}

package curvestock.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** The schemas of an API's description as types of TypeScript. */
final class SchemaTypes {

  private SchemaTypes() {}

  static String of(JsonNode described) {
    StringBuilder text = new StringBuilder();
    described
        .at("/components/schemas")
        .properties()
        .forEach(
            each ->
                text.append(
                    "export type %s = %s;%n".formatted(each.getKey(), type(each.getValue()))));
    return text.toString();
  }

  private static String type(JsonNode schema) {
    if (schema.has("$ref")) {
      return schema.get("$ref").textValue().replaceFirst(".*/", "");
    }
    if (schema.has("enum")) {
      return joined(schema.get("enum"), each -> Json.text(each));
    }
    if (schema.has("oneOf")) {
      return joined(schema.get("oneOf"), SchemaTypes::type);
    }
    if (schema.path("type").isArray()) {
      return joined(schema.get("type"), each -> named(each.textValue(), schema));
    }
    return named(schema.path("type").asText(), schema);
  }

  private static String joined(JsonNode list, java.util.function.Function<JsonNode, String> one) {
    return StreamSupport.stream(list.spliterator(), false)
        .map(one)
        .collect(Collectors.joining(" | ", "(", ")"));
  }

  private static String named(String type, JsonNode schema) {
    return switch (type) {
      case "string", "boolean", "null" -> type;
      case "integer", "number" -> "number";
      case "array" -> schema.has("items") ? type(schema.get("items")) + "[]" : "any[]";
      case "object" -> object(schema);
      default -> "any";
    };
  }

  private static String object(JsonNode schema) {
    List<String> needed = new ArrayList<>();
    schema.path("required").forEach(each -> needed.add(each.textValue()));
    List<String> fields = new ArrayList<>();
    schema
        .path("properties")
        .properties()
        .forEach(
            each ->
                fields.add(
                    "\"%s\"%s: %s"
                        .formatted(
                            each.getKey(),
                            needed.contains(each.getKey()) ? "" : "?",
                            type(each.getValue()))));
    JsonNode others = schema.get("additionalProperties");
    if (fields.isEmpty()) {
      return "{[key: string]: %s}"
          .formatted(others == null || others.isBoolean() ? "any" : type(others));
    }
    return "{" + String.join("; ", fields) + "}";
  }
}

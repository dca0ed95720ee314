package curvestock.web;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.BadRequestResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads what clients send and writes what they get. */
final class Json {

  private static final int DEEPEST = 40;

  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
                  .build())
          .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private Json() {}

  static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  static String text(JsonNode node) {
    try {
      return MAPPER.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can always be written", e);
    }
  }

  /** A text that this program has written. */
  static JsonNode own(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("this program writes JSON that it can read", e);
    }
  }

  /** The body of a request, which must be one object. */
  static JsonNode request(String body) {
    try {
      JsonNode node = MAPPER.readTree(body);
      if (node == null || !node.isObject()) {
        throw new BadRequestResponse("the body must be one JSON object");
      }
      return node;
    } catch (JsonProcessingException e) {
      throw new BadRequestResponse("the body is no JSON: " + e.getOriginalMessage());
    }
  }

  /** A field that must be a text of at most {@code longest} characters. */
  static String needText(JsonNode node, String field, int longest) {
    JsonNode value = node.get(field);
    if (value == null || !value.isTextual() || value.textValue().length() > longest) {
      throw new BadRequestResponse(
          "\"" + field + "\" must be a text of at most " + longest + " characters");
    }
    return value.textValue();
  }

  /** A field that must be a finite number. */
  static double needNumber(JsonNode node, String field) {
    JsonNode value = node.get(field);
    if (value == null || !value.isNumber() || !Double.isFinite(value.doubleValue())) {
      throw new BadRequestResponse("\"" + field + "\" must be a finite number");
    }
    return value.doubleValue();
  }

  /** A field that must be a list of at most {@code most} elements. */
  static List<JsonNode> needList(JsonNode node, String field, int most) {
    JsonNode value = node.get(field);
    if (value == null || !value.isArray() || value.size() > most) {
      throw new BadRequestResponse(
          "\"" + field + "\" must be a list of at most " + most + " elements");
    }
    List<JsonNode> list = new ArrayList<>();
    value.forEach(list::add);
    return list;
  }

  /** The job that a request holds, as a tree of maps, lists and texts. */
  static Map<String, Object> needJob(JsonNode request) {
    JsonNode job = request.get("job");
    if (job == null || !job.isObject()) {
      throw new BadRequestResponse("\"job\" must be an object with the fields of a job file");
    }
    return map(job);
  }

  private static Map<String, Object> map(JsonNode node) {
    Map<String, Object> map = new LinkedHashMap<>();
    node.properties().forEach(entry -> map.put(entry.getKey(), plain(entry.getValue())));
    return map;
  }

  private static Object plain(JsonNode node) {
    if (node.isObject()) {
      return map(node);
    }
    if (node.isArray()) {
      List<Object> list = new ArrayList<>();
      node.forEach(each -> list.add(plain(each)));
      return list;
    }
    return node.isNull() ? "" : node.asText();
  }

  /** A tree of maps, lists and texts as JSON. */
  static JsonNode tree(Object plain) {
    return MAPPER.valueToTree(plain);
  }
}

package curvestock.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.units.Length;
import curvestock.units.LengthFormatException;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import io.javalin.http.BadRequestResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shows lengths in the other unit beside what the user typed, which itself is never converted. A
 * text may also be the two sides of a sheet.
 */
final class LengthTexts {

  private static final int MOST = 400;
  private static final int LONGEST = 80;
  private static final Map<String, LengthUnit> UNITS =
      Map.of(
          "in", LengthUnit.INCH,
          "mm", LengthUnit.MILLIMETRE,
          "cm", LengthUnit.CENTIMETRE,
          "m", LengthUnit.METRE,
          "ft", LengthUnit.FOOT);

  private final Optional<LengthUnit> bare;

  private LengthTexts(Optional<LengthUnit> bare) {
    this.bare = bare;
  }

  /** Reads {@code units} (of bare numbers; may be empty) and {@code texts}. */
  static ObjectNode read(JsonNode request) {
    String units = Json.needText(request, "units", 2);
    if (!units.isEmpty() && !UNITS.containsKey(units)) {
      throw new BadRequestResponse("\"units\" must be in, mm, cm, m, ft or nothing");
    }
    LengthTexts texts = new LengthTexts(Optional.ofNullable(UNITS.get(units)));
    List<JsonNode> asked = Json.needList(request, "texts", MOST);
    ObjectNode root = Json.object();
    ArrayNode answers = root.putArray("lengths");
    asked.forEach(text -> texts.answer(answers.addObject(), text.asText()));
    return root;
  }

  private void answer(ObjectNode node, String text) {
    String shortened = text.length() > LONGEST ? "" : text;
    // "x" alone is no length, so a text with one holds the sides of a sheet.
    String[] sides = shortened.split("[xX×]", -1);
    try {
      List<Length> lengths = Arrays.stream(sides).map(side -> parse(side, sides)).toList();
      node.put("inch", words(lengths, LengthStyle.INCH_FRACTIONS));
      node.put("metric", words(lengths, LengthStyle.METRIC));
      node.put("millimetres", lengths.get(0).millimetres());
    } catch (LengthFormatException e) {
      node.put("problem", e.getMessage());
    }
  }

  /** A first side without a unit has that of the last one. */
  private Length parse(String side, String[] sides) {
    String last = sides[sides.length - 1];
    String unit = last.replaceFirst("^.*?([a-zA-Z'\"′″.]*)\\s*$", "$1");
    try {
      return side.equals(last) || unit.isEmpty() ? parse(side) : Length.parse(side.strip() + unit);
    } catch (LengthFormatException e) {
      return parse(side);
    }
  }

  private Length parse(String side) {
    return bare.isPresent() ? Length.parse(side.strip(), bare.get()) : Length.parse(side.strip());
  }

  private static String words(List<Length> lengths, LengthStyle style) {
    return String.join(" x ", lengths.stream().map(style::formatGiven).toList());
  }
}

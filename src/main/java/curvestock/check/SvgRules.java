package curvestock.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.xml.sax.Attributes;

/** What an element or attribute of SVG does to the lines in it besides what their data say. */
final class SvgRules {

  /** Attributes that move or hide what the path data says. */
  private static final List<String> UNCERTAIN =
      List.of(
          "transform", "style", "class", "clip-path", "mask", "filter", "display", "visibility");

  /** Elements that hide what they hold, repeat it elsewhere, or change what others draw. */
  private static final Set<String> CHANGING =
      Set.of(
          "style",
          "script",
          "symbol",
          "clipPath",
          "mask",
          "pattern",
          "marker",
          "filter",
          "svg",
          "use",
          "image",
          "switch",
          "foreignObject",
          "animate",
          "animateMotion",
          "animateTransform",
          "set");

  /** Properties that may hide a line. */
  private static final List<String> HIDING =
      List.of("display", "visibility", "opacity", "stroke", "stroke-opacity", "stroke-width");

  /** Properties of a style that only colour. */
  private static final Pattern PAINT =
      Pattern.compile(
          "(fill|stroke|font|text|color|opacity|paint-order|line-height|letter-spacing"
              + "|word-spacing|white-space|writing-mode|-inkscape)(-[a-z-]+)?");

  private static final Pattern ZERO = Pattern.compile("[+]?0*\\.?0*(px|mm|in|%)?");

  private SvgRules() {}

  static boolean changesTheDrawing(String element) {
    return CHANGING.contains(element);
  }

  /** What an element does to all that it holds, a clause each. */
  static List<String> oddities(Attributes attributes) {
    List<String> oddities = new ArrayList<>();
    for (String name : UNCERTAIN) {
      String value = Optional.ofNullable(attributes.getValue(name)).orElse("").strip();
      if (!value.isEmpty() && !isHarmless(name, value)) {
        oddities.add("has the attribute '" + name + "', which many importers drop");
      }
    }
    Map<String, String> said = properties(attributes);
    for (String name : List.of("display", "visibility", "opacity")) {
      String value = said.getOrDefault(name, "");
      if (Set.of("none", "hidden", "collapse").contains(value)
          || (name.equals("opacity") && isZero(value))) {
        oddities.add("hides what it holds (" + name + " " + value + "): show it or delete it");
      }
    }
    return oddities;
  }

  /**
   * What hides the line itself, given what its ancestors and it say of lines.
   *
   * @param inherited from the outermost ancestor to the path
   */
  static Optional<String> hiddenLine(List<Map<String, String>> inherited) {
    Map<String, String> all = new HashMap<>();
    inherited.forEach(all::putAll);
    for (String name : List.of("stroke", "stroke-opacity", "stroke-width")) {
      String value = all.getOrDefault(name, "");
      boolean none = Set.of("none", "transparent").contains(value);
      if (name.equals("stroke") ? none : isZero(value)) {
        return Optional.of("has an invisible line (" + name + " " + value + ")");
      }
    }
    return Optional.empty();
  }

  /** What an element says of showing its lines; a style's rules come before attributes. */
  static Map<String, String> properties(Attributes attributes) {
    Map<String, String> said = new HashMap<>();
    for (String name : HIDING) {
      Optional.ofNullable(attributes.getValue(name))
          .ifPresent(value -> said.put(name, small(value)));
    }
    String style = Optional.ofNullable(attributes.getValue("style")).orElse("");
    for (String rule : small(style).split(";", -1)) {
      String[] parts = rule.split(":", 2);
      if (parts.length == 2 && HIDING.contains(parts[0].strip())) {
        said.put(parts[0].strip(), parts[1].strip());
      }
    }
    return said;
  }

  private static boolean isHarmless(String name, String value) {
    return switch (name) {
      case "display" -> Set.of("inline", "block", "none").contains(value);
      case "visibility" -> Set.of("visible", "hidden", "collapse").contains(value);
      case "style" -> isPaint(value);
      default -> value.equals("none") && !name.equals("transform") && !name.equals("class");
    };
  }

  /** Whether a style's rules all colour, or say of showing what is judged by itself. */
  private static boolean isPaint(String style) {
    for (String rule : small(style).split(";", -1)) {
      String name = rule.split(":", 2)[0].strip();
      boolean known = PAINT.matcher(name).matches() && rule.contains(":");
      boolean shown =
          Set.of("display", "visibility").contains(name)
              && isHarmless(name, rule.substring(rule.indexOf(':') + 1).strip());
      if (!rule.isBlank() && !known && !shown) {
        return false;
      }
    }
    return true;
  }

  private static boolean isZero(String value) {
    return !value.isEmpty() && ZERO.matcher(value).matches();
  }

  private static String small(String value) {
    return value.strip().toLowerCase(Locale.ROOT);
  }
}

package curvestock.fuzz;

import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Drawings that went wrong or mean harm, made from a good one. */
public final class SvgNoise {

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");
  private static final Pattern ATTRIBUTE = Pattern.compile(" [a-zA-Z:-]+=\"[^\"]*\"");
  private static final Pattern ELEMENT = Pattern.compile("<path[^>]*/>");

  private static final List<String> NUMBERS =
      List.of(
          "NaN",
          "Infinity",
          "-Infinity",
          "1e308",
          "1e309",
          "1e999999999",
          "-1e300",
          "1e-400",
          "0",
          "-0",
          "1e6",
          "1e7",
          "",
          ".",
          "--1",
          "1.2.3",
          "0x10",
          "٣",
          "99999999999999999999999",
          "1e",
          "1e+",
          "+5",
          "5.");

  private static final List<String> PROLOGUES =
      List.of(
          "<!DOCTYPE svg>",
          "<!DOCTYPE svg [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>",
          "<!DOCTYPE svg SYSTEM \"file:///etc/hostname\">",
          "<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>",
          "<!DOCTYPE svg [<!ENTITY % p SYSTEM \"http://127.0.0.1:9/p\"> %p;]>",
          "<?xml-stylesheet href=\"http://127.0.0.1:9/x.css\"?>",
          "<?xml version=\"1.0\"?>",
          "\uFEFF",
          "<!--" + "-".repeat(50) + "-->",
          "]]>");

  private static final List<String> INSIDES =
      List.of(
          "&boom;",
          "&#0;",
          "&#x110000;",
          "&lt;",
          "<![CDATA[ ]]>",
          "<script>1</script>",
          "<image href=\"file:///etc/hostname\"/>",
          "<use href=\"#cut\"/>",
          "<use href=\"http://127.0.0.1:9/a.svg#b\"/>",
          "<foreignObject/>",
          "<xi:include xmlns:xi=\"http://www.w3.org/2001/XInclude\" href=\"/etc/hostname\"/>",
          "<g id=\"cut\"><path d=\"M 0 0 Z\"/></g>",
          "<style>@import url(//127.0.0.1:9/)</style>",
          "<path/>",
          "<path d=\"\"/>",
          "<g><g><g>",
          "</g>",
          "<a",
          "\u0000",
          "\uFFFE",
          "\ud83d");

  private static final List<String> ATTRIBUTES =
      List.of(
          " transform=\"matrix(1e308 0 0 1e308 0 0)\"",
          " d=\"M\"",
          " d=\"M 0 0 L 1e9 1 Z\"",
          " id=\"cut\"",
          " id=\"\"",
          " style=\"d:none\"",
          " xmlns=\"\"",
          " xmlns:x=\"x\"",
          " data-piece=\"\u202e\"",
          " width=\"1e999mm\"",
          " viewBox=\"0 0 0 0\"",
          " viewBox=\"NaN NaN NaN NaN\"",
          " height=\"-5mm\"",
          " x:y=\"\"");

  private final String good;
  private final SplittableRandom random;

  public SvgNoise(String good, long seed) {
    this.good = good;
    random = new SplittableRandom(seed);
  }

  /** The next drawing; one in eighty is built from nothing. */
  public String next() {
    if (random.nextInt(80) == 0) {
      return hostile();
    }
    String svg = good;
    for (int n = random.nextInt(3); n >= 0; n--) {
      svg = changed(svg);
    }
    return svg;
  }

  private String hostile() {
    String open = good.substring(0, good.indexOf('>', good.indexOf("<svg")) + 1);
    return switch (random.nextInt(6)) {
      case 0 -> open + "<g id=\"cut\">" + "<g>".repeat(random.nextInt(60_000));
      case 1 -> open + "<g id=\"cut\">" + "<path d=\"M0 0Z\"/>".repeat(6_000) + "</g></svg>";
      case 2 -> open + "<path d=\"" + "M 0 0 ".repeat(random.nextInt(100_000)) + "\"/></svg>";
      case 3 ->
          open
              + "<g id=\"cut\"><path data-piece=\"B\" d=\"M 0 0 L "
              + "9".repeat(random.nextInt(1, 100_000))
              + " 0 L 5 5 Z\"/></g></svg>";
      case 4 -> "<svg " + "a=\"\" ".repeat(random.nextInt(2, 20_000)) + "/>";
      default -> laughs();
    };
  }

  private static String laughs() {
    StringBuilder svg = new StringBuilder("<!DOCTYPE svg [<!ENTITY l0 \"ha\">");
    for (int i = 1; i < 30; i++) {
      svg.append("<!ENTITY l%d \"&l%d;&l%d;&l%d;\">".formatted(i, i - 1, i - 1, i - 1));
    }
    return svg.append("]><svg>&l29;</svg>").toString();
  }

  private String changed(String svg) {
    return switch (random.nextInt(11)) {
      case 0, 1 -> replaced(svg, NUMBER, NUMBERS.get(random.nextInt(NUMBERS.size())));
      case 2 -> replaced(svg, NUMBER, Double.toString(random.nextDouble() * 3000));
      case 3 -> replaced(svg, ATTRIBUTE, ATTRIBUTES.get(random.nextInt(ATTRIBUTES.size())));
      case 4 -> replaced(svg, ATTRIBUTE, "");
      case 5 -> replaced(svg, ELEMENT, INSIDES.get(random.nextInt(INSIDES.size())));
      case 6 -> inserted(svg, INSIDES.get(random.nextInt(INSIDES.size())));
      case 7 -> PROLOGUES.get(random.nextInt(PROLOGUES.size())) + svg;
      case 8 -> svg.substring(0, random.nextInt(svg.length() + 1));
      default -> flipped(svg);
    };
  }

  private String replaced(String svg, Pattern what, String with) {
    Matcher matcher = what.matcher(svg);
    List<MatchResult> found = matcher.results().toList();
    if (found.isEmpty()) {
      return svg;
    }
    MatchResult one = found.get(random.nextInt(found.size()));
    return svg.substring(0, one.start()) + with + svg.substring(one.end());
  }

  private String inserted(String svg, String what) {
    int at = svg.indexOf('>', random.nextInt(svg.length() + 1)) + 1;
    return svg.substring(0, at) + what + svg.substring(at);
  }

  /** Single bits turned over. */
  private String flipped(String svg) {
    StringBuilder changed = new StringBuilder(svg);
    for (int n = random.nextInt(1, 4); n > 0 && changed.length() > 0; n--) {
      int at = random.nextInt(changed.length());
      changed.setCharAt(at, (char) (changed.charAt(at) ^ (1 << random.nextInt(8))));
    }
    return changed.toString();
  }
}

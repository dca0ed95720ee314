package curvestock.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/** Job files that went wrong, made from the demo jobs; the seed gives the whole sequence. */
public final class JobNoise {

  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-0",
          "-1",
          "1e999",
          "1e-999",
          "NaN",
          "Infinity",
          "-Infinity",
          "010",
          "0x1F",
          "1_000",
          "1:30",
          "99999999999999999999",
          "0.1",
          "360",
          "361",
          "1000",
          "1001",
          "1/0",
          "0/0",
          "1/3",
          "5 1/4",
          "5-1/4",
          "5 -1/4",
          ".5",
          "5.",
          "1.2.3",
          "1e9",
          "123456789012345678901234567890");

  private static final List<String> LENGTHS =
      List.of(
          "0 in",
          "-1 in",
          "1 km",
          "1000 m",
          "100 m",
          "0.1 mm",
          "0.09 mm",
          "1 mm",
          "3 furlongs",
          "28",
          "28 in",
          "711 mm",
          "2 ft 3 1/2 in",
          "27-1/2\"",
          "½ in",
          "27½ in",
          "1,5 mm",
          "in",
          "4x8 ft",
          "8 x 4 ft",
          "4x",
          "x",
          "48x96",
          "1e3 mm",
          "٣ in",
          "３ in",
          "5 i\u0307n",
          "12 IN",
          "1 ſt",
          "1 m m",
          "1/0 in",
          "9999999 mm",
          "0.0000001 in",
          "26 in in");

  private static final List<String> YAML =
      List.of(
          "",
          "~",
          "null",
          "no",
          "yes",
          "true",
          "[]",
          "{}",
          "[1, 2]",
          "{a: 1}",
          "\"",
          "'",
          "&a x",
          "*a",
          "!!int 3",
          "!!java.net.URL http://localhost/",
          "!!javax.script.ScriptEngineManager []",
          "!<tag:yaml.org,2002:js> 1",
          "|",
          ">-",
          "#",
          "? ",
          ": ",
          "- - -",
          "%",
          "@",
          "`",
          "---",
          "...",
          "<<: *a",
          "\u202Eabc",
          "\uFEFF",
          "\uFFFF",
          "\u0000",
          "\u0085",
          "\u2028",
          "\ud83d",
          "\ud83d\ude82",
          "ＡＢＣ",
          "é",
          "e\u0301",
          "\t",
          "1 in: 2 in",
          "2026-01-01",
          "[[0, 0], [0, 0], [0, 0]]",
          "[[0 in, 0 in], [1 in, 0 in], [0 in, 1e9 in]]");

  private static final int BIG = 10_000_000;

  private final SplittableRandom random;
  private final List<String> demos;

  public JobNoise(long seed) {
    random = new SplittableRandom(seed);
    demos = demos();
  }

  private static List<String> demos() {
    try (Stream<Path> files = Files.list(Path.of("demo-data"))) {
      List<String> texts = new ArrayList<>();
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        texts.add(Files.readString(file));
      }
      return texts;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The next file. One in a thousand has ten megabytes. */
  public String next() {
    if (random.nextInt(40) == 0) {
      return hostile();
    }
    String text = demos.get(random.nextInt(demos.size()));
    for (int n = random.nextInt(4); n >= 0; n--) {
      text = changed(text);
    }
    return text;
  }

  private String hostile() {
    return switch (random.nextInt(25)) {
      case 0 -> "#".repeat(BIG);
      case 1, 2 -> "";
      case 3, 4 -> " \n\t\n";
      case 5, 6 -> binary();
      case 7, 8 -> "[".repeat(random.nextInt(1, 50_000));
      case 9, 10 -> "{a: ".repeat(random.nextInt(1, 20_000));
      case 11, 12 -> deepBlocks(random.nextInt(1, 2_000));
      case 13, 14 -> laughs();
      case 15, 16 -> "curvestock: 1\n" + "sheets:\n  - {}\n".repeat(random.nextInt(1, 3_000));
      case 17, 18 -> "curvestock: 1\npieces:\n" + "  - x\n".repeat(random.nextInt(1, 20_000));
      case 19, 20 -> manyKeys(random.nextInt(1, 20_000));
      case 21 -> "curvestock: 1\ntitle: " + "é".repeat(random.nextInt(1, 900_000));
      case 22 -> "curvestock: " + "9".repeat(random.nextInt(1, 900_000));
      default -> "- ".repeat(random.nextInt(1, 50_000)) + "x";
    };
  }

  private String binary() {
    StringBuilder text = new StringBuilder();
    for (int n = random.nextInt(1, 2_000); n > 0; n--) {
      text.append((char) random.nextInt(0x10000));
    }
    return text.toString();
  }

  private static String deepBlocks(int depth) {
    StringBuilder text = new StringBuilder("curvestock: 1\n");
    for (int i = 0; i < depth; i++) {
      text.append(" ".repeat(i)).append("a:\n");
    }
    return text.toString();
  }

  private static String laughs() {
    StringBuilder text = new StringBuilder("curvestock: 1\nl0: &l0 [ha, ha]\n");
    for (int i = 1; i < 30; i++) {
      text.append("l%d: &l%d [*l%d, *l%d, *l%d]\n".formatted(i, i, i - 1, i - 1, i - 1));
    }
    return text.toString();
  }

  private static String manyKeys(int count) {
    StringBuilder text = new StringBuilder("curvestock: 1\n");
    for (int i = 0; i < count; i++) {
      text.append("key").append(i).append(": 1\n");
    }
    return text.toString();
  }

  private String changed(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.isEmpty()) {
      return text + "x";
    }
    int at = random.nextInt(lines.size());
    int other = random.nextInt(lines.size());
    switch (random.nextInt(16)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(other, lines.get(at));
      case 2 -> {
        String value = LineDamage.value(lines.get(at));
        lines.set(at, LineDamage.withValue(lines.get(at), LineDamage.value(lines.get(other))));
        lines.set(other, LineDamage.withValue(lines.get(other), value));
      }
      case 3, 4, 5 -> lines.set(at, LineDamage.withValue(lines.get(at), one(NUMBERS)));
      case 6, 7, 8 -> lines.set(at, LineDamage.withValue(lines.get(at), one(LENGTHS)));
      case 9, 10 -> lines.set(at, LineDamage.withValue(lines.get(at), one(YAML)));
      case 11 -> lines.set(at, " ".repeat(random.nextInt(1, 4)) + lines.get(at));
      case 12 -> lines.set(at, scaled(lines.get(at)));
      case 13 -> lines.add(at, one(YAML));
      case 14 -> {
        return text.isEmpty() ? "\u0001" : LineDamage.spoilt(text, random);
      }
      default -> {
        return text.substring(0, random.nextInt(text.length()));
      }
    }
    return String.join("\n", lines) + "\n";
  }

  /** The first number of the line made larger or smaller: often still a good job. */
  private String scaled(String line) {
    double factor = Math.pow(10, random.nextDouble() * 4 - 2);
    return java.util.regex.Pattern.compile("\\d+(\\.\\d+)?")
        .matcher(line)
        .replaceFirst(m -> String.valueOf(Math.rint(Double.parseDouble(m.group()) * factor)));
  }

  private String one(List<String> of) {
    return of.get(random.nextInt(of.size()));
  }
}

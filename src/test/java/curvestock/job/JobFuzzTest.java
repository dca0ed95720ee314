package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.fuzz.LineDamage;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whatever is done to a job file, the user gets a job or a list of places to mend. */
class JobFuzzTest {

  private static final int ROUNDS = 1500;

  private static final List<String> ODD_VALUES =
      List.of(
          "",
          "0",
          "-1",
          "NaN",
          "1e999",
          "010",
          "1:30",
          "0x1F",
          "no",
          "null",
          "~",
          "[]",
          "{}",
          "[1, 2]",
          "{a: 1}",
          "\"",
          "'",
          "&a x",
          "*a",
          "!!int 3",
          "| ",
          ">-",
          "#",
          "28",
          "28 in",
          "3 furlongs",
          "½",
          "1/0",
          "99999999999999999999",
          "2026-01-01",
          "4x8 ft",
          "x",
          "x x x",
          "in",
          "mm",
          "true",
          "90°",
          "\u202Eabc",
          "\uFFFF",
          "\u0000",
          "- - -",
          "? ",
          "%",
          "@",
          "`",
          "1 in: 2 in",
          "[[0, 0], [0, 0], [0, 0]]",
          "[[0 in, 0 in], [1 in, 0 in], [0 in, 1e9 in]]");

  /** A name may be "null" to the reader; to a validator it is no text. */
  private static final Pattern YAML_NULL = Pattern.compile(": (null|~)");

  private final SchemaJudge judge = new SchemaJudge();

  @Test
  void read_ofDamagedDemo_givesAJobOrLocatedProblems() throws Exception {
    long seed = 20260103;
    SplittableRandom random = new SplittableRandom(seed);
    List<String> demos = DemoData.files().stream().map(DemoData::text).toList();
    int jobs = 0;
    int refused = 0;
    for (int round = 0; round < ROUNDS; round++) {
      String text = demos.get(random.nextInt(demos.size()));
      for (int n = random.nextInt(3); n >= 0; n--) {
        text = damaged(text, random);
      }
      String context = "seed " + seed + ", round " + round + ":\n" + text;
      try {
        Job job = JobReader.read(text, "damaged.yaml");
        assertThat(job.demands()).as(context).isNotEmpty();
        if (!YAML_NULL.matcher(text).find()) {
          assertThat(judge.errors(text)).as("the schema refuses a good job, %s", context).isEmpty();
        }
        jobs++;
      } catch (JobException e) {
        assertLocated(e.problems(), text, context);
        refused++;
      } catch (RuntimeException e) {
        throw new AssertionError(context, e);
      }
    }
    assertThat(jobs).as("jobs read, seed %d", seed).isGreaterThan(ROUNDS / 20);
    assertThat(refused).as("jobs refused, seed %d", seed).isGreaterThan(ROUNDS / 3);
  }

  private static void assertLocated(List<Problem> problems, String text, String context) {
    long lines = text.chars().filter(c -> c == '\n' || c == '\r').count() + 1;
    assertThat(problems).as(context).isNotEmpty();
    for (Problem problem : problems) {
      assertThat(problem.line()).as(context).isBetween(1, (int) lines);
      assertThat(problem.column()).as(context).isPositive();
      assertThat(problem.message()).as(context).isNotBlank();
      assertThat(problem.toString().lines().count()).as("%s\n%s", problem, context).isEqualTo(1);
      assertThat(problem.toString()).as(context).doesNotContain("Exception", "java.", "Optional");
    }
  }

  private static String damaged(String text, SplittableRandom random) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.isEmpty()) {
      return text + "x";
    }
    int at = random.nextInt(lines.size());
    int other = random.nextInt(lines.size());
    switch (random.nextInt(9)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(other, lines.get(at));
      case 2 -> {
        String value = LineDamage.value(lines.get(at));
        lines.set(at, LineDamage.withValue(lines.get(at), LineDamage.value(lines.get(other))));
        lines.set(other, LineDamage.withValue(lines.get(other), value));
      }
      case 3, 4, 5 ->
          lines.set(
              at,
              LineDamage.withValue(
                  lines.get(at), ODD_VALUES.get(random.nextInt(ODD_VALUES.size()))));
      case 6 -> lines.set(at, " ".repeat(random.nextInt(1, 4)) + lines.get(at));
      case 7 -> {
        return LineDamage.spoilt(text, random);
      }
      default -> {
        return text.substring(0, random.nextInt(text.length()));
      }
    }
    return String.join("\n", lines) + "\n";
  }
}

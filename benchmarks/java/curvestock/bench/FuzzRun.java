package curvestock.bench;

import curvestock.check.Expectation;
import curvestock.drawing.SampleLayouts;
import curvestock.drawing.SheetDrawing;
import curvestock.fuzz.JobNoise;
import curvestock.fuzz.LengthNoise;
import curvestock.fuzz.Outcome;
import curvestock.fuzz.SvgNoise;
import curvestock.fuzz.Trial;
import curvestock.layout.Layout;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The long run of seeded noise: {@code FuzzRun [jobs] [drawings] [lengths] [plan every n-th job]
 * [seed]}. Prints what became of them and the longest time of one; writes every input that broke
 * the law into {@code target/fuzz/}. Exits with 1 if there was one.
 */
public final class FuzzRun {

  private static final Path FOUND = Path.of("target", "fuzz");

  /** Inputs that keep the machine this busy are kept for a look, but are no fault. */
  private static final long SLOW = 20_000_000_000L;

  private static int faults;

  private FuzzRun() {}

  public static void main(String[] args) throws IOException {
    Files.createDirectories(FOUND);
    int jobs = number(args, 0, 10_000);
    int every = number(args, 3, 20);
    long seed = number(args, 4, 1);
    JobNoise jobNoise = new JobNoise(seed);
    int[] round = {0};
    run(
        "jobs",
        jobs,
        jobNoise::next,
        text -> round[0]++ % every == 0 ? Trial.plan(text) : Trial.read(text));
    Layout layout = SampleLayouts.mixed();
    SvgNoise svgNoise = new SvgNoise(SheetDrawing.clean(layout), seed + 1);
    Expectation expectation = Expectation.of(layout);
    run("drawings", number(args, 1, 2_000), svgNoise::next, svg -> Trial.check(svg, expectation));
    run("lengths", number(args, 2, 1_000_000), new LengthNoise(seed + 2)::next, Trial::length);
    System.out.println(faults + " faults" + (faults == 0 ? "" : ", see " + FOUND));
    System.exit(faults == 0 ? 0 : 1);
  }

  private static int number(String[] args, int index, int otherwise) {
    return args.length > index ? Integer.parseInt(args[index]) : otherwise;
  }

  private static void run(
      String what, int rounds, Supplier<String> noise, Function<String, Outcome> trial) {
    Map<Outcome, Integer> counts = new EnumMap<>(Outcome.class);
    long longest = 0;
    for (int round = 0; round < rounds; round++) {
      String text = noise.get();
      long start = System.nanoTime();
      try {
        counts.merge(trial.apply(text), 1, Integer::sum);
      } catch (RuntimeException | AssertionError | StackOverflowError | OutOfMemoryError e) {
        faults++;
        keep(what + "-" + round, text, e);
      }
      long took = System.nanoTime() - start;
      longest = Math.max(longest, took);
      if (took > SLOW) {
        keep("slow-" + what + "-" + round, text, new Throwable("took " + took / 1_000_000 + " ms"));
      }
      if (round % 1000 == 999) {
        System.err.println(what + " " + (round + 1) + " " + counts);
      }
    }
    System.out.printf(
        Locale.ROOT, "%s: %d, %s, longest %.1f s%n", what, rounds, counts, longest / 1e9);
  }

  private static void keep(String name, String text, Throwable fault) {
    System.out.println(name + ": " + fault);
    if (!name.startsWith("slow")) {
      fault.printStackTrace();
    }
    try {
      Files.write(FOUND.resolve(name + ".txt"), text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

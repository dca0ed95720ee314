package curvestock.bench;

import curvestock.answer.Choices;
import curvestock.app.Workshop;
import curvestock.compare.CompareListener;
import curvestock.compare.Comparison;
import curvestock.compare.Question;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.packing.Packers;
import curvestock.report.CompareJson;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;

/**
 * What more cores are worth to a comparison: one and two threads measured, more simulated from the
 * run on one thread, whose stack is sampled. Writes {@code benchmarks/report-cores.md}.
 *
 * <p>The sizes of a comparison are planned side by side, a core each; what is left of the cores
 * helps searches, at most four to a search. All other stages follow one after another.
 */
public final class CoresReport {

  private static final int MILLISECONDS = 5;
  private static final int LANES = 4;
  private static final String SIDE_BY_SIDE = " of ";

  private CoresReport() {}

  public static void main(String[] args) throws Exception {
    Job job = Workshop.readJob(args.length == 0 ? Optional.empty() : Optional.of(Path.of(args[0])));
    Job quick = job.with(job.search().at(Effort.QUICK));
    run(quick, 2, new Trace());
    Trace trace = new Trace();
    Run one = run(quick, 1, trace);
    Run two = run(quick, 2, new Trace());
    Report report =
        new Report(
            Settings.REPORTS.resolve("report-cores.md"),
            Engine.program(),
            "More cores",
            "`compare` of the built-in job, effort quick, seed 1, without a cache");
    String text = markdown(one, two, trace);
    System.out.print(text);
    report.body(text);
    report.finish();
  }

  private record Run(double seconds, String answer) {}

  private static Run run(Job job, int threads, Trace trace)
      throws ExecutionException, InterruptedException {
    ForkJoinPool pool = new ForkJoinPool(threads);
    long start = System.nanoTime();
    Comparison found =
        pool.submit(
                () -> {
                  Thread sampler = trace.sampling(Thread.currentThread());
                  try {
                    return Workshop.compare(job, Question.PLAIN, trace, Packers.FORGETFUL);
                  } finally {
                    sampler.interrupt();
                  }
                })
            .get();
    double seconds = (System.nanoTime() - start) / 1e9;
    pool.shutdown();
    return new Run(seconds, CompareJson.of(Choices.of(found)));
  }

  /** By stage, or by size where sizes are planned side by side: whether each sample searched. */
  private static final class Trace implements CompareListener {
    private final Map<String, List<Boolean>> samples = new LinkedHashMap<>();
    private volatile String now = "start";

    @Override
    public void step(String what) {
      int colon = what.indexOf(": ");
      now = colon < 0 ? what : what.substring(0, colon);
    }

    Thread sampling(Thread worker) {
      Thread sampler =
          new Thread(
              () -> {
                try {
                  while (true) {
                    Thread.sleep(MILLISECONDS);
                    boolean searching = false;
                    for (StackTraceElement frame : worker.getStackTrace()) {
                      searching |= frame.getClassName().endsWith(".Stretches");
                    }
                    samples.computeIfAbsent(now, any -> new ArrayList<>()).add(searching);
                  }
                } catch (InterruptedException ended) {
                  Thread.currentThread().interrupt();
                }
              });
      sampler.setDaemon(true);
      sampler.start();
      return sampler;
    }

    /** Share of the samples that searched. */
    double searching() {
      long all = samples.values().stream().mapToLong(List::size).sum();
      long found =
          samples.values().stream()
              .mapToLong(part -> part.stream().filter(each -> each).count())
              .sum();
      return (double) found / Math.max(1, all);
    }

    /** Samples that pass with so many cores. */
    int simulated(int cores) {
      List<List<Boolean>> beside = new ArrayList<>();
      int ticks = 0;
      for (Map.Entry<String, List<Boolean>> part : samples.entrySet()) {
        if (part.getKey().contains(SIDE_BY_SIDE) && part.getKey().startsWith("segments of")) {
          beside.add(part.getValue());
        } else {
          ticks += ticks(List.of(part.getValue()), cores);
        }
      }
      return ticks + ticks(beside, cores);
    }

    /** Each task gets a core, in order; then those that search get what is left. */
    private static int ticks(List<List<Boolean>> tasks, int cores) {
      int[] done = new int[tasks.size()];
      int ticks = 0;
      while (true) {
        int free = cores;
        int[] given = new int[done.length];
        for (int lane = 0; lane < LANES; lane++) {
          for (int i = 0; i < done.length; i++) {
            boolean left = done[i] + given[i] < tasks.get(i).size();
            boolean more = given[i] == 0 || (left && tasks.get(i).get(done[i]));
            if (left && more && given[i] == lane && free > 0) {
              given[i]++;
              free--;
            }
          }
        }
        if (free == cores) {
          return ticks;
        }
        ticks++;
        for (int i = 0; i < done.length; i++) {
          done[i] += given[i];
        }
      }
    }
  }

  private static String markdown(Run one, Run two, Trace trace) {
    StringBuilder text = new StringBuilder();
    text.append("Wall seconds on one core over those on more, in one run.\n\n");
    text.append("| cores | speed-up measured | simulated |\n|--:|--:|--:|\n");
    double all = trace.simulated(1);
    for (int cores : new int[] {1, 2, 4, 8}) {
      String measured = cores == 1 ? "1.00" : cores == 2 ? of(one.seconds / two.seconds) : "";
      text.append(
          "| %s | %s | %s |\n".formatted(cores, measured, of(all / trace.simulated(cores))));
    }
    text.append("\nThe same answer from both runs: ");
    text.append(one.answer.equals(two.answer) ? "yes" : "NO").append(".\n\n");
    text.append("Part of the run on one core that is search: ");
    text.append("%s %%.\n".formatted(Math.round(100 * trace.searching())));
    return text.toString();
  }

  private static String of(double ratio) {
    return String.format(Locale.ROOT, "%.2f", ratio);
  }
}

package curvestock.app;

import curvestock.check.Expectation;
import curvestock.check.JobCheck;
import curvestock.check.JobReport;
import curvestock.files.FileProblem;
import curvestock.files.TextFiles;
import curvestock.job.Batch;
import curvestock.job.Job;
import curvestock.job.JobSource;
import curvestock.report.PlanFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds drawings and the job that they belong to, and has them judged together. */
final class CheckRun {

  private static final int MOST_DRAWING_BYTES = 20_000_000;
  private static final int MOST_PLAN_BYTES = 20_000_000;
  private static final String PLAN = "plan.json";
  private static final String SHEETS = "sheets";
  private static final List<String> TEST = List.of("test-cut", "test-flip");

  private final List<Path> drawings = new ArrayList<>();
  private final Map<Path, PlanFile> plans = new LinkedHashMap<>();

  /**
   * Looks for the drawings.
   *
   * @param paths drawings, or folders that hold them
   * @throws FileProblem if a folder cannot be read or holds no drawing
   */
  CheckRun(List<Path> paths) throws FileProblem {
    for (Path path : paths) {
      if (Files.isDirectory(path)) {
        drawings.addAll(in(path));
      } else {
        drawings.add(path);
      }
    }
  }

  /** The drawings of sheets in a result's folder, and its test cut; or all drawings of a folder. */
  private static List<Path> in(Path folder) throws FileProblem {
    List<Path> found = new ArrayList<>();
    Path sheets = folder.resolve(SHEETS);
    boolean isResult = Files.isDirectory(sheets);
    found.addAll(drawings(isResult ? sheets : folder));
    if (isResult) {
      drawings(folder).stream()
          .filter(file -> TEST.stream().anyMatch(file.getFileName().toString()::startsWith))
          .forEach(found::add);
    }
    if (found.isEmpty()) {
      throw new FileProblem(
          folder, "there are no drawings in this folder", "Name a folder with SVG or DXF files.");
    }
    return found;
  }

  private static List<Path> drawings(Path folder) throws FileProblem {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(
              file -> {
                String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
                return name.endsWith(".svg") || name.endsWith(".dxf");
              })
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new FileProblem(folder, "the folder cannot be read", "Check that you may read it.", e);
    }
  }

  /**
   * The job of the result that the drawings lie in.
   *
   * @throws FileProblem if a drawing lies in no result, or not all in the same
   * @throws curvestock.job.JobException if the job that the result carries cannot be read
   */
  Job jobBeside() throws FileProblem {
    Optional<Path> folder = Optional.empty();
    for (Path drawing : drawings) {
      Path own = resultAround(drawing);
      if (folder.isPresent() && !folder.get().equals(own)) {
        throw new FileProblem(
            drawing,
            "it belongs to a different plan than " + drawings.get(0),
            "Check the drawings of one plan at a time.");
      }
      folder = Optional.of(own);
    }
    Path plan = folder.orElseThrow().resolve(PLAN);
    List<JobSource> sources = plans.get(folder.orElseThrow()).jobs();
    if (sources.isEmpty()) {
      throw new FileProblem(
          plan, "it does not say which job it was made for", "Name the job: --job JOB.");
    }
    List<Job> jobs = new ArrayList<>();
    for (JobSource source : sources) {
      jobs.add(source.read("the job in " + plan));
    }
    return jobs.size() == 1 ? jobs.get(0) : Batch.of(jobs).together();
  }

  /** The folder of a drawing that has a plan in it, or the one around that. */
  private Path resultAround(Path drawing) throws FileProblem {
    Path folder = drawing.toAbsolutePath().normalize().getParent();
    for (int up = 0; up < 2 && folder != null; up++) {
      if (plans.containsKey(folder)) {
        return folder;
      }
      Path plan = folder.resolve(PLAN);
      if (Files.isRegularFile(plan)) {
        Optional<PlanFile> read = PlanFile.read(TextFiles.read(plan, MOST_PLAN_BYTES));
        if (read.isEmpty()) {
          throw new FileProblem(
              plan, "Curvestock did not write this plan", "Name the job: --job JOB.");
        }
        plans.put(folder, read.get());
        return folder;
      }
      folder = folder.getParent();
    }
    throw new FileProblem(
        drawing,
        "there is no " + PLAN + " beside it that says what job it belongs to",
        "Name the job: --job JOB.");
  }

  /** Judges all drawings by the job; those that cannot be read are named in the report. */
  JobReport judge(Job job, boolean partial) {
    JobCheck check =
        new JobCheck(
            MachineFiles.sheets(job),
            MachineFiles.testCutExpected(job),
            job.demands(),
            job.failure());
    for (Path drawing : drawings) {
      String name = drawing.toString();
      try {
        check.add(name, TextFiles.read(drawing, MOST_DRAWING_BYTES), exact(drawing, job));
      } catch (FileProblem e) {
        check.addUnreadable(name, e.getMessage());
      }
    }
    return check.report(partial);
  }

  /** What the plan beside a drawing says is on it, if the plan's own job is the judge. */
  private Optional<Expectation> exact(Path drawing, Job job) {
    Path file = drawing.toAbsolutePath().normalize();
    for (Map.Entry<Path, PlanFile> plan : plans.entrySet()) {
      if (file.startsWith(plan.getKey())) {
        String name = plan.getKey().relativize(file).toString().replace('\\', '/');
        return Optional.ofNullable(plan.getValue().sheets().get(name))
            .flatMap(
                on ->
                    MachineFiles.sheets(job).stream()
                        .filter(expected -> expected.sheet().name().equals(on.sheet()))
                        .findFirst()
                        .map(expected -> expected.exactly(on.pieces()).numbered(on.numbers())));
      }
    }
    return Optional.empty();
  }
}

package curvestock.cli;

import curvestock.answer.Choices;
import curvestock.answer.Figures;
import curvestock.app.Workshop;
import curvestock.compare.BatchComparison;
import curvestock.compare.Comparison;
import curvestock.compare.Question;
import curvestock.compare.SizeLook;
import curvestock.files.FileProblem;
import curvestock.job.Batch;
import curvestock.job.Job;
import curvestock.plan.Infeasible;
import curvestock.report.BatchPaper;
import curvestock.report.ComparePaper;
import curvestock.units.Angle;
import java.io.PrintWriter;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Compares segment sizes for a job's helix. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description = {
      "Compares segment sizes by sheets, cost and joints, and recommends one.",
      "Name several job files, and their pieces share the same sheets.",
      "Without a job file, it compares sizes for the built-in example. (Its figures are invented.)"
    })
final class CompareCommand implements Callable<Integer>, Faults.Debuggable {

  private static final String CHART = "charts/choices.png";

  private static final Pattern FRACTION = Pattern.compile("\\s*(\\d{1,3})/(\\d{1,3})\\s*");

  @Spec private CommandSpec spec;

  @Mixin private JobOptions options;

  @ArgGroup private Sizes sizes = new Sizes();

  /** One way or the other to say which segments. */
  private static final class Sizes {
    @Option(
        names = "--angles",
        split = ",",
        paramLabel = "DEGREES",
        description = "Segment angles to compare, such as 60,72,90.")
    private List<String> angles = List.of();

    @Option(
        names = "--fractions",
        split = ",",
        paramLabel = "PART",
        description =
            "Parts of a turn to compare, such as 1/3,1/4. Default: 1/2, 1/3, 1/4, 1/5, 1/6, 1/8"
                + " and the size in the job.")
    private List<String> fractions = List.of();
  }

  @Option(
      names = "--scan",
      description =
          "Also give a quick count of the pieces per sheet for every angle from 30 to 180 degrees.")
  private boolean scan;

  @Option(
      names = "--with-sheets",
      paramLabel = "N",
      description =
          "Also say how many turns you get from N sheets plus the sheets you have on hand.")
  private Integer sheets;

  @Override
  public boolean debug() {
    return options.debug();
  }

  @Override
  public Integer call() throws Exception {
    Question question = question();
    List<Job> jobs = options.jobs();
    if (jobs.size() == 1) {
      Comparison comparison = work(jobs.get(0), question);
      Choices choices = Choices.of(comparison);
      print(
          options.details() ? ComparePaper.text(choices) : ComparePaper.brief(choices),
          CHART,
          "glue and screws, what would change the answer, and why fewer sheets will not do");
    } else {
      print(BatchPaper.text(work(Batch.of(jobs), question)), "compare.txt", "");
    }
    return options.end(0);
  }

  private Comparison work(Job job, Question question) throws Infeasible, FileProblem {
    try (Terminal terminal = new Terminal(options.quiet())) {
      Comparison comparison =
          Workshop.compare(
              job, question, new Progress(terminal, Figures.of(job)), options.packers());
      options.publish(() -> Workshop.result(comparison), terminal);
      return comparison;
    }
  }

  private BatchComparison work(Batch batch, Question question) throws Infeasible, FileProblem {
    if (question.scan() || question.sheetsOnHand().isPresent()) {
      throw new ParameterException(
          spec.commandLine(), "--scan and --with-sheets are for one job, not for several together");
    }
    try (Terminal terminal = new Terminal(options.quiet())) {
      BatchComparison found =
          Workshop.compare(
              batch, question, new Progress(terminal, Figures.PLAIN), options.packers());
      options.publish(() -> Workshop.result(found), terminal);
      return found;
    }
  }

  private Question question() {
    try {
      List<Angle> angles =
          sizes.angles.isEmpty()
              ? each(sizes.fractions, CompareCommand::part)
              : each(sizes.angles, Angle::parse);
      OptionalInt onHand = sheets == null ? OptionalInt.empty() : OptionalInt.of(sheets);
      Question question = new Question(angles, scan, onHand);
      // What a summary has no room for takes a sixth of the time.
      return options.details() || options.out().isPresent() ? question : question.withoutChanges();
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage(), e);
    }
  }

  private static List<Angle> each(List<String> texts, Function<String, Angle> reader) {
    return texts.stream().map(reader).toList();
  }

  private static Angle part(String text) {
    Matcher matcher = FRACTION.matcher(text);
    if (!matcher.matches() || Integer.parseInt(matcher.group(2)) == 0) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is not a part of a turn; write a fraction such as 1/4");
    }
    return Angle.ofDegrees(
        360.0 * Integer.parseInt(matcher.group(1)) / Integer.parseInt(matcher.group(2)));
  }

  private void print(List<String> answer, String lookAt, String more) {
    options.print(answer, "Written", lookAt, "the table, the data and the charts", more);
  }

  /** The terminal's progress, and the first numbers as soon as they are known. */
  private final class Progress extends ComparisonProgress {

    private final Figures figures;

    Progress(Terminal terminal, Figures figures) {
      super(terminal);
      this.figures = figures;
    }

    @Override
    public void firstLook(List<SizeLook> looks) {
      if (!options.quiet()) {
        PrintWriter printer = spec.commandLine().getErr();
        printer.println();
        ComparePaper.firstLook(looks, figures).forEach(printer::println);
        printer.println();
        printer.flush();
      }
    }
  }
}

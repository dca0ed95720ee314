package curvestock.app;

import curvestock.answer.Answer;
import curvestock.answer.Building;
import curvestock.answer.Choices;
import curvestock.check.CheckException;
import curvestock.check.CheckReport;
import curvestock.check.Expectation;
import curvestock.check.Finding;
import curvestock.check.LayoutCheck;
import curvestock.compare.BatchComparer;
import curvestock.compare.BatchComparison;
import curvestock.compare.CompareListener;
import curvestock.compare.Comparer;
import curvestock.compare.Comparison;
import curvestock.compare.OwnPlan;
import curvestock.compare.Question;
import curvestock.drawing.HelixTitle;
import curvestock.files.FileProblem;
import curvestock.files.Inputs;
import curvestock.files.PackingCache;
import curvestock.files.ResultFolder;
import curvestock.helix.HelixOrder;
import curvestock.job.Batch;
import curvestock.job.DefaultJob;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.job.StockFiles;
import curvestock.layout.LaidSheet;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.PackedStore;
import curvestock.packing.Packers;
import curvestock.piece.Demand;
import curvestock.plan.BatchPlan;
import curvestock.plan.Glance;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.plan.Planner;
import curvestock.printing.ReportPdf;
import curvestock.printing.ReportPictures;
import curvestock.printing.SpareFonts;
import curvestock.purchase.Purchase;
import curvestock.report.BatchPaper;
import curvestock.report.CompareCharts;
import curvestock.report.CompareJson;
import curvestock.report.ComparePaper;
import curvestock.report.HelixJson;
import curvestock.report.HelixPaper;
import curvestock.report.PacketGuide;
import curvestock.report.PlanJson;
import curvestock.report.PlanPaper;
import curvestock.report.ReportHtml;
import curvestock.report.ReportPart;
import curvestock.report.ShopPaper;
import curvestock.report.StockYaml;
import curvestock.report.TableCsv;
import curvestock.sheet.SheetStock;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What Curvestock can do, for the command line, the page and anybody's program. */
public final class Workshop {

  private static final int CHART_WIDTH = 1350;
  private static final SpareFonts FONTS = JobFiles.FONTS;
  private static final String SVG = ".svg";

  private Workshop() {}

  /**
   * The job in the file, or the embedded default job if no file is given.
   *
   * @throws FileProblem if the file cannot be read
   * @throws curvestock.job.JobException if it is not a right job; holds all problems
   */
  public static Job readJob(Optional<Path> file) throws FileProblem {
    return readJob(file, new Inputs());
  }

  /**
   * The same.
   *
   * @param inputs remembers all files that are read
   */
  public static Job readJob(Optional<Path> file, Inputs inputs) throws FileProblem {
    if (file.isEmpty()) {
      return DefaultJob.read();
    }
    return JobReader.read(
        inputs.read(file.get()), file.get().toString(), path -> beside(file.get(), path, inputs));
  }

  /** A stock file is meant from the job's own folder. */
  private static StockFiles.Found beside(Path job, String path, Inputs inputs) {
    try {
      return StockFiles.Found.text(inputs.read(job.resolveSibling(path)));
    } catch (FileProblem | InvalidPathException e) {
      return StockFiles.Found.problem("cannot be read: " + e.getMessage());
    }
  }

  /**
   * The job in the text.
   *
   * @param name what to call the text in messages
   * @throws curvestock.job.JobException if it is not a right job; holds all problems
   */
  public static Job readJob(String text, String name) {
    return JobReader.read(text, name);
  }

  /**
   * What can be said of the job at once, before anything is planned; nothing if no regular pattern
   * fits.
   */
  public static Optional<Glance> glance(Job job) {
    return Glance.at(job);
  }

  /**
   * Plans the job.
   *
   * @throws Infeasible if it cannot be cut from its sheets
   */
  public static Plan plan(Job job, PlanListener listener) throws Infeasible {
    return plan(job, listener, Packers.FORGETFUL);
  }

  /** The same, with packers that may remember what was packed before: see {@link #remembering}. */
  public static Plan plan(Job job, PlanListener listener, Packers packers) throws Infeasible {
    Job marked = job.marked();
    if (job.laid().isEmpty()) {
      return new Planner(marked, listener, packers).plan();
    }
    Plan first = new Planner(marked, ATONCE, packers).plan();
    Plan basis =
        new Plan(
            marked,
            first.purchase(),
            first.layouts(),
            first.capacities(),
            first.carriedWhole(),
            first.obstacles(),
            false);
    return laid(basis, marked.laid());
  }

  /** Who has laid his sheets himself waits for no search. */
  private static final PlanListener ATONCE =
      new PlanListener() {
        @Override
        public boolean stopped() {
          return true;
        }
      };

  /** The plan with sheets laid by hand, and the numbers on their pieces. */
  public static Plan laid(Plan plan, List<LaidSheet> sheets) {
    List<LaidSheet> used = sheets.stream().filter(each -> !each.pieces().isEmpty()).toList();
    return byHand(plan, used.stream().map(each -> each.layout(plan.job().cutting())).toList())
        .numbered(used.stream().map(LaidSheet::numbers).toList());
  }

  /**
   * Packers that keep what they pack in the user's cache folder and find it there again. Answers
   * are the same with and without.
   */
  public static Packers remembering() {
    return new Packers(PackingCache.ofUser().orElse(PackedStore.NONE));
  }

  /**
   * The plan with layouts that somebody changed by hand.
   *
   * @param layouts all sheets of the job, with exactly the pieces wanted in all
   * @throws IllegalArgumentException if pieces are missing or too many, or more sheets are used
   *     than can be had; whether the gaps hold is judged when the result is made
   */
  public static Plan byHand(Plan plan, List<Layout> layouts) {
    Purchase before = plan.purchase();
    for (Demand demand : plan.job().demands()) {
      int held = layouts.stream().mapToInt(layout -> layout.count(demand.piece())).sum();
      if (held != demand.count()) {
        throw new IllegalArgumentException(
            "the sheets must hold %s of %s, but hold %s"
                .formatted(demand.count(), demand.piece().id(), held));
      }
    }
    if (sheets(layouts).equals(sheets(plan.layouts()))) {
      Purchase same = new Purchase(before.instance(), layouts, before.lines(), before.bound());
      return plan.with(same, layouts);
    }
    for (SheetStock sheet : plan.job().sheets()) {
      long used = layouts.stream().filter(layout -> layout.sheet().equals(sheet)).count();
      if (sheet.available().isPresent() && used > sheet.available().getAsInt()) {
        throw new IllegalArgumentException(
            "only %s of %s can be had, but %s are used"
                .formatted(sheet.available().getAsInt(), sheet.name(), used));
      }
    }
    Purchase purchase = Purchase.of(before.instance(), layouts, before.bound());
    return plan.with(purchase, layouts);
  }

  /**
   * Improves sheets round the pieces that somebody has pinned; their other pieces, and those of
   * sheets without a pin, may be moved.
   *
   * @return all sheets that are still needed
   * @throws Infeasible if a piece finds room nowhere
   * @throws curvestock.packing.PinnedConflictException if pinned pieces break a rule among
   *     themselves
   */
  public static List<LaidByHand> improve(Job job, List<LaidByHand> sheets, PlanListener listener)
      throws Infeasible {
    return new RoundPins(job, sheets, listener).improved();
  }

  /** Names of the sheets under the layouts, sorted. */
  private static List<String> sheets(List<Layout> layouts) {
    return layouts.stream().map(layout -> layout.sheet().name()).sorted().toList();
  }

  /**
   * Draws the plan, checks every drawing as it will be written, and collects the files of the
   * result.
   *
   * @throws WrongLayoutException if a drawing fails its check
   */
  public static ResultFolder result(Plan plan, PlanListener listener) {
    return result(plan, Answer.of(plan), Optional.empty(), listener);
  }

  /**
   * The same from the plan's answer, where that is known already.
   *
   * @param begun files of the job that were begun before it was planned
   */
  public static ResultFolder result(
      Plan plan, Answer answer, Optional<JobFiles> begun, PlanListener listener) {
    return told(plan, answer)
        .addAll(PlanFiles.sheets(plan, plan.labels(), answer, listener))
        .addAll(JobFiles.of(plan.job(), false, begun));
  }

  /** What says the answer itself, in words and data. */
  private static ResultFolder told(Plan plan, Answer answer) {
    ResultFolder folder = new ResultFolder();
    folder.add("plan.json", PlanJson.of(plan, answer));
    folder.add("summary.txt", text(PlanPaper.text(plan.job(), answer)));
    folder.add("remnants.yaml", StockYaml.of(plan));
    if (answer.building().isPresent()) {
      addHelixTables(folder, "", answer);
    }
    return folder;
  }

  private static String text(List<String> lines) {
    return String.join("\n", lines) + "\n";
  }

  /**
   * Plans several jobs together.
   *
   * @throws Infeasible if they cannot be cut from their sheets
   */
  public static BatchPlan plan(Batch batch, PlanListener listener, Packers packers)
      throws Infeasible {
    return new BatchPlan(batch, plan(batch.together(), listener, packers));
  }

  /**
   * Draws and checks the sheets of several jobs, as for one; the helix of each job in a folder of
   * its letter.
   *
   * @throws WrongLayoutException if a drawing fails its check
   */
  public static ResultFolder result(BatchPlan batch, PlanListener listener) {
    return result(batch, Answer.of(batch.plan()), listener);
  }

  /** The same from the answer of their plan, where that is known already. */
  public static ResultFolder result(BatchPlan batch, Answer answer, PlanListener listener) {
    ResultFolder folder = new ResultFolder();
    folder.add("plan.json", PlanJson.of(batch, answer));
    folder.add("summary.txt", text(BatchPaper.text(batch, answer)));
    for (Batch.Member member : batch.batch().members()) {
      Job job = member.job();
      job.structure()
          .ifPresent(
              order ->
                  addHelix(
                      folder,
                      "job-" + member.tag() + "/",
                      Answer.ofHelix(job, order, Optional.empty(), false)));
    }
    folder.addAll(PlanFiles.sheets(batch.plan(), batch.labels(), answer, listener));
    MachineFiles.addTestCut(folder, batch.plan().job());
    return folder;
  }

  /**
   * Judges and lays out the job's whole helix.
   *
   * @param withSheets whether to plan the sheets too, so that their price is known; sheets that
   *     cannot be planned are left out
   * @throws IllegalArgumentException if the job asks for no whole helix
   */
  public static Answer helix(Job job, boolean withSheets, PlanListener listener) {
    return helix(job, withSheets, listener, Packers.FORGETFUL);
  }

  /** The same with packers that may remember what was packed before. */
  public static Answer helix(Job job, boolean withSheets, PlanListener listener, Packers packers) {
    HelixOrder order =
        job.structure()
            .orElseThrow(() -> new IllegalArgumentException("the job must ask for a whole helix"));
    if (!withSheets) {
      return Answer.ofHelix(job, order, Optional.empty(), true);
    }
    try {
      return Answer.ofHelix(job, order, Optional.of(priced(job, listener, packers)), true);
    } catch (Infeasible e) {
      return Answer.ofHelix(job, order, Optional.empty(), true)
          .unfit(e.getMessage().lines().toList());
    }
  }

  /** A plan for what its sheets cost: no remnant hangs on it. */
  private static Plan priced(Job job, PlanListener listener, Packers packers) throws Infeasible {
    return job.laid().isEmpty()
        ? new Planner(job.marked(), listener, packers).planRoughly()
        : plan(job, listener, packers);
  }

  /** The files of a helix: summary, tables, data, drawings. */
  public static ResultFolder helixResult(Answer answer) {
    ResultFolder folder = new ResultFolder();
    addHelix(folder, "", answer);
    return folder;
  }

  private static void addHelix(ResultFolder folder, String in, Answer answer) {
    addHelixTables(folder, in, answer);
    JobFiles.drawHelix(
        folder,
        in,
        answer.building().orElseThrow().order(),
        new HelixTitle(
            answer.heading().title(), answer.figures().style(), answer.heading().invented()));
  }

  private static void addHelixTables(ResultFolder folder, String in, Answer answer) {
    Building helix = answer.building().orElseThrow();
    folder.add(in + "helix.txt", text(HelixPaper.withLists(answer)));
    folder.add(in + "helix.json", HelixJson.of(answer));
    folder.add(in + "schedule.csv", TableCsv.of(helix.schedule(), answer.figures()));
    folder.add(in + "supports.csv", TableCsv.of(helix.supports(), answer.figures()));
    folder.add(in + "shopping.csv", TableCsv.of(answer.shopping(), answer.figures()));
    folder.add(in + "joints.csv", TableCsv.of(helix.joints(), answer.figures()));
    folder.add(in + "cutting-list.csv", TableCsv.of(helix.cuttingList(), answer.figures()));
  }

  /** Reads a drawing back as it will be written, and refuses to go on if it is not right. */
  static void requireRight(String file, String drawing, Expectation expectation) {
    requireRight(file, () -> LayoutCheck.check(drawing, expectation));
  }

  /** A check of a drawing. */
  interface Judging {
    CheckReport report() throws CheckException;
  }

  /** Refuses to go on if a drawing is not right. */
  static void requireRight(String file, Judging judging) {
    requireRight(file, List.of(), judging);
  }

  /**
   * The same with pieces that are known to come loose and are named as such: of these alone it is
   * no fault.
   *
   * @param loose their numbers
   */
  static void requireRight(String file, List<Integer> loose, Judging judging) {
    String faults;
    try {
      CheckReport report = judging.report();
      faults =
          report.findings().stream()
              .filter(finding -> !isNamedLoose(finding, loose))
              .map(finding -> "  " + finding.message())
              .collect(Collectors.joining("\n"));
    } catch (CheckException e) {
      faults = e.getMessage();
    }
    if (!faults.isEmpty()) {
      throw new WrongLayoutException(file, faults);
    }
  }

  /** An SVG calls a piece {@code piece-3}, a DXF, whose outlines bear no names, {@code piece 3}. */
  private static boolean isNamedLoose(Finding finding, List<Integer> loose) {
    List<String> named =
        loose.stream().flatMap(n -> Stream.of("piece-" + n, "piece " + n)).toList();
    return finding.kind() == Finding.Kind.LOOSE
        && !finding.paths().isEmpty()
        && named.containsAll(finding.paths());
  }

  /**
   * Compares segment sizes for the job's helix.
   *
   * @throws Infeasible if it has no helix, or no segment compared can be cut from its sheets
   */
  public static Comparison compare(Job job, Question question, CompareListener listener)
      throws Infeasible {
    return compare(job, question, listener, Packers.FORGETFUL);
  }

  /**
   * The same, with packers that may remember what was packed before. The job's own size is planned
   * as {@link #plan} does, so that the comparison and a plan agree about it.
   */
  public static Comparison compare(
      Job job, Question question, CompareListener listener, Packers packers) throws Infeasible {
    return compare(job, question, listener, packers, heard -> plan(job, heard, packers));
  }

  /**
   * Compares other sizes quickly with a plan that is made already.
   *
   * @throws Infeasible if no segment compared can be cut from the job's sheets
   */
  public static Comparison compare(Plan plan, Question question, CompareListener listener)
      throws Infeasible {
    Job hasty = plan.job().with(plan.job().search().at(Effort.QUICK));
    return compare(hasty, question, listener, Packers.FORGETFUL, heard -> plan);
  }

  private static Comparison compare(
      Job job, Question question, CompareListener listener, Packers packers, OwnPlan own)
      throws Infeasible {
    if (job.helix().isEmpty() && job.structure().isEmpty()) {
      throw new Infeasible(
          List.of("This job has no `helix:` block, so there are no segment sizes to compare."));
    }
    return new Comparer(job, question, listener, packers, Optional.of(own)).compare();
  }

  /**
   * Compares segment sizes for several jobs together.
   *
   * @throws Infeasible if a job cannot be cut in any of them, or none has a helix
   */
  public static BatchComparison compare(
      Batch batch, Question question, CompareListener listener, Packers packers) throws Infeasible {
    return new BatchComparer(batch, question, listener, packers).compare();
  }

  /** The comparison of several jobs as text, and the data of each job compared by itself. */
  public static ResultFolder result(BatchComparison found) {
    ResultFolder folder = new ResultFolder();
    folder.add("compare.txt", text(BatchPaper.text(found)));
    for (int i = 0; i < found.apart().size(); i++) {
      String name = "job-" + found.batch().members().get(i).tag() + "/compare.json";
      found.apart().get(i).ifPresent(alone -> folder.add(name, CompareJson.of(Choices.of(alone))));
    }
    BatchPlan best = found.rows().get(found.best()).batch();
    folder.add("plan.json", PlanJson.of(best, Answer.of(best.plan())));
    return folder;
  }

  /** The comparison as text, data and charts. */
  public static ResultFolder result(Comparison comparison) {
    ResultFolder folder = new ResultFolder();
    addComparison(folder, Choices.of(comparison));
    return folder;
  }

  private static void addComparison(ResultFolder folder, Choices choices) {
    Comparison comparison = choices.comparison();
    folder.add("compare.txt", text(ComparePaper.text(choices)));
    folder.add("compare.json", CompareJson.of(choices));
    JobFiles.draw(folder, "charts/choices", CompareCharts.choices(comparison), CHART_WIDTH);
    comparison
        .scan()
        .ifPresent(
            scan ->
                JobFiles.draw(
                    folder, "charts/angles", CompareCharts.angles(comparison, scan), CHART_WIDTH));
  }

  /** The archive in a packet that holds all its other files. */
  public static final String ARCHIVE = "packet.zip";

  private static final String ARCHIVED_FOLDER = "curvestock-packet";

  /**
   * Everything that a shop needs to cut and build the job: the result of the plan, the comparison
   * if there is one, and a guide that says which file is for what.
   *
   * @throws WrongLayoutException if a drawing fails its check
   */
  public static ResultFolder packet(Plan plan, Optional<Comparison> comparison) {
    Answer answer = Answer.of(plan);
    return packet(
        plan,
        comparison.map(answer::compared).orElse(answer),
        Optional.empty(),
        begin(plan, answer));
  }

  /**
   * Begins to draw and check the sheets of a plan, and the papers that go by them, beside what the
   * caller does next.
   */
  public static Begun begin(Plan plan, Answer answer) {
    return Begun.of(
        "files of the plan",
        () ->
            PlanFiles.sheets(plan, plan.labels(), answer, PlanListener.NONE)
                .addAll(PlanFiles.papers(plan, answer)));
  }

  /**
   * The same from the plan's answer, where that is known already.
   *
   * @param ofJob files of the job that were begun before it was planned
   * @param ofPlan files of the plan that were begun when it was made
   */
  public static ResultFolder packet(
      Plan plan, Answer answer, Optional<JobFiles> ofJob, Begun ofPlan) {
    ResultFolder folder = told(plan, answer).addAll(JobFiles.of(plan.job(), true, ofJob));
    folder.addAll(ofPlan.whole());
    answer.choices().ifPresent(choices -> addComparison(folder, choices));
    addReport(folder, plan, answer);
    folder.add("README.txt", PacketGuide.of(plan.job(), folder.paths(), unprintable(plan.job())));
    return folder;
  }

  /**
   * Letters of the job's title and names that no font of the program or of this machine can print,
   * in a sentence; nothing if there are none.
   */
  public static Optional<String> unprintable(Job job) {
    List<String> words = new ArrayList<>(List.of(job.title()));
    job.demands().forEach(demand -> words.add(demand.piece().id() + demand.piece().name()));
    job.boards().forEach(sheet -> words.add(sheet.name()));
    return ReportPdf.unprintable(String.join("", words), FONTS);
  }

  /** The packet's folder with all of it once more as an archive ({@value #ARCHIVE}). */
  public static ResultFolder archived(ResultFolder packet) {
    return new ResultFolder().addAll(packet).add(ARCHIVE, () -> packet.zip(ARCHIVED_FOLDER));
  }

  private static void addReport(ResultFolder folder, Plan plan, Answer answer) {
    Job job = plan.job();
    List<ReportPart> parts = new ArrayList<>(ShopPaper.of(job, answer));
    unprintable(job).ifPresent(words -> parts.add(0, new ReportPart.Notice(words)));
    folder.add(
        "report.pdf",
        () ->
            ReportPdf.of(
                answer.heading(), parts, ReportPictures.of(plan, answer), job.paper(), FONTS));
    Map<String, String> drawings = new TreeMap<>();
    folder
        .contents()
        .forEach(
            (path, bytes) -> {
              if (path.endsWith(SVG)) {
                String data = Base64.getEncoder().encodeToString(bytes);
                drawings.put(stem(path, SVG), "data:image/svg+xml;base64," + data);
              }
            });
    folder.add("report.html", ReportHtml.of(answer.heading(), parts, drawings));
  }

  private static String stem(String path, String ending) {
    return path.substring(0, path.length() - ending.length());
  }

  /**
   * Judges drawings, SVG or DXF, by the job: shapes, gaps, margin, defects, grain, marks, and
   * whether those of one kind hold exactly the pieces of the job. Each may be of any sheet of the
   * job, or its test cut.
   *
   * @param paths of drawings, or of folders that hold them
   * @param job to judge by; empty for the one that the plan beside them carries
   * @param partial whether pieces may be missing, because only some sheets are given
   * @throws FileProblem if no drawing is there, or no job is known
   * @throws curvestock.job.JobException if the job that lies beside them cannot be read
   */
  public static CheckedDrawings check(List<Path> paths, Optional<Job> job, boolean partial)
      throws FileProblem {
    CheckRun run = new CheckRun(paths);
    Job judge = job.isPresent() ? job.get() : run.jobBeside();
    return new CheckedDrawings(judge, run.judge(judge, partial));
  }
}

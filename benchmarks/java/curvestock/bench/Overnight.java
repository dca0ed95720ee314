package curvestock.bench;

import curvestock.bound.Bound;
import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packed;
import curvestock.packing.PackedStore;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.packing.SearchSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Keeps searching the chosen cases at thorough effort, seed by seed, each from the best layout so
 * far, and keeps what is better: in {@code benchmarks/data/nights.csv}, from where the next run
 * goes on, and, if of one kind of arc, in the atlas. Writes {@code benchmarks/report-overnight.md}.
 *
 * <p>The case with the fewest seeds tried is next, so that all come on alike.
 */
public final class Overnight {

  private static final Path TABLE = Settings.DATA.resolve("nights.csv");
  private static final String CELL = ",";

  private final long budget;
  private final Report report;
  private final Map<String, Night> nights = new LinkedHashMap<>();
  private double spent;

  private Overnight(long budget) throws IOException {
    this.budget = budget;
    this.report =
        new Report(
            Settings.REPORTS.resolve("report-overnight.md"),
            "What a night of searching bettered",
            "effort thorough with "
                + budget
                + " pair tests a seed, seeds from 1, places in `data/nights.csv`");
  }

  /**
   * @param arguments pairs of pieces to test for each seed (thorough effort: 400000000); pattern of
   *     the cases' names; most processor seconds
   */
  public static void main(String[] arguments) throws IOException {
    Overnight overnight = new Overnight(Long.parseLong(arguments[0]));
    Pattern only = Pattern.compile(arguments[1]);
    List<BenchCase> cases =
        CaseTable.read(Settings.DATA.resolve("cases.csv")).stream()
            .filter(c -> only.matcher(c.name()).matches())
            .toList();
    overnight.read();
    overnight.run(cases, Double.parseDouble(arguments[2]));
  }

  private void run(List<BenchCase> cases, double seconds) throws IOException {
    double start = ProcessorTime.seconds();
    for (BenchCase c : cases) {
      if (!nights.containsKey(c.name())) {
        nights.put(c.name(), begun(c));
      }
    }
    Optional<Night> next = next(cases);
    while (next.isPresent() && spent < seconds) {
      Night night = next.get();
      Night after = tried(night);
      nights.put(night.which().name(), after);
      boolean kept = after.value() > night.value() && keptInAtlas(after);
      spent = ProcessorTime.seconds() - start;
      System.out.printf(
          Locale.ROOT,
          "%s seed %d: %.0f, before %.0f%s; %.0f s%n",
          night.which().name(),
          after.seed(),
          after.value(),
          night.value(),
          kept ? ", in the atlas" : "",
          spent);
      write();
      next = next(cases);
    }
    write();
    report.finish();
  }

  /** The case with the fewest seeds tried that is not proven best; the first of several. */
  private Optional<Night> next(List<BenchCase> cases) {
    return cases.stream()
        .map(c -> nights.get(c.name()))
        .filter(night -> night.value() < limit(night.which()))
        .min(java.util.Comparator.comparingLong(Night::seed));
  }

  private static double limit(BenchCase c) {
    return c.isMixed()
        ? c.wanted().stream().mapToDouble(d -> d.count() * d.piece().shape().area()).sum() - 0.5
        : Bound.quick(c.piece(), c.sheet(), c.cutting()).count();
  }

  private static Night begun(BenchCase c) {
    Packer packer = packer(c, new SearchSettings(1, Effort.QUICK));
    Layout layout =
        c.isMixed()
            ? packer.fill(c.wanted(), Control.NONE).layout()
            : packer.most(c.piece(), (int) limit(c), Control.NONE).layout();
    return new Night(c, Night.value(c, layout), 0, 0, layout);
  }

  private static Packer packer(BenchCase c, SearchSettings settings) {
    return new Packers(PackedStore.NONE).of(c.sheet(), c.cutting(), settings);
  }

  /** After one seed more; what fails the second judgement does not count. */
  private Night tried(Night night) {
    BenchCase c = night.which();
    long seed = night.seed() + 1;
    Packer packer = packer(c, new SearchSettings(seed, Effort.THOROUGH));
    Layout best = night.layout();
    if (c.isMixed()) {
      best = packer.fill(c.wanted(), Control.NONE).layout();
    } else {
      Optional<Packed> found = Optional.of(new Packed(best, "search"));
      while (found.isPresent() && best.placements().size() < limit(c)) {
        found = packer.oneMore(c.piece(), found.get(), budget, Control.NONE);
        best = found.map(Packed::layout).orElse(best);
      }
    }
    boolean right = LayoutJudge.accepts(best);
    return night.after(seed, budget, right ? best : night.layout());
  }

  private boolean keptInAtlas(Night night) throws IOException {
    if (night.which().isMixed()) {
      return false;
    }
    AtlasTable table = new AtlasTable(new SearchSettings(night.seed(), Effort.QUICK), budget / 8);
    boolean kept = table.keep(night.which().piece(), night.layout());
    if (kept) {
      table.save();
    }
    return kept;
  }

  private void read() throws IOException {
    if (!Files.exists(TABLE)) {
      return;
    }
    Map<String, BenchCase> cases = new LinkedHashMap<>();
    CaseTable.read(Settings.DATA.resolve("cases.csv")).forEach(c -> cases.put(c.name(), c));
    for (String line : Files.readAllLines(TABLE)) {
      if (!line.startsWith("#")) {
        List<String> cells = List.of(line.split(CELL, -1));
        BenchCase c = cases.get(cells.get(0));
        nights.put(c.name(), Night.parse(c, cells.subList(1, cells.size())));
      }
    }
  }

  private void write() throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add(
        "# Best layouts found overnight, see Overnight. Case, what quick effort gave, last seed,");
    lines.add(
        "# pair tests a seed, and of each piece: kind, x, y in millimetres, turn in radians.");
    for (Night night : nights.values()) {
      lines.add(night.which().name() + CELL + String.join(CELL, night.cells()));
    }
    Files.write(TABLE, lines);
    report.body(text());
  }

  private String text() {
    StringBuilder text = new StringBuilder();
    long bettered = nights.values().stream().filter(Night::isBettered).count();
    text.append(
        String.format(
            Locale.ROOT,
            "%d of %d cases bettered over what quick effort gave, with the atlas of that time. This run"
                + " took %.0f processor seconds. Several kinds: square inches.%n%n",
            bettered,
            nights.size(),
            spent));
    text.append("| case | quick | now | seeds | limit at once |\n|---|--:|--:|--:|--:|\n");
    for (Night night : nights.values()) {
      double unit = night.which().isMixed() ? 25.4 * 25.4 : 1;
      String mark = night.isBettered() ? "**" : "";
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | %.0f | %s%.0f%s | %d | %.0f |%n",
              night.which().name(),
              night.first() / unit,
              mark,
              night.value() / unit,
              mark,
              night.seed(),
              limit(night.which()) / unit));
    }
    return text.toString();
  }
}

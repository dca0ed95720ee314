package curvestock.bench;

import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.units.Length;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The engine's search on problems whose best results are published, and writes {@code
 * benchmarks/report-literature.md}: irregular strip packing (ESICUP data) and unit squares in the
 * least square. Rows done are kept in a {@link Journal}.
 */
public final class LiteratureReport {

  private static final double UNIT = 200;

  /** A goal of the squares: by how much the side may exceed the best known, as a share. */
  private static final double NEAR = 0.001;

  private final Settings settings;
  private final Report report;
  private final Journal journal;

  private LiteratureReport(Settings settings) throws IOException {
    this.settings = settings;
    this.journal = Journal.open(Engine.packing(), "literature", settings.asked());
    this.report =
        new Report(
            settings.report("report-literature.md"),
            "The engine's search beside published results",
            settings.asked() + ", at most " + budget() + " pair tests for each size and seed");
  }

  public static void main(String[] args) throws IOException {
    LiteratureReport report = new LiteratureReport(Settings.fromProperties());
    report.strips();
    report.squares();
    report.report.finish();
  }

  /** Pair tests for each size of sheet and each of three seeds. */
  private long budget() {
    return switch (settings.search().effort()) {
      case QUICK -> 150_000;
      case NORMAL -> 2_000_000;
      case THOROUGH -> 20_000_000;
    };
  }

  private void strips() throws IOException {
    report.line(
        "Gap 0.02 mm on a strip 1,000 mm high (squares of 200 mm), no margin. Only layouts that pass a"
            + " second judgement (exact clearance, and JTS) count; 'thrown out' are those that the"
            + " search took for solved and that did not pass. Processor seconds of one thread.");
    report.line("");
    report.line("## Irregular strip packing");
    report.line("");
    report.line(
        "Data: EURO working group on cutting and packing (ESICUP), CC0. Density is the area of the"
            + " pieces over strip height × length reached. Half turns are allowed.");
    report.line("");
    report.line(
        "| instance | pieces | length / height | density | published | share of it | goal | seconds |"
            + " thrown out |");
    report.line("|---|--:|--:|--:|---|--:|--:|--:|--:|");
    for (Published published : Published.ALL) {
      if (published.name().matches(settings.only())) {
        row(published.name(), () -> strip(published));
      }
    }
  }

  /** What makes a row of a table. */
  private interface Row {
    String make() throws IOException;
  }

  private void row(String key, Row row) throws IOException {
    Optional<List<String>> known = journal.line(key);
    if (known.isEmpty()) {
      journal.note(key, List.of(row.make()));
    }
    report.line("%s", journal.line(key).orElseThrow().get(0));
  }

  private String strip(Published published) throws IOException {
    Instance instance = Instance.read(published.name(), published.height(), false);
    double start = instance.area() / 0.7 / Instance.HEIGHT;
    Shrinking.Reached reached =
        new Shrinking(
                instance.pieces(),
                length -> Shrinking.sheet(length, Instance.HEIGHT),
                budget(),
                settings.search().seed())
            .from(start);
    double density = instance.area() / (reached.size() * Instance.HEIGHT);
    double share = density / published.density();
    return String.format(
        Locale.ROOT,
        "| %s | %d | %.4f | %.1f %% | %.1f %% (%s) | %.1f %% | %.0f %%: %s | %.0f | %d |",
        published.name(),
        instance.pieces().size(),
        reached.size() / Instance.HEIGHT,
        100 * density,
        100 * published.density(),
        published.source(),
        100 * share,
        100 * published.goal(),
        share >= published.goal() ? "met" : "missed",
        reached.seconds(),
        reached.wrong());
  }

  private void squares() throws IOException {
    report.line("");
    report.line("## Unit squares in the least square, any rotation");
    report.line("");
    report.line(
        "Best known: Erich Friedman, Packing Unit Squares in Squares, Electronic Journal of"
            + " Combinatorics, dynamic survey DS7 (n = 5 and 10 proved best); values from memory.");
    report.line("");
    report.line(
        "| squares | side reached | best known | above it | within 0.1 % | seconds | thrown out |");
    report.line("|--:|--:|--:|--:|---|--:|--:|");
    square(5, 2 + Math.sqrt(0.5));
    square(10, 3 + Math.sqrt(0.5));
    square(11, 3.8771);
    square(18, 3.5 + Math.sqrt(7) / 2);
    square(19, 3 + 4 * Math.sqrt(2) / 3);
  }

  private void square(int n, double known) throws IOException {
    String name = "squares" + n;
    if (name.matches(settings.only())) {
      row(name, () -> squareRow(n, known));
    }
  }

  private String squareRow(int n, double known) {
    Piece piece =
        Piece.of("S", "square", new Strip(Length.ofMillimetres(UNIT), Length.ofMillimetres(UNIT)));
    List<Piece> pieces = Collections.nCopies(n, piece);
    Shrinking.Reached reached =
        new Shrinking(
                pieces, side -> Shrinking.sheet(side, side), budget(), settings.search().seed())
            .from(UNIT * Math.ceil(Math.sqrt(n)));
    double side = reached.size() / UNIT;
    return String.format(
        Locale.ROOT,
        "| %d | %.4f | %.4f | %.2f %% | %s | %.0f | %d |",
        n,
        side,
        known,
        100 * (side / known - 1),
        side / known - 1 <= NEAR ? "yes" : "no",
        reached.seconds(),
        reached.wrong());
  }
}

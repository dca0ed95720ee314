package curvestock.bench;

import curvestock.packing.Effort;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.units.Length;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * The engine's search on problems whose best results are published, and writes {@code
 * benchmarks/report-literature.md}: irregular strip packing (ESICUP data) and unit squares in the
 * least square.
 */
public final class LiteratureReport {

  private static final double UNIT = 200;

  private final Settings settings;
  private final StringBuilder text = new StringBuilder();

  private LiteratureReport(Settings settings) {
    this.settings = settings;
  }

  public static void main(String[] args) throws IOException {
    LiteratureReport report = new LiteratureReport(Settings.fromProperties());
    report.head();
    report.strips();
    report.squares();
  }

  /** Pair tests for each size of sheet. */
  private long budget() {
    Effort effort = settings.search().effort();
    return switch (effort) {
      case QUICK -> 150_000;
      case NORMAL -> 2_000_000;
      case THOROUGH -> 20_000_000;
    };
  }

  private void head() throws IOException {
    line("# The engine's search beside published results");
    line("");
    line(
        "At most %d pair tests for each size of sheet, seed %d. %s. Gap 0.02 mm on"
            + " a strip 1,000 mm high (squares of 200 mm), no margin. Only layouts that pass a second"
            + " judgement (exact clearance, and JTS) count; 'thrown out' are those that the search"
            + " took for solved and that did not pass.",
        budget(), settings.search().seed(), Settings.machine());
  }

  private void strips() throws IOException {
    line("");
    line("## Irregular strip packing");
    line("");
    line(
        "Data: EURO working group on cutting and packing (ESICUP), CC0. Density is the area of the"
            + " pieces over strip height × length reached.");
    line("");
    line(
        "| instance | pieces | rotations allowed here | length / height | density | published | share of it | seconds | thrown out |");
    line("|---|--:|---|--:|--:|---|--:|--:|--:|");
    strip("dighe1", 100, false, 1.00, "optimum, by construction; the instance allows no rotation");
    strip("dighe2", 100, false, 1.00, "optimum, by construction; the instance allows no rotation");
    strip("albano", 4900, false, 0.89, "best known, from memory");
    strip("blaz", 15, false, 0.83, "best known, from memory");
    strip("dagli", 60, false, 0.89, "best known, from memory");
    strip("albano", 4900, true, 0.89, "from memory, for 0 and 180° only");
  }

  private void strip(String name, double height, boolean free, double published, String source)
      throws IOException {
    if (!name.matches(settings.only())) {
      return;
    }
    Instance instance = Instance.read(name, height, free);
    double start = instance.area() / 0.7 / Instance.HEIGHT;
    Shrinking.Reached reached =
        new Shrinking(
                instance.pieces(),
                length -> Shrinking.sheet(length, Instance.HEIGHT),
                budget(),
                settings.search().seed())
            .from(start);
    double density = instance.area() / (reached.size() * Instance.HEIGHT);
    line(
        "| %s | %d | %s | %.4f | %.1f %% | %.0f %% (%s) | %.1f %% | %.1f | %d |",
        name,
        instance.pieces().size(),
        free ? "any" : "0 and 180°",
        reached.size() / Instance.HEIGHT,
        100 * density,
        100 * published,
        source,
        100 * density / published,
        reached.seconds(),
        reached.wrong());
  }

  private void squares() throws IOException {
    line("");
    line("## Unit squares in the least square, any rotation");
    line("");
    line(
        "Best known: Erich Friedman, Packing Unit Squares in Squares, Electronic Journal of"
            + " Combinatorics, dynamic survey DS7 (n = 5 and 10 proved best).");
    line("");
    line("| squares | side reached | best known | above it | seconds | thrown out |");
    line("|--:|--:|--:|--:|--:|--:|");
    square(5, 2.7071);
    square(10, 3.7071);
    square(11, 3.8771);
    square(18, 4.8229);
    square(19, 4.8856);
  }

  private void square(int n, double known) throws IOException {
    if (!("squares" + n).matches(settings.only())) {
      return;
    }
    Piece piece =
        Piece.of("S", "square", new Strip(Length.ofMillimetres(UNIT), Length.ofMillimetres(UNIT)));
    List<Piece> pieces = Collections.nCopies(n, piece);
    Shrinking.Reached reached =
        new Shrinking(
                pieces, side -> Shrinking.sheet(side, side), budget(), settings.search().seed())
            .from(UNIT * Math.ceil(Math.sqrt(n)));
    double side = reached.size() / UNIT;
    line(
        "| %d | %.4f | %.4f | %.2f %% | %.1f | %d |",
        n, side, known, 100 * (side / known - 1), reached.seconds(), reached.wrong());
  }

  /** Writes the report line by line, so that a broken run leaves what it has. */
  private void line(String form, Object... values) throws IOException {
    String line = values.length == 0 ? form : String.format(Locale.ROOT, form, values);
    text.append(line).append('\n');
    System.out.println(line);
    Files.writeString(settings.report("report-literature.md"), text);
  }
}

package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.answer.DemoPlans;
import curvestock.helix.spec.Riser;
import curvestock.piece.Demand;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is printed in other units is still the same job: {@code print:} changes no piece. */
class PrintedUnitsTest {

  private static final Pattern PRINT = Pattern.compile("(?m)^print:.*(\\R[ \\t].*)*$");

  static List<Path> files() {
    return DemoPlans.files();
  }

  private static Job printed(Path file, String print) throws Exception {
    String text = Files.readString(file);
    Matcher found = PRINT.matcher(text);
    String other =
        found.find() ? found.replaceFirst("print: " + print) : text + "\nprint: " + print + "\n";
    return JobReader.read(
        other,
        file.toString(),
        path -> {
          try {
            return StockFiles.Found.text(Files.readString(file.resolveSibling(path)));
          } catch (java.io.IOException e) {
            return StockFiles.Found.problem(e.getMessage());
          }
        });
  }

  @ParameterizedTest
  @MethodSource("files")
  void otherUnitsPrinted_changeNoPieceAndNothingAssumed(Path file) throws Exception {
    Job inches = printed(file, "{unit: in, fraction: 16}");
    Job metric = printed(file, "{unit: mm}");

    assertThat(pieces(metric)).isEqualTo(pieces(inches));
    assertThat(metric.sheets()).isEqualTo(inches.sheets());
    assertThat(metric.onSmallestSheets().sheets()).isEqualTo(inches.onSmallestSheets().sheets());
    assertThat(riser(metric)).isEqualTo(riser(inches));
  }

  private static List<List<Object>> pieces(Job job) {
    return job.demands().stream()
        .map(
            (Demand demand) ->
                List.<Object>of(demand.piece().id(), demand.piece().shape(), demand.count()))
        .toList();
  }

  /**
   * Its blocks' or rods' stock is assumed where the job names none; the name may be in any unit.
   */
  private static Optional<Object> riser(Job job) {
    return job.structure()
        .map(order -> order.plan().spec().supports().riser())
        .map(
            riser ->
                riser instanceof Riser.WoodBlocks wood
                    ? wood.stock().map(stock -> (Object) stock.length())
                    : ((Riser.ThreadedRods) riser).thread());
  }
}

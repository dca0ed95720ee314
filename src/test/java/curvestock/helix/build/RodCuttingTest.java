package curvestock.helix.build;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.app.Workshop;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many lengths of rod are bought, with the proof that fewer will not do. */
class RodCuttingTest {

  /**
   * Two tracks at 400 and 433 mm on 8.5 turns (invented). From 2 m, the longest first, each where
   * it left the least, took 8 lengths; all rods with their kerfs are more than 6 hold. From 1 m,
   * each rod over half a length takes one of its own.
   */
  @ParameterizedTest
  @CsvSource({"2000, 7", "1000, 21"})
  void rods_areCutFromTheFewestLengths(int stock, int wanted) {
    ShoppingList shopping =
        Workshop.readJob(
                """
                curvestock: 2
                title: Two tracks (invented)
                invented: true
                units: mm
                sheets: [{name: birch, size: 2500x1250 mm, thickness: 9, price: 62}]
                cutting: {kerf: 3, margin: 10}
                helix:
                  scale: N
                  tracks: 2
                  inner-track: 400
                  track-spacing: 33
                  width: 105
                  segments-per-turn: 4
                  rise-per-turn: 65
                  turns: 8.5
                  joint: {half-lap: 30}
                  supports: {per-turn: 12, rods: {stock: {name: rod, length: %s}}}
                """
                    .formatted(stock),
                "rods.yaml")
            .structure()
            .orElseThrow()
            .plan()
            .shopping();
    BoardCutting cutting = shopping.riserCutting().orElseThrow();
    List<Double> lengths =
        cutting.boards().stream()
            .flatMap(board -> board.cuts().stream())
            .map(cut -> cut.length().millimetres())
            .toList();
    double all = lengths.stream().mapToDouble(length -> length + 1).sum();
    long large = lengths.stream().filter(length -> length > stock / 2.0).count();

    assertThat(Math.max((double) large, Math.ceil(all / stock))).isEqualTo(wanted);
    assertThat(cutting.boards()).hasSize(wanted);
    assertThat(cutting.leastPossible()).isEqualTo(wanted);
    assertThat(shopping.items())
        .anySatisfy(
            item -> {
              assertThat(item.name()).isEqualTo("rod");
              assertThat(item.quantity()).isEqualTo(wanted);
              assertThat(item.note()).endsWith("no fewer will do");
            });
  }
}

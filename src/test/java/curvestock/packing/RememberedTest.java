package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Loop;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Drilled;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A packer with a store gives what one without gives, whatever the store holds. */
class RememberedTest {

  private static final SheetStock SHEET =
      SheetStock.rectangle(
          "panel", Length.ofInches(20), Length.ofInches(12), Length.ofInches(0.5), Money.ZERO);
  private static final Cutting CUTTING =
      Cutting.leaving(Length.ofInches(0.125), Length.ZERO, Length.ofInches(0.25));
  private static final SearchSettings QUICK = new SearchSettings(1, Effort.QUICK);
  private static final Piece ARC =
      Piece.of(
          "S",
          "segment",
          new AnnularSector(Length.ofInches(9), Length.ofInches(3), Angle.ofDegrees(60)));
  private static final Piece PLATE =
      Piece.of("plate", "plate", new Strip(Length.ofInches(4), Length.ofInches(2)));
  private static final List<Demand> WANTED = List.of(new Demand(ARC, 3), new Demand(PLATE, 2));

  /** A store in memory that counts what is asked of it. */
  private static final class Memory implements PackedStore {
    private final Map<String, String> texts = new HashMap<>();
    private int hits;

    @Override
    public Optional<String> find(String key) {
      hits += texts.containsKey(key) ? 1 : 0;
      return Optional.ofNullable(texts.get(key));
    }

    @Override
    public void keep(String key, String text) {
      texts.put(key, text);
    }
  }

  private static List<Layout> all(PackedStore store) {
    Packer packer = new Packers(store).of(SHEET, CUTTING, QUICK);
    Layout two = packer.most(ARC, 2, Control.NONE).layout();
    return List.of(
        two,
        packer.structured(ARC).layout(),
        packer.fill(WANTED, Control.NONE).layout(),
        packer.fillUp(two, List.of(new Demand(PLATE, 2)), Control.NONE).layout());
  }

  @Test
  void packings_withAndWithoutStore_areTheSameToTheLastBit() {
    Memory memory = new Memory();
    List<Layout> without = all(PackedStore.NONE);

    assertThat(all(memory)).isEqualTo(without);
    int before = memory.hits;
    int kept = memory.texts.size();
    assertThat(all(memory)).isEqualTo(without);
    assertThat(memory.hits).isGreaterThanOrEqualTo(before + 4);
    assertThat(memory.texts).hasSize(kept);
  }

  @Test
  void most_ofASearchThatEnded_answersForEveryNumberFromWhatItFound() {
    Memory memory = new Memory();
    int found =
        new Packers(memory)
            .of(SHEET, CUTTING, QUICK)
            .most(ARC, 40, Control.NONE)
            .layout()
            .placements()
            .size();

    assertThat(found).isBetween(4, 39);
    for (int wanted : new int[] {found, found + 1, 12, 39, 41, 400}) {
      int hits = memory.hits;
      Layout again =
          new Packers(memory).of(SHEET, CUTTING, QUICK).most(ARC, wanted, Control.NONE).layout();

      assertThat(again)
          .as("%d wanted", wanted)
          .isEqualTo(new Packer(SHEET, CUTTING, QUICK).most(ARC, wanted, Control.NONE).layout());
      assertThat(memory.hits).as("%d wanted", wanted).isEqualTo(hits + 1);
    }
  }

  @Test
  void texts_thatAreWrong_arePackedAnew() {
    Memory memory = new Memory();
    List<Layout> right = all(memory);
    // A layout whose pieces overlap, one of a piece that does not exist, one that is no layout.
    for (String wrong :
        List.of("stack\n0 100 100 0\n0 101 100 0\n", "stack\n7 1 1 0\n", "stack\nx\n", "")) {
      memory.texts.replaceAll((key, text) -> wrong);

      assertThat(all(memory)).as(wrong).isEqualTo(right);
    }
  }

  @Test
  void texts_withMorePiecesThanAsked_arePackedAnew() {
    Memory memory = new Memory();
    Packers packers = new Packers(memory);
    Layout one = packers.of(SHEET, CUTTING, QUICK).most(PLATE, 1, Control.NONE).layout();
    memory.texts.replaceAll((key, text) -> "made up\n0 100 100 0.0\n0 300 100 0.0\n");

    assertThat(packers.of(SHEET, CUTTING, QUICK).most(PLATE, 1, Control.NONE).layout())
        .isEqualTo(one);
  }

  @Test
  void keys_differWithWhateverAltersAPacking() {
    SheetStock other =
        SheetStock.rectangle(
            "panel", Length.ofInches(20.001), Length.ofInches(12), Length.ofInches(1), Money.ZERO);
    Cutting wider = Cutting.leaving(Length.ofInches(0.126), Length.ZERO, Length.ofInches(0.25));
    SearchSettings seeded = new SearchSettings(2, Effort.QUICK);
    String key = PackedText.key(SHEET, CUTTING, QUICK, "most", WANTED, "");

    assertThat(
            List.of(
                PackedText.key(other, CUTTING, QUICK, "most", WANTED, ""),
                PackedText.key(SHEET, wider, QUICK, "most", WANTED, ""),
                PackedText.key(SHEET, CUTTING, seeded, "most", WANTED, ""),
                PackedText.key(SHEET, CUTTING, QUICK, "fill", WANTED, ""),
                PackedText.key(SHEET, CUTTING, QUICK, "most", WANTED.subList(0, 1), ""),
                PackedText.key(SHEET, CUTTING, QUICK, "most", WANTED, "beside")))
        .doesNotContain(key)
        .doesNotHaveDuplicates();
  }

  /** Pieces are laid by the area that is left of them: holes may change the order. */
  @Test
  void keys_ofTheSamePieceDrilled_differ() {
    Piece drilled =
        Piece.of(
            PLATE.id(),
            PLATE.name(),
            new Drilled(PLATE.shape(), List.of(Loop.circle(new Point(0, 0), 5).reversed())));

    assertThat(PackedText.key(SHEET, CUTTING, QUICK, "fill", List.of(new Demand(drilled, 2)), ""))
        .isNotEqualTo(
            PackedText.key(SHEET, CUTTING, QUICK, "fill", List.of(new Demand(PLATE, 2)), ""));
  }
}

package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.layout.Layout;
import curvestock.packing.atlas.Atlas;
import curvestock.packing.atlas.Chart;
import curvestock.piece.AnnularSector;
import curvestock.piece.Grain;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Layouts from an atlas, brought to other sizes, gaps and sheets. */
class ChartedTest {

  private static final SheetStock FOUR_BY_EIGHT = Sheets.inches(96, 48);
  private static final SearchSettings QUICK = new SearchSettings(1, Effort.QUICK);
  private static final Piece THIRD = Sheets.sector(27.5, 32.5, 120);

  private static int regular;
  private static Layout searched;
  private static Atlas atlas;

  /** An atlas of one chart: 7 thirds of a turn, where the patterns hold fewer. */
  @BeforeAll
  static void search() {
    Packer packer = packer(FOUR_BY_EIGHT, Sheets.USUAL, Atlas.NONE);
    regular = packer.structured(THIRD).layout().placements().size();
    searched = packer.most(THIRD, 7, Control.NONE).layout();
    atlas = Atlas.of("one", List.of(packer.chart(searched).orElseThrow()));
  }

  private static Packer packer(SheetStock sheet, Cutting cutting, Atlas atlas) {
    return new Packers(PackedStore.NONE, atlas).of(sheet, cutting, QUICK);
  }

  private static SheetStock millimetres(double length, double width) {
    return SheetStock.rectangle(
        "sheet",
        Length.ofMillimetres(length),
        Length.ofMillimetres(width),
        Length.ofMillimetres(12),
        Money.ZERO);
  }

  private static Piece third(double radius, double width, Grain grain) {
    return new Piece(
        "T",
        "third",
        new AnnularSector(
            Length.ofMillimetres(radius), Length.ofMillimetres(width), Angle.ofDegrees(120)),
        grain);
  }

  @Test
  void chart_ofAFoundLayout_holdsMoreThanThePatterns() {
    assertThat(searched.placements()).hasSize(7);
    assertThat(regular).isLessThan(7);
  }

  /** Radius at mid-width, width, sheet, gap and margin in mm; none is the size of the chart. */
  @ParameterizedTest
  @CsvSource({
    "755, 125, 2440, 1220, 3, 6",
    "745, 120, 2440, 1220, 6, 3",
    "770, 125, 2500, 1250, 4, 6",
    "755, 125, 1220, 2440, 3, 6",
    "740, 110, 2440, 1220, 0, 0",
    "376, 62, 1220, 610, 1.5, 3"
  })
  void charted_atOtherSizes_holdsAsManyAndIsRight(
      double radius, double width, double length, double across, double gap, double margin) {
    Piece piece = third(radius, width, Grain.FREE);
    Cutting cutting =
        Cutting.leaving(Length.ofMillimetres(gap), Length.ZERO, Length.ofMillimetres(margin));
    Packer packer = packer(millimetres(length, across), cutting, atlas);

    Layout layout = packer.charted(piece, 20).orElseThrow().layout();

    assertThat(layout.placements()).hasSize(7);
    Sheets.requireRight(layout);
  }

  @Test
  void most_fromTheAtlas_neverHoldsLessThanTheChart_andRepeats() {
    Piece piece = third(755, 125, Grain.FREE);
    SheetStock sheet = millimetres(2440, 1220);
    List<List<String>> runs = new ArrayList<>();
    for (int run = 0; run < 2; run++) {
      Layout layout = packer(sheet, Sheets.USUAL, atlas).most(piece, 7, Control.NONE).layout();
      Sheets.requireRight(layout);
      runs.add(List.of(PackedText.poses(layout, List.of(piece))));
    }

    assertThat(runs.get(0)).isEqualTo(runs.get(1));
    assertThat(runs.get(0).get(0).lines()).hasSize(7);
  }

  @Test
  void most_fromTheAtlasOfFewer_isCutToWhatIsWanted() {
    Piece piece = third(755, 125, Grain.FREE);
    Packer packer = packer(millimetres(2440, 1220), Sheets.USUAL, atlas);

    Layout layout = packer.most(piece, 6, Control.NONE).layout();

    assertThat(layout.placements()).hasSize(6);
    assertThat(packer.atOnce(piece, 7).layout().placements()).hasSize(7);
    Sheets.requireRight(layout);
  }

  @Test
  void most_whereNoChartFits_isWhatItIsWithoutAtlas() {
    Piece fourth = Sheets.sector(10, 13, 90);
    SheetStock sheet = Sheets.inches(40, 30);

    assertThat(packer(sheet, Sheets.USUAL, atlas).most(fourth, 30, Control.NONE))
        .isEqualTo(packer(sheet, Sheets.USUAL, Atlas.NONE).most(fourth, 30, Control.NONE));
  }

  @Test
  void charted_forPiecesFarTooLarge_isNothing() {
    Piece piece = third(790, 140, Grain.FREE);

    assertThat(packer(FOUR_BY_EIGHT, Sheets.USUAL, atlas).charted(piece, 20)).isEmpty();
  }

  @Test
  void charted_forGrainThatBinds_isNothing() {
    Grain bound = new Grain(Angle.ofDegrees(0), Angle.ofDegrees(20));

    assertThat(packer(FOUR_BY_EIGHT, Sheets.USUAL, atlas).charted(third(700, 110, bound), 20))
        .isEmpty();
  }

  @Test
  void charted_forWhatIsNoArc_isNothing() {
    Packer packer = packer(FOUR_BY_EIGHT, Sheets.USUAL, atlas);

    assertThat(packer.charted(Sheets.strip("S", 20, 4), 20)).isEmpty();
    assertThat(packer.charted(Sheets.sector(10, 13, 360), 20)).isEmpty();
  }

  /** Every so many of the shipped charts, for pieces a thousandth smaller than its own. */
  @Test
  void charts_shipped_giveRightLayouts() {
    List<Chart> charts = Atlas.SHIPPED.charts();
    for (int k = 0; k < charts.size(); k += 1 + charts.size() / 30) {
      Chart chart = charts.get(k);
      double side = 1210;
      double gap = Sheets.USUAL.spacing().millimetres();
      double edge = 2 * Sheets.USUAL.margin().millimetres() - gap;
      double width = 0.999 * side * chart.proportions().width() - gap;
      double radius = 0.999 * side * chart.proportions().middle();
      Piece piece =
          Piece.of(
              "A",
              "segment",
              new AnnularSector(
                  Length.ofMillimetres(radius),
                  Length.ofMillimetres(width),
                  Angle.ofRadians(chart.proportions().sweep() - gap / radius)));
      SheetStock sheet = millimetres(side * chart.proportions().aspect() + edge, side + edge);
      Charted charted =
          new Charted(new OneSheet(sheet, Sheets.USUAL, QUICK), Atlas.of("alone", List.of(chart)));

      Layout layout = charted.more(piece, 0, chart.count()).orElseThrow();

      assertThat(layout.placements()).as(chart.proportions().toString()).hasSize(chart.count());
      Sheets.requireRight(layout);
    }
  }
}

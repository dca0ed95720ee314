package curvestock.answer;

import curvestock.compare.Comparison;
import curvestock.compare.SegmentOption;
import curvestock.compare.ShortSheets;
import java.util.ArrayList;
import java.util.List;

/** How far choices hang on sheets that measure their full size, in sentences. */
final class SheetSizeWords {

  private final Comparison comparison;
  private final Figures figures;

  SheetSizeWords(Comparison comparison, Figures figures) {
    this.comparison = comparison;
    this.figures = figures;
  }

  /**
   * First of the choice recommended, then of those that it overtook; empty if nothing was tried.
   */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    comparison
        .best()
        .ifPresent(best -> best.onShort().ifPresent(found -> lines.add(best(best, found))));
    for (SegmentOption option : comparison.options()) {
      boolean overtaken =
          option.needsFullSheets() && comparison.best().stream().noneMatch(option::equals);
      if (overtaken) {
        lines.add(other(option, option.onShort().orElseThrow()));
      }
    }
    return lines;
  }

  private String best(SegmentOption best, ShortSheets found) {
    String each =
        "Sheets may measure " + shortBy(found) + " less than stated (" + found.source() + ")";
    if (found.sheets() == ShortSheets.NONE) {
      return each + ", and then this cannot be cut from them: measure yours before you buy.";
    }
    return found.sheets() == best.sheets()
        ? each
            + ": tried, and "
            + Figures.count(best.sheets(), "sheet")
            + " still "
            + (best.sheets() == 1 ? "does." : "do.")
        : each
            + ": then "
            + Figures.count(found.sheets(), "sheet")
            + " are needed, "
            + figures.money(found.cost())
            + ". Measure yours before you buy.";
  }

  private String other(SegmentOption option, ShortSheets found) {
    String sheets = Figures.count(option.sheets(), "sheet");
    return DecisionWords.card(option.division())
        + " fit "
        + sheets
        + " only at full size; "
        + shortBy(found)
        + " less, and "
        + (found.sheets() == ShortSheets.NONE
            ? "they cannot be cut"
            : "they need " + found.sheets())
        + ", so they are not recommended. If yours measure full, write `tolerance: 0` at the sheet.";
  }

  private String shortBy(ShortSheets found) {
    return figures.given(found.shortBy());
  }
}

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
    String each = undersize(shortBy(found), found.source());
    if (found.sheets() == ShortSheets.NONE) {
      return each + "; this cannot be cut from such sheets, so measure yours before you buy.";
    }
    return found.sheets() == best.sheets()
        ? "%s; even then %s %s enough."
            .formatted(
                each, Figures.count(best.sheets(), "sheet"), best.sheets() == 1 ? "is" : "are")
        : "%s; then you need %s, %s. Measure yours before you buy."
            .formatted(each, Figures.count(found.sheets(), "sheet"), figures.money(found.cost()));
  }

  /** How much less than its stated size a sheet may measure, and by which standard. */
  static String undersize(String shortBy, String source) {
    return "Sheets can come up to %s undersize each way (%s)".formatted(shortBy, source);
  }

  private String other(SegmentOption option, ShortSheets found) {
    return "%s fit on %s only if the sheets are full size. They are not recommended, because from sheets %s undersize %s. If yours measure full size, write `tolerance: 0` for the sheet."
        .formatted(
            DecisionWords.card(option.division()),
            Figures.count(option.sheets(), "sheet"),
            shortBy(found),
            found.sheets() == ShortSheets.NONE
                ? "they cannot be cut"
                : "they take " + found.sheets());
  }

  private String shortBy(ShortSheets found) {
    return figures.given(found.shortBy());
  }
}

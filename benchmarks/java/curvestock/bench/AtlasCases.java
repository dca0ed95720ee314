package curvestock.bench;

import curvestock.bound.Bound;
import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.PackedStore;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.packing.SearchSettings;
import curvestock.packing.atlas.Atlas;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The table of cases at quick effort, with and without the atlas: pieces, or area of several kinds.
 */
final class AtlasCases {

  /** What was found with the atlas over what was found without. */
  private record Row(String name, double without, double with) {}

  private AtlasCases() {}

  /** The section of the report, as Markdown; cases of like outcome are not listed. */
  static List<String> section() throws IOException {
    List<Row> rows = new ArrayList<>();
    for (BenchCase c : CaseTable.read(Settings.DATA.resolve(Path.of("cases.csv")))) {
      rows.add(new Row(c.name(), value(c, Atlas.NONE), value(c, Atlas.SHIPPED)));
    }
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add(
        String.format(
            Locale.ROOT,
            "## The %d cases of `data/cases.csv` at quick effort: %d more with the atlas, %d less",
            rows.size(),
            rows.stream().filter(row -> row.with() > row.without()).count(),
            rows.stream().filter(row -> row.with() < row.without()).count()));
    lines.add("");
    lines.add("| case that differs | without | with |");
    lines.add("|---|--:|--:|");
    rows.stream()
        .filter(row -> row.with() != row.without())
        .map(
            row ->
                String.format(
                    Locale.ROOT, "| %s | %.0f | %.0f |", row.name(), row.without(), row.with()))
        .forEach(lines::add);
    return lines;
  }

  /** Pieces of a single kind, else square millimetres. */
  private static double value(BenchCase c, Atlas atlas) {
    Packer packer =
        new Packers(PackedStore.NONE, atlas)
            .of(c.sheet(), c.cutting(), new SearchSettings(1, Effort.QUICK));
    if (c.isMixed()) {
      return packer.fill(c.wanted(), Control.NONE).layout().pieceArea();
    }
    int bound = Bound.quick(c.piece(), c.sheet(), c.cutting()).count();
    Layout layout = packer.most(c.piece(), bound, Control.NONE).layout();
    return layout.placements().size();
  }
}

package curvestock.purchase;

import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Rips a sheet into as many panels of a machine's full reach as it gives: whole columns of them
 * either way round, and in the strip that is left over more of them turned, or what the strip
 * gives.
 */
public final class BedRips {

  /** Strips narrower than this are scrap, in millimetres. */
  private static final double SCRAP = 60;

  private static final int MOST_PANELS = 60;

  private final SheetStock sheet;
  private final double kerf;

  private BedRips(SheetStock sheet, Length kerf) {
    this.sheet = sheet;
    this.kerf = kerf.millimetres();
  }

  private record Size(double x, double y) {

    double area() {
      return x * y;
    }
  }

  /**
   * The way with the largest area of full panels; empty if the sheet gives none.
   *
   * @param longer side of what the machine reaches
   * @param shorter side of it
   */
  public static Optional<Breakdown> of(
      SheetStock sheet, Length kerf, Length longer, Length shorter) {
    BedRips rips = new BedRips(sheet, kerf);
    double a = longer.millimetres();
    double b = shorter.millimetres();
    List<List<Size>> ways = new ArrayList<>();
    for (Size bed : List.of(new Size(a, b), new Size(b, a))) {
      for (boolean turned : new boolean[] {false, true}) {
        ways.add(rips.way(bed, turned));
      }
    }
    double full = a * b - 1;
    return ways.stream()
        .filter(way -> !way.isEmpty() && way.size() <= MOST_PANELS)
        .max(
            Comparator.comparingDouble(
                    (List<Size> way) ->
                        way.stream().mapToDouble(Size::area).filter(area -> area >= full).sum())
                .thenComparingDouble(way -> way.stream().mapToDouble(Size::area).sum()))
        .filter(way -> way.get(0).area() >= full)
        .map(rips::breakdown);
  }

  private int fit(double room, double side) {
    return (int) Math.floor((room + kerf) / (side + kerf) + 1e-9);
  }

  private List<Size> way(Size bed, boolean turned) {
    List<Size> panels = new ArrayList<>();
    double length = sheet.length().millimetres();
    double width = sheet.width().millimetres();
    int across = fit(length, bed.x());
    double rest = length - across * (bed.x() + kerf);
    for (int i = 0; i < across; i++) {
      addColumn(panels, bed.x(), width, bed.y());
    }
    if (turned && rest >= bed.y()) {
      addColumn(panels, bed.y(), width, bed.x());
    } else if (rest >= SCRAP) {
      addColumn(panels, rest, width, bed.y());
    }
    return panels;
  }

  private void addColumn(List<Size> panels, double x, double width, double y) {
    int rows = fit(width, y);
    for (int i = 0; i < rows; i++) {
      panels.add(new Size(x, y));
    }
    double rest = width - rows * (y + kerf);
    if (rest >= SCRAP) {
      panels.add(new Size(x, rest));
    }
  }

  private Breakdown breakdown(List<Size> sizes) {
    List<Panel> panels = new ArrayList<>();
    char letter = 'P';
    for (Size size : sizes.stream().distinct().toList()) {
      int count = (int) sizes.stream().filter(size::equals).count();
      panels.add(
          new Panel(
              sheet.part(
                  sheet.name() + ", panel " + letter++,
                  Length.ofMillimetres(size.x()),
                  Length.ofMillimetres(size.y()),
                  Money.ZERO),
              count));
    }
    // A cut between any two panels; strips of scrap take one more each.
    return new Breakdown(panels, sizes.size(), Money.ZERO);
  }
}

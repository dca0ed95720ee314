package curvestock.packing.atlas;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;

/**
 * Charts of layouts, asked for those that may hold more pieces than are known to fit.
 *
 * <p>Part of the program's version, like its code: the same question gets the same charts on any
 * machine.
 */
public final class Atlas {

  private static final String TABLE = "layouts.txt";

  /** Without a chart. */
  public static final Atlas NONE = of("", List.of());

  /** The one that is part of the program; its table is read at the first question. */
  public static final Atlas SHIPPED = new Atlas("shipped", () -> Shipped.CHARTS);

  /**
   * Above this the pieces are too large. By trial, thirds of a turn: of 264 layouts brought to
   * random sizes 47 in 107 fitted below 0, 1 in 28 from 0 to 0.02, none of 129 above.
   */
  private static final double MOST_STRAIN = 0.015;

  /** Of charts that hold equally many so many are given. */
  private static final int EACH = 4;

  private final String name;
  private final Supplier<List<Chart>> charts;

  private Atlas(String name, Supplier<List<Chart>> charts) {
    this.name = name;
    this.charts = charts;
  }

  /** Loaded when it is first looked at. */
  private static final class Shipped {
    private static final List<Chart> CHARTS = read();

    private static List<Chart> read() {
      try (InputStream in = Atlas.class.getResourceAsStream(TABLE)) {
        if (in == null) {
          throw new IllegalStateException("table " + TABLE + " is missing from the program");
        }
        return Atlas.charts(
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /**
   * One of charts at hand.
   *
   * @param name tells its packings from those of other atlases
   */
  public static Atlas of(String name, List<Chart> charts) {
    List<Chart> copy = List.copyOf(charts);
    return new Atlas(name, () -> copy);
  }

  /**
   * The charts in the lines of a table.
   *
   * @throws IllegalArgumentException if a line is no chart
   */
  public static List<Chart> charts(List<String> lines) {
    return lines.stream()
        .filter(line -> !line.startsWith("#") && !line.isBlank())
        .map(Chart::parse)
        .toList();
  }

  /** The table of these charts, in an order that hangs on nothing but them. */
  public static List<String> table(List<Chart> charts) {
    return charts.stream()
        .sorted(
            Comparator.comparingDouble((Chart chart) -> -chart.proportions().sweep())
                .thenComparingDouble(chart -> chart.proportions().aspect())
                .thenComparingInt(Chart::count)
                .thenComparingDouble(chart -> chart.proportions().width())
                .thenComparing(Chart::line))
        .map(Chart::line)
        .toList();
  }

  /** Tells its packings from those of other atlases; empty for {@link #NONE}. */
  public String name() {
    return name;
  }

  public List<Chart> charts() {
    return charts.get();
  }

  /**
   * Charts worth trying: those that hold most first, of equal ones the likeliest first.
   *
   * @param above so many are known to fit
   */
  public List<Chart> near(Proportions asked, int above) {
    List<Chart> near = new ArrayList<>();
    for (Chart chart : charts.get()) {
      Proportions there = chart.proportions();
      if (chart.count() > above && asked.isLike(there) && asked.strain(there) <= MOST_STRAIN) {
        near.add(chart);
      }
    }
    near.sort(
        Comparator.comparingInt((Chart chart) -> -chart.count())
            .thenComparingDouble(chart -> asked.strain(chart.proportions())));
    List<Chart> kept = new ArrayList<>();
    int same = 0;
    for (Chart chart : near) {
      boolean goesOn = !kept.isEmpty() && kept.get(kept.size() - 1).count() == chart.count();
      same = goesOn ? same + 1 : 1;
      if (same <= EACH) {
        kept.add(chart);
      }
    }
    return kept;
  }
}

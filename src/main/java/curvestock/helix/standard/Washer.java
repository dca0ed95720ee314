package curvestock.helix.standard;

import curvestock.units.Length;
import java.util.List;

/**
 * A plain steel washer.
 *
 * @param standard by which it is sold, for example {@code ISO 7089}; blank if it is the builder's
 * @param outer outside diameter
 * @param hole diameter of its hole
 * @param thickness how thick it is
 */
public record Washer(String standard, Length outer, Length hole, Length thickness) {

  private static final List<CsvTable.Row> ROWS = CsvTable.read("washers.csv").rows();

  /** As shops round it: 0.688 in is sold as 11/16. */
  private static final double SAME = 0.2;

  /** The usual washer for the rod of that name. */
  static Washer usualFor(String thread) {
    return forThread(thread).get(0);
  }

  /** The standard's washer as wide as that, or else one as thick as the usual. */
  static Washer forThread(String thread, Length outer) {
    Washer usual = usualFor(thread);
    return forThread(thread).stream()
        .filter(washer -> Math.abs(washer.outer.minus(outer).millimetres()) < SAME)
        .map(washer -> new Washer(washer.standard, outer, washer.hole, washer.thickness))
        .findFirst()
        .orElseGet(() -> new Washer("", outer, usual.hole, usual.thickness));
  }

  private static List<Washer> forThread(String thread) {
    return ROWS.stream()
        .filter(row -> row.is("thread", thread))
        .map(
            row ->
                new Washer(
                    row.text("standard"),
                    row.length("outer"),
                    row.length("hole"),
                    row.length("thickness")))
        .toList();
  }

  /** Weight of one. */
  public double kilograms() {
    double ring = Math.pow(outer.millimetres(), 2) - Math.pow(hole.millimetres(), 2);
    return Math.PI / 4 * ring * thickness.millimetres() * RodThread.STEEL;
  }
}

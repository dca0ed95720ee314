package curvestock.bench;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * What one size of the batch came to.
 *
 * @param least sheets that are proven to be needed
 * @param areaYield share of the sheets' area that becomes pieces, 0 to 1
 * @param planning processor seconds from the jobs to the purchase
 * @param drawing processor seconds of drawing and checking every sheet
 * @param heap largest use of the heap, MiB, what awaits the collector included
 */
record BatchSize(
    int pieces,
    int kinds,
    int sheets,
    int least,
    double areaYield,
    double planning,
    double drawing,
    double heap) {

  /** As a journal keeps it. */
  List<String> cells() {
    return List.of(
        Integer.toString(pieces),
        Integer.toString(kinds),
        Integer.toString(sheets),
        Integer.toString(least),
        Double.toString(areaYield),
        Double.toString(planning),
        Double.toString(drawing),
        Double.toString(heap));
  }

  /** What {@link #cells} gave. */
  static BatchSize parse(List<String> cells) {
    return new BatchSize(
        Integer.parseInt(cells.get(0)),
        Integer.parseInt(cells.get(1)),
        Integer.parseInt(cells.get(2)),
        Integer.parseInt(cells.get(3)),
        Double.parseDouble(cells.get(4)),
        Double.parseDouble(cells.get(5)),
        Double.parseDouble(cells.get(6)),
        Double.parseDouble(cells.get(7)));
  }

  /** The sizes in their order, with the exponents of their growth, as Markdown. */
  static String table(List<BatchSize> sizes) {
    StringBuilder text = new StringBuilder();
    text.append(
        "All data invented (`data/batch/`): four jobs whose pieces share sheets, 50 of every kind and");
    text.append(
        " multiples.\nProcessor seconds of the whole process, compilers and collectors included;");
    text.append(" largest heap with what awaits the\ncollector.\n\n");
    text.append("| pieces | kinds | sheets | proven least | over it | yield | planning, s |");
    text.append(" drawing and checking, s | largest heap, MiB |\n");
    text.append("|--:|--:|--:|--:|--:|--:|--:|--:|--:|\n");
    for (BatchSize size : sizes) {
      text.append(
          String.format(
              Locale.ROOT,
              "| %d | %d | %d | %d | %d | %.1f %% | %.0f | %.0f | %.0f |%n",
              size.pieces,
              size.kinds,
              size.sheets,
              size.least,
              size.sheets - size.least,
              100 * size.areaYield,
              size.planning,
              size.drawing,
              size.heap));
    }
    if (sizes.size() > 1) {
      text.append(
          String.format(
              Locale.ROOT,
              "| exponent | | %.2f | | | | %.2f | %.2f | %.2f |%n",
              exponent(sizes, BatchSize::sheets),
              exponent(sizes, BatchSize::planning),
              exponent(sizes, BatchSize::drawing),
              exponent(sizes, BatchSize::heap)));
      text.append(
          "\nThe exponent is the slope of the least-squares line through the logarithms of pieces");
      text.append(" and of cost; 2 would be\nquadratic.\n");
    }
    return text.toString();
  }

  private static double exponent(List<BatchSize> sizes, ToDoubleFunction<BatchSize> cost) {
    return PowerLaw.exponent(
        sizes.stream().mapToDouble(BatchSize::pieces).toArray(),
        sizes.stream().mapToDouble(cost).toArray());
  }
}

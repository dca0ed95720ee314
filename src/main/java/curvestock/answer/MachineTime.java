package curvestock.answer;

import curvestock.geometry.Edge;
import curvestock.job.Rates;
import curvestock.machine.MachineSheet;
import curvestock.machine.Pocket;
import curvestock.plan.MachineSheets;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the machine takes for all sheets at the user's rates: cutting, marking, lifting.
 *
 * <p>A pocket is cleared in strips half as wide as the tool; a hole takes twice the thickness.
 *
 * @param sheets a row for each sheet
 * @param total of all
 * @param timed whether there is a feed, without which only lengths are known
 * @param machine price of the machine for that time; zero if none is given
 * @param own price of the builder's own time beside it; zero if none is given
 */
public record MachineTime(
    Table sheets, Run total, boolean timed, Money machine, Money own, Rates rates) {

  private static final int MINUTES_PER_HOUR = 60;

  /** Of the tool's width, between two strips of a pocket. */
  private static final double STRIP = 0.5;

  /**
   * The ways of a machine.
   *
   * @param cut along outlines, through holes and over pockets
   * @param marked along marks and letters
   * @param lifted between them, each operation from the sheet's lower left corner
   * @param minutes at the rates; zero without a feed
   */
  public record Run(Length cut, Length marked, Length lifted, double minutes) {

    private Run plus(Run other) {
      return new Run(
          cut.plus(other.cut),
          marked.plus(other.marked),
          lifted.plus(other.lifted),
          minutes + other.minutes);
    }
  }

  /** A sheet's number, from 1, and its run. */
  private record Row(int number, Run run) {}

  /** The machine's time; empty if the job has no rates. */
  static Optional<MachineTime> of(Rates rates, MachineSheets sheets) {
    if (rates.equals(Rates.NONE)) {
      return Optional.empty();
    }
    List<Row> rows = new ArrayList<>();
    Run total = new Run(Length.ZERO, Length.ZERO, Length.ZERO, 0);
    for (MachineSheet sheet : sheets.list()) {
      Run run = run(sheet, rates);
      rows.add(new Row(rows.size() + 1, run));
      total = total.plus(run);
    }
    boolean timed = rates.feedPerMinute().isPresent();
    return Optional.of(
        new MachineTime(
            table(rows, timed),
            total,
            timed,
            price(rates.machinePerHour(), total.minutes()),
            price(rates.ownTimePerHour(), total.minutes()),
            rates));
  }

  private static Run run(MachineSheet sheet, Rates rates) {
    double tool = sheet.setup().bitOrKerf(sheet.layout().cutting()).millimetres();
    double cut = sheet.cut();
    for (Pocket pocket : sheet.machining().pockets()) {
      cut += tool > 0 ? pocket.area().area() / (STRIP * tool) : 0;
    }
    double through = 2 * sheet.layout().sheet().thickness().millimetres();
    cut += through * sheet.machining().drillings().size();
    double marked = length(sheet.marks());
    marked += sheet.labels().stream().mapToDouble(label -> length(label.strokes())).sum();
    marked += sheet.machining().words().stream().mapToDouble(word -> length(word.strokes())).sum();
    return timed(
        Length.ofMillimetres(cut),
        Length.ofMillimetres(marked),
        Length.ofMillimetres(
            sheet.travel() + sheet.markTravel() + sheet.labelTravel() + sheet.otherTravel()),
        rates);
  }

  /** Marking and lifting go as fast as cutting where nothing else is said. */
  private static Run timed(Length cut, Length marked, Length lifted, Rates rates) {
    if (rates.feedPerMinute().isEmpty()) {
      return new Run(cut, marked, lifted, 0);
    }
    Length feed = rates.feedPerMinute().get();
    double minutes =
        minutes(cut, feed)
            + minutes(marked, rates.markingPerMinute().orElse(feed))
            + minutes(lifted, rates.liftingPerMinute().orElse(feed));
    return new Run(cut, marked, lifted, minutes);
  }

  private static double minutes(Length way, Length perMinute) {
    return way.millimetres() / perMinute.millimetres();
  }

  private static double length(List<List<Edge>> lines) {
    return lines.stream().flatMap(List::stream).mapToDouble(Edge::length).sum();
  }

  private static Money price(Money hour, double minutes) {
    BigDecimal units =
        BigDecimal.valueOf(hour.minorUnits())
            .multiply(BigDecimal.valueOf(minutes))
            .divide(BigDecimal.valueOf(MINUTES_PER_HOUR), 0, RoundingMode.HALF_UP);
    return new Money(units.longValueExact());
  }

  private static Table table(List<Row> rows, boolean timed) {
    List<Field<Row>> fields = new ArrayList<>();
    fields.add(Field.count("number", "Sheet", Row::number));
    fields.add(Field.of("cut", "Cut", Measure.RUN, row -> row.run().cut()));
    fields.add(Field.of("marked", "Marked", Measure.RUN, row -> row.run().marked()));
    fields.add(Field.of("lifted", "Lifted", Measure.RUN, row -> row.run().lifted()));
    if (timed) {
      fields.add(
          Field.of(
              "minutes",
              "Time",
              Measure.MINUTES,
              row -> new Count(Math.round(row.run().minutes()))));
    }
    return Table.of("machineTime", "Time at the machine", rows, fields);
  }

  /** In a sentence or two: the time and its price, then what it is made of. */
  public List<String> words(Figures figures) {
    List<String> words = new ArrayList<>();
    if (timed) {
      words.add(
          "Cutting time "
              + figures.time(Math.round(total.minutes()))
              + (isPriced() ? ": " + prices(figures) : "")
              + ".");
    }
    words.add(
        "%s of cutting, %s of marking, %s of travel with the tool lifted%s."
            .formatted(
                figures.run(total.cut()),
                figures.run(total.marked()),
                figures.run(total.lifted()),
                speeds(figures)));
    return words;
  }

  private boolean isPriced() {
    return machine.compareTo(Money.ZERO) > 0 || own.compareTo(Money.ZERO) > 0;
  }

  private String prices(Figures figures) {
    List<String> prices = new ArrayList<>();
    if (machine.compareTo(Money.ZERO) > 0) {
      prices.add(figures.money(machine) + " at the machine");
    }
    if (own.compareTo(Money.ZERO) > 0) {
      prices.add(figures.money(own) + " of your own time");
    }
    return String.join(", ", prices);
  }

  private String speeds(Figures figures) {
    if (rates.feedPerMinute().isEmpty()) {
      return "; for the time, add `feed-per-minute:` under `rates:`";
    }
    List<String> alike = new ArrayList<>();
    if (rates.markingPerMinute().isEmpty()) {
      alike.add("marking");
    }
    if (rates.liftingPerMinute().isEmpty()) {
      alike.add("lifting");
    }
    String feed = figures.run(rates.feedPerMinute().get()) + " a minute";
    return alike.isEmpty()
        ? ", at " + feed
        : ", at %s, %s included".formatted(feed, String.join(" and ", alike));
  }
}

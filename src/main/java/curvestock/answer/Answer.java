package curvestock.answer;

import curvestock.compare.Comparison;
import curvestock.helix.HelixOrder;
import curvestock.helix.build.ShoppingItem;
import curvestock.job.Job;
import curvestock.plan.MachineSheets;
import curvestock.plan.Plan;
import curvestock.units.Money;
import java.util.List;
import java.util.Optional;

/**
 * The one answer to a job: every figure that any output shows, worked out once.
 *
 * @param heading whose answer
 * @param buying sheets, money and layouts, if they are planned
 * @param building the whole helix, if the job asks for one
 * @param choices the segment sizes side by side, if they were compared
 * @param machineSheets what a machine does on each sheet, if they are planned and not only roughly
 * @param machineTime what the machine takes, if the job has rates and sheets are planned
 * @param shopping sheets and everything else to buy
 * @param priced what everything on the shopping list comes to, as far as it has a price; sheets
 *     with their tax
 * @param unpriced how many lines of the shopping list have none
 * @param unfit why the pieces cannot be cut from the sheets and what would help, a sentence each;
 *     empty if they can or nobody tried
 */
public record Answer(
    Heading heading,
    Optional<Buying> buying,
    Optional<Building> building,
    Optional<Choices> choices,
    Optional<MachineSheets> machineSheets,
    Optional<MachineTime> machineTime,
    Table shopping,
    Money priced,
    int unpriced,
    List<String> unfit) {

  public static Answer of(Plan plan) {
    return of(plan.job(), plan.job().structure(), Optional.of(plan), false);
  }

  /**
   * The answer of a whole helix.
   *
   * @param sheets how its pieces are cut, if that is planned
   * @param rough whether the sheets were planned quickly, only to know about how many are needed;
   *     nothing then refers to the cut layouts
   */
  public static Answer ofHelix(Job job, HelixOrder order, Optional<Plan> sheets, boolean rough) {
    return of(job, Optional.of(order), sheets, rough);
  }

  private static Answer of(
      Job job, Optional<HelixOrder> order, Optional<Plan> plan, boolean rough) {
    Optional<MachineSheets> sheets = rough ? Optional.empty() : plan.map(MachineSheets::new);
    Optional<Buying> buying = plan.map(found -> Buying.of(found, sheets));
    Optional<Building> building =
        order.map(each -> Building.of(job, each, rough ? Optional.empty() : plan));
    List<ShoppingItem> items = order.map(each -> each.plan().shopping().items()).orElse(List.of());
    ShoppingLines lines = new ShoppingLines(items, buying);
    return new Answer(
        Heading.of(job),
        buying,
        building,
        Optional.empty(),
        sheets,
        sheets.flatMap(each -> MachineTime.of(job.rates(), each)),
        lines.table(),
        lines.priced(),
        lines.unpriced(),
        List.of());
  }

  /** The same beside a comparison of segment sizes. */
  public Answer compared(Comparison comparison) {
    return new Answer(
        heading,
        buying,
        building,
        Optional.of(Choices.of(comparison)),
        machineSheets,
        machineTime,
        shopping,
        priced,
        unpriced,
        unfit);
  }

  /** The same of a helix whose pieces cannot be cut from the job's sheets, for these reasons. */
  public Answer unfit(List<String> why) {
    return new Answer(
        heading,
        buying,
        building,
        choices,
        machineSheets,
        machineTime,
        shopping,
        priced,
        unpriced,
        List.copyOf(why));
  }

  public Figures figures() {
    return heading.figures();
  }

  /** The plan's part; there must be one. */
  public Buying bought() {
    return buying.orElseThrow();
  }
}

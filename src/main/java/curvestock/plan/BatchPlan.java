package curvestock.plan;

import curvestock.bound.InflatedArea;
import curvestock.job.Batch;
import curvestock.layout.Layout;
import curvestock.piece.Demand;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The answer to several jobs whose pieces share sheets.
 *
 * @param plan of all pieces together
 */
public record BatchPlan(Batch batch, Plan plan) {

  /**
   * What falls to one job.
   *
   * @param pieces of it
   * @param area of its pieces in square millimetres, half the spacing around each: what it takes of
   *     the sheets
   * @param part of all pieces' areas, 0 to 1
   * @param cost its part of what is paid for the sheets; the parts add up to the cent
   * @param sheets numbers, from 1, of the sheets that its pieces lie on
   */
  public record Share(
      Batch.Member member, int pieces, double area, double part, Money cost, List<Integer> sheets) {
    public Share {
      sheets = List.copyOf(sheets);
    }
  }

  /** What is written on each piece, see {@link Plan#labels}. */
  public List<List<String>> labels() {
    return plan.labels();
  }

  /** What falls to each job, in their order: the cost by the area that its pieces take. */
  public List<Share> shares() {
    List<Batch.Member> members = batch.members();
    double[] areas = members.stream().mapToDouble(BatchPlan::area).toArray();
    double all = DoubleStream.of(areas).sum();
    long[] costs = split(plan.cost().paid().minorUnits(), areas);
    List<Share> shares = new ArrayList<>();
    for (int i = 0; i < areas.length; i++) {
      Batch.Member member = members.get(i);
      int pieces = member.demands().stream().mapToInt(Demand::count).sum();
      shares.add(
          new Share(
              member, pieces, areas[i], areas[i] / all, new Money(costs[i]), sheetsOf(member)));
    }
    return List.copyOf(shares);
  }

  private static double area(Batch.Member member) {
    return member.demands().stream()
        .mapToDouble(
            demand -> demand.count() * InflatedArea.ofPiece(demand.piece(), member.job().cutting()))
        .sum();
  }

  /** Splits an amount in proportion, what rounding leaves to the largest remainders. */
  static long[] split(long amount, double[] weights) {
    double all = DoubleStream.of(weights).sum();
    long[] parts = new long[weights.length];
    double[] remainders = new double[weights.length];
    long left = amount;
    for (int i = 0; i < weights.length; i++) {
      double exact = amount * (weights[i] / all);
      parts[i] = (long) Math.floor(exact);
      remainders[i] = exact - parts[i];
      left -= parts[i];
    }
    List<Integer> order =
        IntStream.range(0, weights.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -remainders[i]))
            .toList();
    for (int k = 0; k < left; k++) {
      parts[order.get(k % order.size())]++;
    }
    return parts;
  }

  private List<Integer> sheetsOf(Batch.Member member) {
    List<Layout> layouts = plan.layouts();
    return IntStream.range(0, layouts.size())
        .filter(
            i ->
                layouts.get(i).placements().stream()
                    .anyMatch(placement -> member.owns(placement.piece().id())))
        .mapToObj(i -> i + 1)
        .toList();
  }
}

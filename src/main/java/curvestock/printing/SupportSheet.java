package curvestock.printing;

import curvestock.drawing.SvgNumber;
import curvestock.helix.HelixOrder;
import curvestock.helix.build.RodPlan;
import curvestock.helix.build.Station;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Riser;
import curvestock.job.Job;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/** The support table to tick, post by post. */
public final class SupportSheet {

  private SupportSheet() {}

  /** The table as a PDF. */
  public static byte[] pdf(Job job, HelixOrder order) {
    try (PdfBook book = new PdfBook(job.title() + ": support table")) {
      PageFlow flow = new PageFlow(book, job.paper(), false, job.title() + " · support table");
      write(job, order, flow);
      flow.finish();
      return book.bytes();
    }
  }

  private static void write(Job job, HelixOrder order, PageFlow flow) {
    Ruler ruler = new Ruler(job.style());
    Riser riser = order.plan().spec().supports().riser();
    boolean blocks = riser instanceof Riser.WoodBlocks;
    flow.title(job.title() + ": support table");
    if (job.invented()) {
      flow.paragraph("The figures of this job are invented, for demonstration only.");
    }
    flow.paragraph(
        "Stations S1, S2 ... are those of the footprint and of the plan of the helix. Heights are"
            + " measured from the base that the supports stand on. Set the supports of a turn, measure"
            + " the rail's height there, and tick; go on to the next turn when all are ticked.");
    if (blocks) {
      flow.paragraph(
          "A block is cut to the height stated; its upper end slopes with the track. 'Middle' means one"
              + " block under the middle of the roadbed, 'edges' one under each edge,"
              + " 'inner edge' or 'outer edge' one there alone.");
    }
    if (riser instanceof Riser.ThreadedRods rods) {
      rods(flow, ruler, rods, new RodPlan(order.plan().spec(), rods, order.plan().supports()));
    }
    for (Station station : order.plan().stations().all()) {
      List<List<String>> rows = new ArrayList<>();
      for (SupportRow row : order.plan().supports().rows()) {
        if (row.station().equals(station)) {
          rows.add(
              List.of(
                  Integer.toString(row.turn()),
                  row.edges().words(),
                  ruler.of(row.underside()),
                  ruler.of(row.railTop()),
                  ruler.of(standing(order, row)),
                  SvgNumber.of(row.slope() * 100, 2) + "\u00A0%",
                  PageFlow.TICK_BOX));
        }
      }
      if (!rows.isEmpty()) {
        double at = station.places().get(0);
        String bearing = SvgNumber.of(order.plan().line().bearing(at).degrees() % 359.95, 1) + "°";
        flow.heading(station.name() + ", bearing " + bearing);
        flow.table(
            List.of(
                "Turn",
                "supports",
                "underside of plywood",
                "rail top",
                blocks ? "block height" : "under the lower nut",
                "slope",
                "checked"),
            rows);
      }
    }
  }

  /** A block's height; of a rod, where its lower nut sits. */
  private static Length standing(HelixOrder order, SupportRow row) {
    Riser riser = order.plan().spec().supports().riser();
    return riser instanceof Riser.ThreadedRods rods
        ? new RodPlan(order.plan().spec(), rods, order.plan().supports()).lowerNut(row)
        : row.gap().minus(riser.crossPiece());
  }

  /** How the rods are set, and how long they are. */
  private static void rods(PageFlow flow, Ruler ruler, Riser.ThreadedRods rods, RodPlan plan) {
    flow.paragraph(
        "Each rod goes through the base ("
            + ruler.of(rods.base())
            + " thick) with a washer and a nut above and below it, and reaches "
            + ruler.of(plan.belowBaseTop())
            + " below the base's top. At every turn run the lower nut up until its underside is at the"
            + " height stated; washer, roadbed, washer and the upper nut follow.");
    flow.heading("Rods to cut");
    flow.table(
        List.of("Station", "rods", "length of each", "turns", "nuts on each"),
        plan.rods().stream()
            .map(
                each ->
                    List.of(
                        each.station().name(),
                        Integer.toString(each.count()),
                        ruler.of(each.length()),
                        Integer.toString(each.turns()),
                        Integer.toString(each.nutsEach())))
            .toList());
  }
}

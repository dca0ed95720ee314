package curvestock.printing;

import curvestock.drawing.SvgNumber;
import curvestock.helix.HelixOrder;
import curvestock.helix.build.Station;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Riser;
import curvestock.job.Job;
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
                  ruler.of(row.gap().minus(riser.crossPiece())),
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
                blocks ? "block height" : "gap below",
                "slope",
                "checked"),
            rows);
      }
    }
  }
}

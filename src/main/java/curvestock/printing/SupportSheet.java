package curvestock.printing;

import curvestock.answer.Answer;
import curvestock.answer.BenchWords;
import curvestock.answer.Building;
import curvestock.answer.Column;
import curvestock.answer.Figures;
import curvestock.answer.Measure;
import curvestock.answer.Table;
import curvestock.drawing.PaperSize;
import curvestock.drawing.SheetTitle;
import curvestock.helix.build.Station;
import curvestock.helix.spec.Riser;
import curvestock.units.Text;

/** The support table to tick, post by post. */
public final class SupportSheet {

  private static final Column CHECKED = new Column("checked", "Checked", Measure.TEXT);

  private SupportSheet() {}

  /** The table as a PDF. */
  public static byte[] pdf(Answer answer, PaperSize paper, SpareFonts spare) {
    String title = answer.heading().title();
    try (PdfBook book = new PdfBook(title + ": support table", spare)) {
      PageFlow.fill(book, paper, false, title + " · support table", flow -> write(answer, flow));
      return book.bytes();
    }
  }

  private static void write(Answer answer, PageFlow flow) {
    Building helix = answer.building().orElseThrow();
    Figures figures = answer.figures();
    flow.title(answer.heading().title() + ": support table");
    if (answer.heading().invented()) {
      flow.paragraph(SheetTitle.INVENTED_NOTE);
    }
    flow.paragraph(
        "S1, S2 ... and E and X are the supports on the footprint and on the plan of the helix."
            + " Heights are above the base, the surface that the supports stand on. Set one turn, measure up"
            + " to the underside of the plywood at each support, and tick the box. Start the next turn"
            + " when all are ticked.");
    if (helix.plan().spec().supports().riser() instanceof Riser.WoodBlocks) {
      flow.paragraph(
          "Block heights are at the middle of the block; the upper end slopes with the track. 'Edges'"
              + " means two blocks, one under each edge; 'middle', 'inner edge' and 'outer edge' mean one"
              + " block there.");
      BenchWords bench = new BenchWords(helix, figures);
      bench.risers().forEach(words -> flow.paragraph(words + "."));
      bench.blockRemarks().forEach(flow::paragraph);
    }
    boolean rods = helix.plan().spec().supports().riser() instanceof Riser.ThreadedRods;
    if (rods) {
      new BenchWords(helix, figures).setting().ifPresent(flow::paragraph);
      flow.heading(helix.rods().caption());
      flow.table(helix.rods(), figures);
    }
    for (Station station : helix.plan().stations().all()) {
      Table rows = helix.supports().where("station", station.name());
      if (!rows.isEmpty()) {
        flow.heading(
            station.name() + ", bearing " + figures.of(rows.at(0, "bearing"), Measure.ANGLE));
        flow.table(
            (rods
                    ? rows.only("turn", "under", "underside", "railTop", "lowerNut", "slope")
                    : rows.only("turn", "under", "underside", "railTop", "gap", "slope", "block"))
                .with(CHECKED, new Text(PageTable.TICK_BOX)),
            figures);
      }
    }
    if (!helix.blocks().isEmpty()) {
      flow.heading(helix.blocks().caption());
      flow.table(helix.blocks(), figures);
    }
    BenchWords bench = new BenchWords(helix, figures);
    if (!helix.bridges().isEmpty()) {
      flow.heading(helix.bridges().caption());
      flow.table(helix.bridges(), figures);
      bench.bridgeRemarks().forEach(flow::paragraph);
    }
    if (!helix.cuttingList().isEmpty()) {
      flow.heading(bench.boardsTitle());
      bench.boards().forEach(flow::paragraph);
    }
  }
}

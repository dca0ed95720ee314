package curvestock.printing;

import curvestock.answer.Answer;
import curvestock.answer.BenchWords;
import curvestock.answer.Building;
import curvestock.answer.Column;
import curvestock.answer.Figures;
import curvestock.answer.FixingWords;
import curvestock.answer.Measure;
import curvestock.answer.Table;
import curvestock.drawing.PaperSize;
import curvestock.drawing.SheetTitle;
import curvestock.helix.spec.Riser;
import curvestock.units.Text;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The support table to tick, post by post. */
public final class SupportSheet {

  private static final String[] RODS = {
    "station", "bearing", "under", "top", "underside", "lowerNut", "pieces"
  };

  private static final String[] BLOCKS = {
    "station", "bearing", "under", "top", "underside", "gap", "block", "pieces"
  };

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
        "S1, S2 ... and E and X are the supports on the footprint and on the plan of the helix. Heights"
            + " are above the base, the surface that the lowest supports stand on. Build from the bottom"
            + " up, one table after the other: set its supports, lay its pieces, measure up from the base"
            + " to the top of the plywood at each support, put right what is off, and tick the box. Start"
            + " the next table when all are ticked.");
    if (helix.plan().spec().supports().riser() instanceof Riser.WoodBlocks) {
      flow.paragraph(
          "Block heights are at the middle of the block; the table of blocks says what to cut. 'Edges'"
              + " means two blocks, one under each edge; 'middle', 'inner edge' and 'outer edge' mean one"
              + " block there.");
    }
    boolean rods = helix.plan().spec().supports().riser() instanceof Riser.ThreadedRods;
    if (rods) {
      new BenchWords(helix, figures).setting().ifPresent(flow::paragraph);
      flow.heading(helix.rods().caption());
      flow.table(helix.rods(), figures);
    }
    for (String turn : turns(helix.supports())) {
      flow.heading(isRing(turn) ? "Turn " + turn : Figures.capital(turn));
      flow.table(
          helix
              .supports()
              .where("turn", turn)
              .only(columns(rods ? RODS : BLOCKS, turn))
              .with(CHECKED, new Text(PageTable.TICK_BOX)),
          figures);
    }
    BenchWords bench = new BenchWords(helix, figures);
    if (!helix.blocks().isEmpty()) {
      flow.heading(helix.blocks().caption());
      flow.table(helix.blocks(), figures);
      bench.blockRemarks().forEach(words -> flow.paragraph("•  " + words));
      flow.heading(helix.bySupport().caption());
      flow.table(helix.bySupport(), figures);
    }
    if (!helix.bridges().isEmpty()) {
      flow.heading(helix.bridges().caption());
      flow.table(helix.bridges(), figures);
      bench.bridgeRemarks().forEach(flow::paragraph);
    }
    if (!helix.cuttingList().isEmpty()) {
      flow.heading(bench.boardsTitle());
      bench.boards().forEach(flow::paragraph);
    }
    flow.heading("Drilling and fastening");
    new FixingWords(helix, figures).all().forEach(flow::paragraph);
  }

  /** Posts of a lead are found by their distance along it, those of the ring by their bearing. */
  private static String[] columns(String[] all, String turn) {
    return Stream.of(all)
        .map(key -> key.equals("bearing") && !isRing(turn) ? "along" : key)
        .toArray(String[]::new);
  }

  private static boolean isRing(String turn) {
    return turn.matches("[0-9]+");
  }

  /** The leads and turns in the order in which they are built. */
  private static List<String> turns(Table supports) {
    return IntStream.range(0, supports.rows().size())
        .mapToObj(row -> ((Text) supports.at(row, "turn")).words())
        .distinct()
        .toList();
  }
}

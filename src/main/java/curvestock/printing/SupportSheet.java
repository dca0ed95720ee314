package curvestock.printing;

import curvestock.answer.Answer;
import curvestock.answer.AssemblyWords;
import curvestock.answer.BaseWords;
import curvestock.answer.BenchWords;
import curvestock.answer.Building;
import curvestock.answer.Cautions;
import curvestock.answer.Column;
import curvestock.answer.Figures;
import curvestock.answer.FixingWords;
import curvestock.answer.Measure;
import curvestock.answer.Table;
import curvestock.drawing.PaperSize;
import curvestock.drawing.SheetTitle;
import curvestock.helix.build.Station;
import curvestock.helix.build.Stations;
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
    "station", "bearing", "under", "top", "underside", "gap", "block", "braces", "pieces"
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
    flow.paragraph(
        (answer.heading().invented() ? SheetTitle.INVENTED_NOTE + " " : "")
            + where(helix)
            + " The footprint and the plan of the helix show them. Heights are above the base, which the"
            + " lowest supports stand on."
            + BaseWords.pads(helix.order()));
    BenchWords bench = new BenchWords(helix, figures);
    new AssemblyWords(helix, figures).order().forEach(words -> flow.paragraph("•  " + words));
    String rounding = bench.rounding().orElse("");
    if (helix.plan().spec().supports().riser() instanceof Riser.WoodBlocks) {
      flow.paragraph(
          (rounding
                  + " Block heights are measured at the middle of the block; cut the blocks by the table of riser"
                  + " blocks. Edges: two blocks, one under each edge. Middle, inner edge or outer edge: one block,"
                  + " there only. From the ring: the distance along the lead, measured from the end of the ring.")
              .strip());
    } else if (!rounding.isEmpty()) {
      flow.paragraph(rounding);
    }
    boolean rods = helix.plan().spec().supports().riser() instanceof Riser.ThreadedRods;
    if (rods) {
      bench.setting().ifPresent(flow::paragraph);
      flow.heading(helix.rods().caption());
      flow.caution(Cautions.RODS.words());
      flow.table(helix.rods(), figures);
    }
    for (String turn : turns(helix.supports())) {
      flow.heading(isRing(turn) ? "Turn " + turn : Figures.capital(turn));
      flow.table(
          helix
              .supports()
              .where("turn", turn)
              .only(columns(rods ? RODS : BLOCKS, helix.supports().where("turn", turn), turn))
              .with(CHECKED, new Text(PageTable.TICK_BOX)),
          figures);
    }
    if (!helix.blocks().isEmpty()) {
      flow.heading(helix.blocks().caption());
      flow.caution(Cautions.SHORT_BLOCKS);
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
  private static String[] columns(String[] all, Table rows, String turn) {
    return Stream.of(all)
        .filter(key -> !key.equals("braces") || hasBraces(rows))
        .map(key -> key.equals("bearing") && !isRing(turn) ? "along" : key)
        .toArray(String[]::new);
  }

  private static boolean hasBraces(Table rows) {
    return IntStream.range(0, rows.rows().size())
        .anyMatch(row -> !((Text) rows.at(row, "braces")).words().isEmpty());
  }

  private static boolean isRing(String turn) {
    return turn.matches("[0-9]+");
  }

  /** Which supports there are, by their names. */
  private static String where(Building helix) {
    Stations stations = helix.plan().stations();
    List<String> ring = stations.ring().stream().map(Station::name).toList();
    String named = named(ring) + " are the supports around the ring";
    named += stations.entry().isEmpty() ? "" : ", " + under(stations.entry()) + " the entry lead";
    named += stations.exit().isEmpty() ? "" : ", " + under(stations.exit()) + " the exit lead";
    return named + ".";
  }

  private static String under(List<Station> stations) {
    List<String> names = stations.stream().map(Station::name).toList();
    return named(names) + (names.size() == 1 ? " is" : " are") + " under";
  }

  private static String named(List<String> names) {
    return names.size() == 1 ? names.get(0) : names.get(0) + " to " + names.get(names.size() - 1);
  }

  /** The leads and turns in the order in which they are built. */
  private static List<String> turns(Table supports) {
    return IntStream.range(0, supports.rows().size())
        .mapToObj(row -> ((Text) supports.at(row, "turn")).words())
        .distinct()
        .toList();
  }
}

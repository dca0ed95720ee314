package curvestock.printing;

import curvestock.answer.Cautions;
import curvestock.drawing.PaperSize;
import curvestock.drawing.SheetTitle;
import curvestock.helix.HelixOrder;
import curvestock.helix.build.PieceKind;
import curvestock.job.Job;
import curvestock.piece.Demand;
import curvestock.piece.Strip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The full-size templates of a job, one document for each distinct piece. */
public final class PaperTemplates {

  private PaperTemplates() {}

  /**
   * Templates by the names of their files. Plain strips have none: two lengths say it all.
   *
   * @param size the paper to tile them on
   */
  public static SortedMap<String, byte[]> of(Job job, PaperSize size, SpareFonts spare) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    int number = 1;
    for (PaperTemplate template : templates(job)) {
      String safe = template.id().replaceAll("[^A-Za-z0-9_-]", "-");
      String name = String.format(java.util.Locale.ROOT, "patterns/%02d-%s.pdf", number, safe);
      files.put(name, pdf(template, job, size, spare));
      number++;
    }
    return files;
  }

  static List<PaperTemplate> templates(Job job) {
    List<PaperTemplate> templates = new ArrayList<>();
    for (Demand demand : job.demands()) {
      Optional<PieceKind> kind = job.structure().flatMap(order -> kind(order, demand.piece().id()));
      if (kind.isPresent()) {
        templates.add(
            BedTemplate.of(job.structure().orElseThrow().plan(), kind.get(), job.style()));
      } else if (!(demand.piece().shape() instanceof Strip)) {
        templates.add(PlainTemplate.of(demand, job.style()));
      }
    }
    return templates;
  }

  private static Optional<PieceKind> kind(HelixOrder order, String id) {
    return order.plan().roadbed().kinds().stream().filter(k -> k.id().equals(id)).findFirst();
  }

  static byte[] pdf(PaperTemplate template, Job job, PaperSize size, SpareFonts spare) {
    String title = "Pattern " + template.title();
    List<String> notes = new ArrayList<>(template.notes());
    notes.add(Cautions.AT_THE_SAW);
    notes.add(
        "Stick the pattern to the plywood, or prick its corners and lines through."
            + (template.count() > 1
                ? " Cut one piece and try it before the others: it can be the template for them."
                : ""));
    if (job.invented()) {
      notes.add(SheetTitle.INVENTED_NOTE);
    }
    try (PdfBook book = new PdfBook(job.title() + ": " + title, spare)) {
      new TiledDrawing(job.title() + " · " + title, notes, template.drawing(), size).addTo(book);
      return book.bytes();
    }
  }
}

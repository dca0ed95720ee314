package curvestock.printing;

import curvestock.answer.Cautions;
import curvestock.answer.PivotWords;
import curvestock.drawing.Ink;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.SheetTitle;
import curvestock.geometry.Box;
import curvestock.geometry.Point;
import curvestock.handwork.Trammel;
import curvestock.handwork.Trammel.Hole;
import curvestock.handwork.Trammel.Keep;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.HoleRule;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.Riser;
import curvestock.job.Job;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Where to drill the holes of each trammel that a job's arcs need, with a sketch. */
public final class TrammelSheet {

  private static final Pen STICK = Pen.of(Ink.CUT, 0.3);
  private static final Pen MEASURE = Pen.of(Ink.CUT, 0.15);
  private static final double SAME = 1e-3;

  /** A bit of 1/8 in or 3 mm, in millimetres. */
  private static final double THIN = 3.2;

  private final Job job;
  private final Ruler ruler;

  private TrammelSheet(Job job) {
    this.job = job;
    this.ruler = Ruler.forHand(job.style());
  }

  /** The sheet; nothing if no piece of the job is swung about a pivot. */
  public static Optional<byte[]> pdf(Job job, SpareFonts spare) {
    List<Trammel> trammels = trammels(job);
    if (trammels.isEmpty()) {
      return Optional.empty();
    }
    try (PdfBook book = new PdfBook(job.title() + ": trammel", spare)) {
      PageFlow.fill(
          book,
          job.paper(),
          false,
          job.title() + " · trammel",
          flow -> new TrammelSheet(job).write(trammels, flow));
      return Optional.of(book.bytes());
    }
  }

  static List<Trammel> trammels(Job job) {
    List<Trammel> trammels = new ArrayList<>();
    job.structure().ifPresent(order -> trammels.add(ofHelix(order.plan())));
    for (Demand demand : job.demands()) {
      if (demand.piece().shape().blank() instanceof AnnularSector sector
          && trammels.stream().noneMatch(known -> draws(known, sector))) {
        List<Hole> holes = new ArrayList<>();
        if (sector.innerRadius().millimetres() > 0) {
          holes.add(new Hole("inner edge", sector.innerRadius(), Keep.OUTSIDE));
        }
        holes.add(new Hole("centre line", sector.radius(), Keep.BOTH));
        holes.add(new Hole("outer edge", sector.outerRadius(), Keep.INSIDE));
        trammels.add(new Trammel(demand.piece().name(), holes));
      }
    }
    return trammels;
  }

  private static Trammel ofHelix(HelixPlan plan) {
    GroundPlan ground = plan.spec().ground();
    List<Hole> holes = new ArrayList<>();
    holes.add(new Hole("inner edge", ground.innerEdge(), Keep.OUTSIDE));
    holes.add(new Hole("outer edge", ground.outerEdge(), Keep.INSIDE));
    List<Length> tracks = ground.trackRadii();
    for (int i = 0; i < tracks.size(); i++) {
      String name = tracks.size() == 1 ? "track" : i == 0 ? "inner track" : "outer track";
      holes.add(new Hole(name + ", centre line", tracks.get(i), Keep.BOTH));
    }
    if (plan.spec().supports().riser() instanceof Riser.ThreadedRods rods) {
      Length offset = new HoleRule(plan.spec(), plan.climb()).offset(rods);
      holes.add(new Hole("inner rods", ground.bedRadius().minus(offset), Keep.BOTH));
      holes.add(new Hole("outer rods", ground.bedRadius().plus(offset), Keep.BOTH));
    }
    return new Trammel("roadbed of the helix", holes, plan.spec().hasEars());
  }

  private static boolean draws(Trammel known, AnnularSector sector) {
    return has(known, sector.innerRadius()) && has(known, sector.outerRadius());
  }

  private static boolean has(Trammel known, Length radius) {
    return known.holes().stream()
        .anyMatch(hole -> Math.abs(hole.radius().minus(radius).millimetres()) < SAME);
  }

  private void write(List<Trammel> trammels, PageFlow flow) {
    flow.title(job.title() + ": trammel");
    if (job.invented()) {
      flow.paragraph(SheetTitle.INVENTED_NOTE);
    }
    flow.paragraph(
        "A trammel is a stick that swings on a pivot, such as a nail. Drill the pivot hole first and"
            + " measure all the others from it, never from hole to hole: errors add up. Drill the pencil"
            + " holes to fit your pencil's point. Screw the router on with the centre of its bit at the"
            + " distance in the last column.");
    flow.notice(
        "Before you rout or saw: wear eye and hearing protection and a dust mask, clamp the work, and"
            + " unplug the tool before you change its bit or blade.");
    Length bit = job.cutting().kerf();
    if (bit.millimetres() <= THIN) {
      flow.notice(Cautions.THIN_BIT);
    }
    for (Trammel trammel : trammels) {
      flow.heading("For the " + trammel.name());
      table(trammel, bit, flow);
      flow.figure(16 + 7.0 * trammel.holes().size(), (page, room) -> sketch(trammel, page, room));
      flow.paragraph(
          "From the pivot the stick must be at least %s long%s. Check that it swings clear all round before you cut."
              .formatted(ruler.of(trammel.reach(bit)), routed(trammel, bit)));
      if (trammel.ears()) {
        flow.notice(PivotWords.STOP_AT_EARS);
      }
    }
    flow.paragraph(
        "The last column is for a bit of %s, the kerf of this job: for an outer edge set the bit's centre half its diameter farther from the pivot, for an inner edge half its diameter nearer. For another bit, add or take off half of its own diameter. A bit wider than %s would cut into the neighbouring pieces. Lay scrap under the sheet, take several shallow passes, never climb-cut, and hold the pivot down so that it cannot lift."
            .formatted(ruler.given(bit), ruler.given(bit)));
    flow.paragraph(
        "For a jigsaw, draw the lines with the pencil and saw on the waste side. Try the trammel on"
            + " scrap first: draw half a circle and measure straight across. It must be twice the"
            + " radius.");
    flow.paragraph(PivotWords.OFF_THE_SHEET + " " + PivotWords.ON_GOOD_WOOD);
  }

  /** Where the bit is, if that is not the far end of the stick. */
  private String routed(Trammel trammel, Length bit) {
    Length cut = trammel.cut(bit);
    return cut.equals(trammel.reach(bit))
        ? ", where the router bit is, plus half your router's base"
        : ", and reach half your router's base beyond the bit at " + ruler.of(cut);
  }

  private void table(Trammel trammel, Length bit, PageFlow flow) {
    List<String> head =
        List.of("Line", "Pencil hole", "Exact radius", "Rounding", "Centre of the router bit");
    List<List<String>> rows = new ArrayList<>();
    for (Hole hole : trammel.holes()) {
      rows.add(
          List.of(
              hole.line(),
              ruler.of(hole.radius()),
              exact(hole.radius()),
              offBy(hole.radius()),
              hole.keep() == Keep.BOTH ? "not cut" : ruler.of(hole.bitMiddle(bit))));
    }
    flow.grid(head, rows);
  }

  private String exact(Length radius) {
    String inches = String.format(Locale.ROOT, "%.3f in", radius.inches());
    String metric = String.format(Locale.ROOT, "%.1f mm", radius.millimetres());
    return job.style().unit().isImperial() ? inches : metric;
  }

  /** How much what is printed differs from the radius. */
  private String offBy(Length radius) {
    Length off = ruler.rounded(radius).minus(radius);
    boolean imperial = job.style().unit().isImperial();
    double value = imperial ? off.inches() : off.millimetres();
    String text = String.format(Locale.ROOT, imperial ? "%+.3f\u00A0in" : "%+.2f\u00A0mm", value);
    return text.matches("[+-]0\\.0+\\D.*") ? "none" : text;
  }

  /** The stick to scale along its length, each hole measured from the pivot. */
  private void sketch(Trammel trammel, Paper page, Box room) {
    double left = room.minX() + 6;
    double scale = (room.width() - 14) / trammel.reach().millimetres();
    double y = room.maxY() - 7;
    double right = left + trammel.reach().millimetres() * scale + 6;
    page.polygon(
        List.of(
            new Point(left - 5, y - 3),
            new Point(right, y - 3),
            new Point(right, y + 3),
            new Point(left - 5, y + 3),
            new Point(left - 5, y - 3)),
        Ink.PIECE,
        STICK);
    page.circle(new Point(left, y), 1.2, Ink.CUT, STICK);
    page.text("pivot", new Point(left - 5, y + 5.5), 2.8, Anchor.START, true);
    double down = y - 8;
    for (Hole hole : trammel.holes()) {
      double x = left + hole.radius().millimetres() * scale;
      page.circle(new Point(x, y), 0.8, "#ffffff", STICK);
      page.line(new Point(x, y - 0.8), new Point(x, down - 1.5), MEASURE);
      page.line(new Point(left, down), new Point(x, down), MEASURE);
      page.line(new Point(left, down - 1.5), new Point(left, down + 1.5), MEASURE);
      page.text(
          hole.line() + ": " + ruler.of(hole.radius()),
          new Point(left + 12, down + 2.6),
          3,
          Anchor.START,
          false);
      down -= 7;
    }
    page.line(new Point(left, y - 1.2), new Point(left, down + 7), MEASURE);
  }
}

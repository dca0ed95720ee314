package curvestock.drawing;

import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.helix.HelixPlan;
import curvestock.helix.spec.EndPlan;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How a helix begins and ends, seen from the side: the straight lead-in, where the climb begins
 * outside the ring, and the vertical curve between two grades. Heights are drawn too tall.
 */
public final class HelixEndsDrawing {

  /** Of a panel, in millimetres of paper. */
  private static final double WIDTH = 180;

  private static final double HEIGHT = 34;
  private static final double LETTERS = 3;
  private static final double BORDER = 5;

  private static final Pen ROADBED = Pen.of(Ink.CUT, 0.5);
  private static final Pen CURVE = Pen.of(Ink.MARK, 1.1);
  private static final Pen LEVEL = new Pen(Ink.SHEET, 0.25, "2 1.5");
  private static final Pen MEASURE = Pen.of(Ink.MARK, 0.25);
  private static final Pen RING = new Pen(Ink.CUT, 0.35, "4 1.5");

  private final HelixPlan plan;
  private final HelixTitle title;
  private final Paper paper = new Paper();

  private HelixEndsDrawing(HelixPlan plan, HelixTitle title) {
    this.plan = plan;
    this.title = title;
  }

  /** The drawing as SVG. */
  public static String svg(HelixPlan plan, HelixTitle title) {
    HelixEndsDrawing drawing = new HelixEndsDrawing(plan, title);
    drawing.draw();
    drawing.words();
    return drawing.paper.svg(
        title.job() + ", entry and exit of the helix",
        "One user unit is one millimetre of paper; heights are exaggerated.",
        BORDER);
  }

  /** The drawing without its words; its letters are {@value #LETTERS} mm high. */
  public static Paper figure(HelixPlan plan, HelixTitle title) {
    HelixEndsDrawing drawing = new HelixEndsDrawing(plan, title);
    drawing.draw();
    return drawing.paper;
  }

  private void draw() {
    double ring = plan.climb().ringLength();
    EndPlan bottom = plan.spec().bottom();
    EndPlan top = plan.spec().top();
    double low = -bottom.climbLead().millimetres();
    double high = ring + top.climbLead().millimetres();
    new Panel(
            "Entry, bottom",
            0,
            -bottom.leadIn().millimetres(),
            low,
            low + bottom.verticalCurve().millimetres(),
            0)
        .draw();
    new Panel(
            "Exit, top",
            ring,
            ring + top.leadIn().millimetres(),
            high,
            high - top.verticalCurve().millimetres(),
            -HEIGHT - 29)
        .draw();
  }

  private void words() {
    List<String> paragraphs = new ArrayList<>();
    paragraphs.add(
        title.job()
            + ": entry and exit from the side, along the track; heights exaggerated. Lead: straight"
            + " roadbed, cut in one piece with the first or last segment. Climb lead: the length outside the ring that"
            + " slopes. Vertical curve: where one grade blends into the next, so that"
            + " couplers do not lift and pilots do not touch the rail.");
    if (title.invented()) {
      paragraphs.add(SheetTitle.INVENTED_NOTE);
    }
    paper.paragraphs(paragraphs, LETTERS);
  }

  private String length(double millimetres) {
    return title.style().formatMade(Length.ofMillimetres(Math.abs(millimetres)));
  }

  /** One end of the helix; places are distances along the track. */
  private final class Panel {

    private final String name;
    private final double ring;
    private final double leadEnd;
    private final double outer;
    private final double inner;
    private final double down;
    private final double from;
    private final double to;
    private final double lowest;
    private final double stretch;

    /**
     * An end.
     *
     * @param ring where the ring begins or ends
     * @param leadEnd where the straight roadbed does
     * @param outer end of the vertical curve, outside
     * @param inner its other end
     * @param down y of the panel's lower side
     */
    Panel(String name, double ring, double leadEnd, double outer, double inner, double down) {
      this.name = name;
      this.ring = ring;
      this.leadEnd = leadEnd;
      this.outer = outer;
      this.inner = inner;
      this.down = down;
      double least = Math.min(Math.min(leadEnd, outer), Math.min(inner, ring));
      double most = Math.max(Math.max(leadEnd, outer), Math.max(inner, ring));
      double more = Math.max((most - least) * 0.15, 1);
      from = least - more;
      to = most + more;
      lowest = Math.min(height(from), height(to));
      double rise = Math.max(Math.abs(height(to) - height(from)), 1);
      stretch = 0.6 * HEIGHT / (rise * WIDTH / (to - from));
    }

    private double height(double s) {
      return plan.profile().heightAt(s);
    }

    private double x(double s) {
      return (s - from) * WIDTH / (to - from);
    }

    private Point at(double s) {
      return new Point(x(s), down + 4 + (height(s) - lowest) * stretch * WIDTH / (to - from));
    }

    void draw() {
      paper.text(name, new Point(0, down + HEIGHT + 5), LETTERS * 1.2, Anchor.START, true);
      String times = String.format(Locale.ROOT, "heights exaggerated %.0f times", stretch);
      paper.text(times, new Point(WIDTH, down + HEIGHT + 5), LETTERS, Anchor.END, false);
      double level = at(outer).y();
      paper.line(new Point(0, level), new Point(WIDTH, level), LEVEL);
      stroke(from, to, ROADBED);
      stroke(Math.min(outer, inner), Math.max(outer, inner), CURVE);
      paper.line(new Point(x(ring), down), new Point(x(ring), down + HEIGHT), RING);
      boolean entry = leadEnd <= ring;
      paper.text(
          entry ? "ring ►" : "◄ ring",
          new Point(x(ring) + (entry ? 1.5 : -1.5), down + HEIGHT - 1),
          LETTERS,
          entry ? Anchor.START : Anchor.END,
          false);
      grade(entry ? from : to, outer);
      grade(entry ? to : from, inner);
      measure(leadEnd, ring, "lead", 0);
      measure(outer, ring, "climb lead", 1);
      measure(outer, inner, "vertical curve", 2);
    }

    private void stroke(double first, double last, Pen pen) {
      int steps = 60;
      List<Edge> edges = new ArrayList<>();
      for (int i = 0; i < steps; i++) {
        double a = first + (last - first) * i / steps;
        double b = first + (last - first) * (i + 1) / steps;
        edges.add(new Segment(at(a), at(b)));
      }
      paper.line(edges, pen);
    }

    /** The slope's words between two places, above the line. */
    private void grade(double a, double b) {
      double middle = (a + b) / 2;
      double percent = 100 * plan.profile().slopeAt(middle);
      String words =
          Math.abs(percent) < 0.005 ? "level" : String.format(Locale.ROOT, "%.2f %%", percent);
      paper.text(words, at(middle).plus(new Point(0, 4)), LETTERS, Anchor.MIDDLE, false);
    }

    private void measure(double a, double b, String what, int row) {
      double y = down - 4 - 6 * row;
      String words = what + " " + length(b - a);
      if (Math.abs(b - a) < 0.05) {
        words = "no " + what;
      }
      double left = Math.min(x(a), x(b));
      double right = Math.max(x(a), x(b));
      paper.line(new Point(left, y), new Point(right, y), MEASURE);
      for (double end : new double[] {left, right}) {
        paper.line(new Point(end, y - 1.2), new Point(end, y + 1.2), MEASURE);
      }
      boolean after = right + LETTERS * TextWidth.ems(words) < WIDTH + 20;
      double stand = after ? right + 2 : left - 2;
      paper.text(words, new Point(stand, y), LETTERS, after ? Anchor.START : Anchor.END, false);
    }
  }
}

package curvestock.printing;

import curvestock.answer.BenchWords;
import curvestock.answer.Figures;
import curvestock.answer.HalfLapWords;
import curvestock.answer.HandCuts;
import curvestock.answer.PivotWords;
import curvestock.drawing.SheetTitle;
import curvestock.geometry.Point;
import curvestock.handwork.ArcMark;
import curvestock.handwork.CuttingOrder.LostPivot;
import curvestock.handwork.PieceMarks;
import curvestock.handwork.PivotPlace;
import curvestock.handwork.PivotPlace.OffSheet;
import curvestock.handwork.PivotPlace.OnKept;
import curvestock.handwork.PivotPlace.OnPiece;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.piece.Piece;
import curvestock.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How to mark every piece on its sheet by hand and in what order to cut: a small map, coordinates
 * of corners and pivots from the sheet's lower left corner, and a way without pivots.
 */
public final class MarkingSheets {

  /** Of more corners only some are given by their places, the others by distances from those. */
  static final int MOST_CORNERS = 8;

  /**
   * The last order of cutting, if its steps are so few, is kept on one page; room in millimetres.
   */
  private static final int FEW_STEPS = 6;

  private static final double ROOM_FOR_FEW_STEPS = 75;

  private static final double SAME = 1e-3;

  /** Columns of corners in one table. */
  private static final int CORNERS_A_TABLE = 4;

  private final Plan plan;
  private final Job job;
  private final Ruler ruler;
  private final PageFlow flow;
  private final ShapeMarks shapes;

  private MarkingSheets(Plan plan, PageFlow flow) {
    this.plan = plan;
    this.job = plan.job();
    this.ruler = Ruler.forHand(job.style());
    this.flow = flow;
    this.shapes = new ShapeMarks(flow, job.style());
  }

  /** All sheets of the plan. */
  public static byte[] pdf(Plan plan, SpareFonts spare) {
    Job job = plan.job();
    String footer = job.title() + " · marking out by hand";
    // The same however often the pages are laid out.
    List<HandCuts> all = HandCuts.of(plan);
    try (PdfBook book = new PdfBook(job.title() + ": marking out by hand", spare)) {
      PageFlow.fill(
          book,
          job.paper(),
          true,
          footer,
          flow -> {
            MarkingSheets sheets = new MarkingSheets(plan, flow);
            for (int i = 0; i < all.size(); i++) {
              sheets.sheet(i, all.get(i));
            }
          });
      return book.bytes();
    }
  }

  private void sheet(int index, HandCuts cuts) {
    Layout layout = plan.layouts().get(index);
    List<String> labels = plan.labels().get(index);
    List<PieceMarks> marks = cuts.marks();
    flow.newPart();
    flow.title(job.title() + ": marking out sheet " + (index + 1) + " of " + plan.layouts().size());
    flow.paragraph(
        layout.sheet().name()
            + ", "
            + ruler.of(layout.sheet().length())
            + " × "
            + ruler.of(layout.sheet().width())
            + (job.invented() ? ". " + SheetTitle.INVENTED_NOTE : ".")
            + " Measure everything from the lower left corner (0,0) of the map: x to the right along the"
            + " lower edge, y up along the left edge. First check that corner with the 3-4-5 rule. Lengths"
            + " are in "
            + words(ruler.unit())
            + ", each rounded to the nearest "
            + ruler.nearest()
            + ", so sums can be off by that much. On the map, numbers are pieces, and A, B, C ... are their corners, counter-clockwise round each piece. Small crosses are"
            + " pivots, each with its piece's number."
            + (marks.stream().anyMatch(mark -> mark.corners().size() > MOST_CORNERS)
                ? " A piece with more than %s corners has its letters on a larger picture of its own below."
                    .formatted(MOST_CORNERS)
                : "")
            + (cuts.order().rips().isEmpty()
                ? ""
                : " Dashed lines are straight cuts, numbered in order.")
            + HandCuts.shortNames(List.of(cuts)));
    double high = SheetMap.height(layout, flow.textWidth(), flow.room() - 6);
    flow.figure(
        high,
        (page, room) -> new SheetMap(layout, labels, page, room).draw(marks, cuts.order().rips()));
    flow.heading("Sheet " + (index + 1) + ": where to mark each piece");
    flow.paragraph(
        "Mark the corners, swing the arcs from the pivot, and draw what is straight along a straightedge. Draw every arc on the sheet before the"
            + " first cut, because some pivots are on other pieces. M is the point halfway along the outer"
            + " arc, or along the longest if there are several. With the corners and M you can line up a"
            + " template; no pivot needed."
            + (marks.stream()
                    .map(mark -> mark.placement().outline().outer().edges())
                    .anyMatch(SmoothTicks::has)
                ? " " + SmoothTicks.NOTE
                : ""));
    flow.paragraph(pivotsOnGoodWood(marks));
    Map<Piece, List<PieceMarks>> kinds = new LinkedHashMap<>();
    marks.forEach(
        mark -> kinds.computeIfAbsent(mark.placement().piece(), k -> new ArrayList<>()).add(mark));
    List<LostPivot> lost = cuts.order().lost();
    kinds.forEach((piece, same) -> places(piece, same, labels, lost, index + 1));
    flow.heading("Sheet " + (index + 1) + ": check measurements, and arcs drawn without a pivot");
    kinds.forEach((piece, same) -> shapes.write(piece, same.get(0), index + 1));
    if (index == 0) {
      template();
    }
    order(index, cuts);
  }

  /** How many pivots would leave a hole in wood that somebody wants, and what to do; or none. */
  private static String pivotsOnGoodWood(List<PieceMarks> marks) {
    List<ArcMark> swung =
        marks.stream().filter(PieceMarks::isSwung).flatMap(mark -> mark.pivots().stream()).toList();
    long marked = swung.stream().filter(arc -> arc.place().isOnWoodToKeep()).count();
    return marked == 0
        ? "No pivot lands on wood you keep."
        : "%s on a piece or an offcut you keep. Do not drive a pin there: %s Or draw the piece that belongs to this pivot around its template instead."
            .formatted(lands(marked, swung.size()), PivotWords.PAD);
  }

  private static String lands(long marked, int all) {
    if (all == 1) {
      return "The pivot lands";
    }
    return "%s of the %s pivots %s".formatted(marked, all, marked == 1 ? "lands" : "land");
  }

  private static String words(String unit) {
    return switch (unit) {
      case "in" -> "inches";
      case "mm" -> "millimetres";
      case "cm" -> "centimetres";
      default -> unit;
    };
  }

  // Places.

  private void places(
      Piece piece, List<PieceMarks> same, List<String> labels, List<LostPivot> lost, int sheet) {
    PieceMarks first = same.get(0);
    int corners = first.corners().size();
    boolean swung = first.isSwung();
    flow.heading(piece.id() + ", " + piece.name());
    if (swung) {
      for (int p = 0; p < first.pivots().size(); p++) {
        pivots(same, labels, p, lost);
      }
    } else {
      flow.lead(
          "This outline has "
              + first.pivots().size()
              + " different centres: use its full-size pattern.");
    }
    boolean many = corners > MOST_CORNERS;
    List<Integer> placing = first.placing(many ? CORNERS_A_TABLE : corners);
    for (int from = 0; from < placing.size(); from += CORNERS_A_TABLE) {
      int to = Math.min(placing.size(), from + CORNERS_A_TABLE);
      corners(same, labels, placing.subList(from, to), to == placing.size());
    }
    HoleMarks marks = new HoleMarks(flow, ruler);
    if (many) {
      shapes.picture(piece, first, sheet);
      marks.otherCorners(first, placing);
    }
    marks.write(same, labels);
  }

  private void pivots(List<PieceMarks> same, List<String> labels, int which, List<LostPivot> lost) {
    int of = same.get(0).pivots().size();
    List<String> head =
        List.of(
            "Piece",
            (of > 1 ? "pivot " + (which + 1) : "pivot") + " x (" + ruler.unit() + ")",
            "y (" + ruler.unit() + ")",
            "radii (" + ruler.unit() + ")",
            "where the pivot is");
    List<List<String>> rows = new ArrayList<>();
    for (PieceMarks mark : same) {
      ArcMark arc = mark.pivots().get(which);
      String radii =
          mark.arcs().stream()
              .filter(a -> a.pivot().distance(arc.pivot()) < 1e-3)
              .map(a -> ruler.number(a.radius()))
              .distinct()
              .collect(Collectors.joining(" and "));
      rows.add(
          List.of(
              labels.get(mark.index()),
              ruler.number(arc.pivot().x()),
              ruler.number(arc.pivot().y()),
              radii,
              place(mark, arc.place(), labels) + routed(mark, arc, lost)));
    }
    flow.grid(head, rows);
  }

  /** What is otherwise when the piece is routed instead of drawn: {@link PivotWords#toRout}. */
  private static String routed(PieceMarks mark, ArcMark arc, List<LostPivot> lost) {
    return lost.stream()
        .filter(each -> each.piece() == mark.index())
        .filter(each -> each.arc().pivot().distance(arc.pivot()) < 1e-3)
        .findFirst()
        .map(each -> "; " + PivotWords.toRout(each.why()))
        .orElse("");
  }

  private String place(PieceMarks mark, PivotPlace place, List<String> labels) {
    if (place instanceof OnPiece on) {
      return on.index() == mark.index()
          ? "on the piece itself: pad it"
          : "on piece " + labels.get(on.index()) + ": pad it";
    }
    if (place instanceof OnKept) {
      return "on the offcut to keep: pad it";
    }
    if (place instanceof OffSheet off) {
      String beyond = ruler.of(off.beyond());
      return switch (off.side()) {
        case LEFT -> "outside the sheet, " + beyond + " to the left: clamp scrap there";
        case RIGHT -> "outside the sheet, " + beyond + " to the right: clamp scrap there";
        case BELOW -> "outside the sheet, " + beyond + " below: clamp scrap there";
        case ABOVE -> "outside the sheet, " + beyond + " above: clamp scrap there";
        case ASKEW -> "outside the wood, " + beyond + " from its edge: clamp scrap there";
      };
    }
    return "on waste";
  }

  private void corners(
      List<PieceMarks> same, List<String> labels, List<Integer> which, boolean last) {
    List<String> head = new ArrayList<>(List.of("Piece"));
    for (int i : which) {
      head.add(PieceMarks.letter(i) + " x (" + ruler.unit() + ")");
      head.add("y (" + ruler.unit() + ")");
    }
    PieceMarks first = same.get(0);
    boolean middle = last && !first.arcs().isEmpty() && first.corners().size() <= MOST_CORNERS;
    if (middle) {
      head.add("M x (" + ruler.unit() + ")");
      head.add("y (" + ruler.unit() + ")");
    }
    List<List<String>> rows = new ArrayList<>();
    for (PieceMarks mark : same) {
      List<String> row = new ArrayList<>(List.of(labels.get(mark.index())));
      for (int i : which) {
        add(row, mark.corners().get(i));
      }
      if (middle) {
        add(row, widest(mark).middle());
      }
      rows.add(row);
    }
    flow.grid(head, rows);
  }

  /** The longest arc of the outer edge. */
  private static ArcMark widest(PieceMarks mark) {
    double outer = mark.arcs().stream().mapToDouble(ArcMark::radius).max().orElseThrow();
    return mark.arcs().stream()
        .filter(arc -> arc.radius() > outer - SAME)
        .max(Comparator.comparingDouble(ArcMark::sweep))
        .orElseThrow();
  }

  private void add(List<String> row, Point point) {
    row.add(ruler.number(point.x()));
    row.add(ruler.number(point.y()));
  }

  private void template() {
    flow.paragraph(
        "There is an easier way than marking out every piece: cut one of each kind from its full-size"
            + " pattern, as exactly as you can, and keep it as the template. For each piece, mark its"
            + " corners and M on the sheet, line the template up with them and draw around it. Cut outside"
            + " the line, and once the piece is out of the sheet, trim it to the template with a bearing bit if you have one. Do not saw thick"
            + " stacks: the blade wanders.");
  }

  // Order.

  private void order(int index, HandCuts cuts) {
    Figures figures = Figures.of(job);
    List<String> steps =
        Stream.of(cuts.cuts(figures), cuts.boards(figures), cuts.pivots(figures))
            .flatMap(List::stream)
            .toList();
    if (index == plan.layouts().size() - 1
        && steps.size() <= FEW_STEPS
        && flow.room() < ROOM_FOR_FEW_STEPS) {
      flow.newPart();
    }
    flow.heading("Sheet " + (index + 1) + ": order of cutting");
    flow.paragraph(
        "Wear eye and hearing protection and a dust mask, and use extraction; unplug before changing a"
            + " blade. Support the whole sheet on scrap boards across sawhorses, on both sides of every"
            + " straight cut, so that neither part can drop or pinch the blade; for curves move the boards as"
            + " you go. Make straight cuts with a circular saw"
            + " along a clamped guide. Cut curves with a jigsaw, or with a router on a trammel in several"
            + " shallow passes.");
    steps.forEach(flow::paragraph);
    boolean drilled = cuts.marks().stream().anyMatch(mark -> !mark.holes().isEmpty());
    flow.paragraph(
        BenchWords.NUMBER
            + " "
            + BenchWords.UP
            + (drilled ? " Drill its holes." : "")
            + " Drill a hole in the waste to start the blade. Saw on the waste side of the line, or midway where two pieces are only a kerf apart: first the"
            + " inner edge, while the piece is still firm in the sheet, then the outer edge, and the ends"
            + " last. Never hold a small piece by hand: clamp it.");
    if (!cuts.laps().isEmpty()) {
      flow.heading("Sheet " + (index + 1) + ": half-laps");
      HalfLapWords.told(cuts.laps()).forEach(flow::paragraph);
      HalfLapWords.BY_HAND.forEach(flow::paragraph);
    }
  }
}

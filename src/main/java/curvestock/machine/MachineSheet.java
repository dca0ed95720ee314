package curvestock.machine;

import curvestock.check.CutForm;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.OutlineOffset;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup.Letters;
import curvestock.machine.MachineSetup.Tabs;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All that a machine does on one sheet, in its order.
 *
 * @param layout where the pieces lie
 * @param setup how the files are written
 * @param contours what is cut, in cutting order
 * @param marks centre lines, and what else is to be drawn on the pieces
 * @param ticks marks beside the outlines where tabs are proposed
 * @param labels the pieces' numbers
 * @param travelAsLaidOut the way with the tool lifted if the pieces were cut in the layout's order,
 *     in millimetres
 * @param travel the same in cutting order
 * @param tabless pieces, by number, that have fewer tabs than wanted, for want of a long side
 * @param machining what else is done on the sheet
 */
public record MachineSheet(
    Layout layout,
    MachineSetup setup,
    List<Contour> contours,
    List<List<Edge>> marks,
    List<List<Edge>> ticks,
    List<Engraving> labels,
    double travelAsLaidOut,
    double travel,
    List<Integer> tabless,
    Machining machining) {

  /** Ticks stand off the outline by this, in millimetres. */
  private static final double TICK_OFF = 0.5;

  private static final double TICK = 2;

  /** Copies the lists. */
  public MachineSheet {
    contours = List.copyOf(contours);
    marks = marks.stream().map(List::copyOf).toList();
    ticks = ticks.stream().map(List::copyOf).toList();
    labels = List.copyOf(labels);
    tabless = List.copyOf(tabless);
  }

  /**
   * Prepares a layout for a machine.
   *
   * @param names what is written on each piece, in the layout's order
   * @throws ToolTooWide if an outline is to be grown and a hollow of it is too narrow for the tool
   */
  public static MachineSheet of(Layout layout, List<String> names, MachineSetup setup) {
    return of(layout, names, SheetWork.NONE, setup);
  }

  /** The same with more to be done on the pieces than their outlines say. */
  public static MachineSheet of(
      Layout layout, List<String> names, SheetWork work, MachineSetup setup) {
    return new Maker(layout, names, work, setup).make();
  }

  /** How the outlines in files differ from the finished size. */
  public CutForm form() {
    return setup.form(layout.cutting());
  }

  /** Builds a sheet step by step. */
  private static final class Maker {

    private final Layout layout;
    private final List<String> names;
    private final SheetWork work;
    private final MachineSetup setup;
    private final List<List<Edge>> ticks = new ArrayList<>();
    private final List<Integer> tabless = new ArrayList<>();

    Maker(Layout layout, List<String> names, SheetWork work, MachineSetup setup) {
      this.layout = layout;
      this.names = names;
      this.work = work;
      this.setup = setup;
    }

    MachineSheet make() {
      List<List<Contour>> pieces = new ArrayList<>();
      for (int i = 0; i < layout.placements().size(); i++) {
        pieces.add(contours(i + 1, layout.placements().get(i)));
      }
      List<Contour> asLaidOut = pieces.stream().flatMap(List::stream).toList();
      List<Contour> order = CutOrder.of(layout, pieces);
      return new MachineSheet(
          layout,
          setup,
          order,
          marks(),
          ticks,
          labels(false),
          CutOrder.travel(asLaidOut),
          CutOrder.travel(order),
          tabless,
          new MachiningMaker(layout, names, work, setup)
              .make(marks(), labels(false), labels(true)));
    }

    private List<Contour> contours(int number, Placement placement) {
      double grown = setup.form(layout.cutting()).grown();
      Outline outline =
          OutlineOffset.outwards(setup.cutOutline(placement, layout.cutting()), grown)
              .orElseThrow(() -> new ToolTooWide(placement.piece().id(), layout.cutting().kerf()));
      List<Contour> contours = new ArrayList<>();
      for (Loop hole : outline.holes()) {
        List<Edge> edges = fromMiddle(hole.edges(), longest(hole.edges()));
        contours.add(contour(number, contours.size() + 1, placement, List.of(edges), true));
      }
      contours.add(outside(number, placement, outline.outer()));
      return contours;
    }

    private Contour outside(int number, Placement placement, Loop loop) {
      double gap = setup.tabs().map(t -> MachineSetup.gap(t, layout.cutting())).orElse(0.0);
      List<Boolean> sides = Sides.of(placement, loop.edges(), TabPlaces.ROOM * gap);
      int first = longestSide(loop.edges(), sides);
      List<Edge> edges = fromMiddle(loop.edges(), first);
      List<Boolean> turned = new ArrayList<>();
      for (int i = 0; i <= sides.size(); i++) {
        turned.add(sides.get((first + i) % sides.size()));
      }
      List<List<Edge>> runs = List.of(edges);
      if (setup.tabs().isPresent()) {
        Tabs tabs = setup.tabs().get();
        TabPlaces places = new TabPlaces(edges, turned, tabs.count(), gap);
        if (places.count() < tabs.count()) {
          tabless.add(number);
        }
        if (tabs.form() == Tabs.Form.MARKS) {
          ticks.addAll(places.ticks(TICK_OFF, TICK));
        } else if (places.count() > 0) {
          return contour(number, 0, placement, places.runs(), false);
        }
      }
      return contour(number, 0, placement, runs, true);
    }

    private Contour contour(
        int number, int hole, Placement placement, List<List<Edge>> runs, boolean closed) {
      return new Contour(number, hole, placement, lines(runs), closed);
    }

    private List<List<Edge>> lines(List<List<Edge>> chains) {
      if (setup.linesWithin().isEmpty()) {
        return chains;
      }
      Chords chords = new Chords(setup.linesWithin().get().millimetres());
      return chains.stream().map(chords::of).toList();
    }

    /** The loop begun at the middle of an edge, away from all corners. */
    private static List<Edge> fromMiddle(List<Edge> edges, int index) {
      List<Edge> turned = new ArrayList<>();
      turned.add(edges.get(index).part(0.5, 1));
      for (int i = 1; i < edges.size(); i++) {
        turned.add(edges.get((index + i) % edges.size()));
      }
      turned.add(edges.get(index).part(0, 0.5));
      return turned;
    }

    private static int longestSide(List<Edge> edges, List<Boolean> sides) {
      return IntStream.range(0, edges.size())
          .filter(sides::get)
          .boxed()
          .max(longer(edges))
          .orElseGet(() -> longest(edges));
    }

    private static int longest(List<Edge> edges) {
      return IntStream.range(0, edges.size()).boxed().max(longer(edges)).orElseThrow();
    }

    /** By length in whole micrometres, so that rounding does not decide; then the earlier one. */
    private static Comparator<Integer> longer(List<Edge> edges) {
      return Comparator.<Integer>comparingLong(i -> Math.round(edges.get(i).length() * 1000))
          .thenComparing(Comparator.reverseOrder());
    }

    private List<List<Edge>> marks() {
      List<List<Edge>> marks = new ArrayList<>();
      layout.placements().forEach(placement -> marks.addAll(lines(Marks.of(placement))));
      marks.addAll(work.marks());
      return marks;
    }

    /**
     * The numbers.
     *
     * @param level all along x, for files that turn no text: only where numbers are text
     */
    private List<Engraving> labels(boolean level) {
      List<Engraving> labels = new ArrayList<>();
      if (setup.letters() == Letters.NONE || (level && setup.letters() != Letters.TEXT)) {
        return labels;
      }
      LabelPlace place = new LabelPlace(level);
      for (int i = 0; i < names.size(); i++) {
        place.on(layout.placements().get(i), names.get(i)).ifPresent(labels::add);
      }
      return labels;
    }
  }
}

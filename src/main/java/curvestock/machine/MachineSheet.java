package curvestock.machine;

import curvestock.check.CutForm;
import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup.Letters;
import java.util.ArrayList;
import java.util.List;

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
 * @param tabless pieces, by number, that have fewer tabs than wanted, for want of a long side with
 *     wood beyond it
 * @param loose pieces, by number, that tabs do not hold: hold them another way
 * @param sharedCut length of straight cut that parts two pieces and is drawn once, in millimetres
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
    List<Integer> loose,
    double sharedCut,
    Machining machining) {

  /** Copies the lists. */
  public MachineSheet {
    contours = List.copyOf(contours);
    marks = marks.stream().map(List::copyOf).toList();
    ticks = ticks.stream().map(List::copyOf).toList();
    labels = List.copyOf(labels);
    tabless = List.copyOf(tabless);
    loose = List.copyOf(loose);
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

  /** Length of all outlines as they are cut, in millimetres. */
  public double cut() {
    return contours.stream()
        .flatMap(contour -> contour.edges().stream())
        .mapToDouble(Edge::length)
        .sum();
  }

  /** The way with the tool lifted between marks, from the lower left corner, in millimetres. */
  public double markTravel() {
    return MarkOrder.travel(marks);
  }

  /** The same between the strokes of all numbers and words. */
  public double labelTravel() {
    return MarkOrder.travel(letters().stream().flatMap(each -> each.strokes().stream()).toList());
  }

  /** The same between pockets, from above and from below, and between drilled holes. */
  public double otherTravel() {
    double way = Tour.OF_HOLES.travel(machining.drillings());
    for (Operation side : List.of(Operation.POCKET_TOP, Operation.POCKET_BOTTOM)) {
      way += Tour.OF_POCKETS.travel(machining.pockets(side));
    }
    return way;
  }

  /** The numbers and the words beside laps, in the order in which they are engraved. */
  public List<Engraving> letters() {
    List<Engraving> drawn = new ArrayList<>(labels);
    drawn.addAll(machining.words());
    return Tour.OF_LETTERS.of(drawn);
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

    Maker(Layout layout, List<String> names, SheetWork work, MachineSetup setup) {
      this.layout = layout;
      this.names = names;
      this.work = work;
      this.setup = setup;
    }

    MachineSheet make() {
      SheetContours outlines = new SheetContours(layout, setup);
      List<List<Contour>> pieces = outlines.ofPieces();
      List<Contour> asLaidOut = pieces.stream().flatMap(List::stream).toList();
      List<Contour> order = CutOrder.of(layout, pieces);
      List<List<Edge>> marks = marks();
      List<Engraving> labels = labels(false, marks);
      return new MachineSheet(
          layout,
          setup,
          order,
          marks,
          outlines.ticks(),
          labels,
          CutOrder.travel(asLaidOut),
          CutOrder.travel(order),
          outlines.tabless(),
          outlines.loose(),
          outlines.shared(),
          new MachiningMaker(layout, names, work, setup).make(marks, labels, labels(true, marks)));
    }

    private List<List<Edge>> lines(List<List<Edge>> chains) {
      if (setup.linesWithin().isEmpty()) {
        return chains;
      }
      Chords chords = new Chords(setup.linesWithin().get().millimetres());
      return chains.stream().map(chords::of).toList();
    }

    private List<List<Edge>> marks() {
      List<List<Edge>> marks = new ArrayList<>();
      layout.placements().forEach(placement -> marks.addAll(lines(Marks.of(placement))));
      marks.addAll(work.marks());
      return MarkOrder.of(marks);
    }

    /**
     * The numbers.
     *
     * @param level all along x, for files that turn no text: only where numbers are text
     */
    private List<Engraving> labels(boolean level, List<List<Edge>> marks) {
      List<Engraving> labels = new ArrayList<>();
      if (setup.letters() == Letters.NONE || (level && setup.letters() != Letters.TEXT)) {
        return labels;
      }
      List<DrawnLine> drawn = DrawnLine.of(marks.stream().flatMap(List::stream).toList());
      for (int i = 0; i < names.size(); i++) {
        Placement placement = layout.placements().get(i);
        Box around = placement.outline().box();
        List<DrawnLine> near =
            drawn.stream().filter(line -> line.box().distance(around) == 0).toList();
        new LabelPlace(level, near).on(placement, names.get(i)).ifPresent(labels::add);
      }
      return Tour.OF_LETTERS.of(labels);
    }
  }
}

package curvestock.machine;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.helix.build.Lap;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup.Letters;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Works out what is done on a sheet besides its outlines. */
final class MachiningMaker {

  private final Layout layout;
  private final List<String> names;
  private final SheetWork work;
  private final MachineSetup setup;
  private final Length bit;

  MachiningMaker(Layout layout, List<String> names, SheetWork work, MachineSetup setup) {
    this.layout = layout;
    this.names = names;
    this.work = work;
    this.setup = setup;
    bit = setup.bitOrKerf(layout.cutting());
  }

  Machining make(List<List<Edge>> marks, List<Engraving> labels, List<Engraving> level) {
    List<Pocket> pockets = new ArrayList<>();
    List<Drilling> drillings = new ArrayList<>();
    for (int i = 0; i < layout.placements().size(); i++) {
      Placement placement = layout.placements().get(i);
      for (Lap lap : work.lapsOf(i)) {
        pockets.add(
            Pocket.of(
                i + 1,
                lap.at(placement.pose()),
                layout.sheet().thickness(),
                bit.millimetres() / 2));
      }
      drill(i + 1, placement, drillings);
    }
    boolean below = pockets.stream().anyMatch(p -> p.operation() == Operation.POCKET_BOTTOM);
    return new Machining(
        ordered(pockets),
        bySize(drillings),
        words(marks, labels),
        level,
        below ? Optional.of(turning()) : Optional.empty(),
        work.remnant(),
        work.caption());
  }

  /** Each side in an order of its own: they are run apart. */
  private static List<Pocket> ordered(List<Pocket> pockets) {
    List<Pocket> ordered = new ArrayList<>();
    for (Operation side : List.of(Operation.POCKET_TOP, Operation.POCKET_BOTTOM)) {
      ordered.addAll(
          Tour.OF_POCKETS.of(pockets.stream().filter(p -> p.operation() == side).toList()));
    }
    return ordered;
  }

  /** The smallest first, as files have them; those of one size in an order with little way. */
  private static List<Drilling> bySize(List<Drilling> drillings) {
    Map<Long, List<Drilling>> sizes = new TreeMap<>();
    for (Drilling hole : drillings) {
      long size = Math.round(hole.diameter().millimetres() * 1e4);
      sizes.computeIfAbsent(size, each -> new ArrayList<>()).add(hole);
    }
    return sizes.values().stream().flatMap(same -> Tour.OF_HOLES.of(same).stream()).toList();
  }

  private Turning turning() {
    return DowelPlaces.of(layout, work.remnant(), work.caption().style().unit().isImperial());
  }

  private void drill(int number, Placement placement, List<Drilling> drillings) {
    int hole = 0;
    for (Loop rim : Drilling.holes(placement, bit)) {
      hole++;
      Arc round = Drilling.circle(rim).orElseThrow();
      drillings.add(
          new Drilling(number, hole, round.centre(), Length.ofMillimetres(2 * round.radius())));
    }
  }

  private List<Engraving> words(List<List<Edge>> marks, List<Engraving> labels) {
    List<Engraving> words = new ArrayList<>();
    if (setup.letters() == Letters.NONE || work.laps().isEmpty()) {
      return words;
    }
    List<Edge> lines = marks.stream().flatMap(List::stream).toList();
    for (int i = 0; i < layout.placements().size(); i++) {
      Placement placement = layout.placements().get(i);
      String name = i < names.size() ? names.get(i) : "";
      Optional<Engraving> number =
          labels.stream()
              .filter(label -> label.words().equals(name))
              .filter(label -> placement.outline().contains(label.start()))
              .findFirst();
      List<Edge> near =
          lines.stream()
              .filter(line -> line.box().distance(placement.outline().box()) == 0)
              .toList();
      words.addAll(new LapWords(placement, near, number).of(work.lapsOf(i)));
    }
    return words;
  }
}

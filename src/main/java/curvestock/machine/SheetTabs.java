package curvestock.machine;

import curvestock.layout.Layout;
import curvestock.machine.MachineSetup.Tabs;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Where the tabs of all pieces of a sheet stay, so that each hangs on the frame, which is the waste
 * along the sheet's edge: first where the frame is beyond the cut, spread evenly as far as that
 * goes; then on neighbours that hang already, by tabs in common that interrupt both outlines; then
 * on waste amid pieces, which is itself hung on those.
 */
final class SheetTabs {

  /** Two tabs keep a piece from turning. */
  private static final int ENOUGH = 2;

  /** A piece bears at most so many times its own number of tabs, with those of its neighbours. */
  private static final int WITH_NEIGHBOURS = 3;

  private final List<TabPath> paths;
  private final int count;
  private final int needed;
  private final double gap;
  private final WasteMap waste;
  private final List<List<TabSpot>> spots = new ArrayList<>();
  private final List<List<TabPlaces.Place>> places = new ArrayList<>();
  private final List<Integer> hangs = new ArrayList<>();
  private final Set<Integer> held = new TreeSet<>();
  private final Set<Integer> heldWaste = new TreeSet<>();

  /**
   * @param paths of all outlines that may bear tabs
   * @param grown by how much they are drawn outside the finished size
   */
  SheetTabs(Layout layout, List<TabPath> paths, double grown, Tabs tabs) {
    this.paths = paths;
    this.count = tabs.count();
    this.needed = needed(tabs);
    this.gap = MachineSetup.gap(tabs, layout.cutting());
    double wood = tabs.width().millimetres();
    waste = new WasteMap(layout, wood);
    TabSpots finder = new TabSpots(layout, paths, waste, grown, wood, count);
    for (int i = 0; i < paths.size(); i++) {
      spots.add(finder.on(i));
      places.add(new ArrayList<>());
      hangs.add(0);
    }
    IntStream.range(0, waste.parts()).filter(waste::isFrame).forEach(heldWaste::add);
    place();
  }

  /** By how many tabs a piece must hang. */
  static int needed(Tabs tabs) {
    return Math.min(ENOUGH, tabs.count());
  }

  /** The tabs of an outline, in the order of its edges. */
  List<TabPlaces.Place> of(int path) {
    return places.get(path).stream()
        .sorted(
            Comparator.comparingInt(TabPlaces.Place::edge)
                .thenComparingDouble(TabPlaces.Place::from))
        .toList();
  }

  private void place() {
    outsides().forEach(path -> hang(path, spot -> isHeldWaste(spot) && !spot.onEnd()));
    do {
      hangOnNeighbours(spot -> !spot.onEnd());
    } while (hangWaste(path -> !isHeld(path)));
    hangOnNeighbours(spot -> true);
    // What hangs on one tab here and on one neighbour there may still hang, both together.
    // And what hangs by two tabs at one end gets the others that were asked for.
    do {
      outsides()
          .forEach(
              path ->
                  hang(
                      path,
                      spot ->
                          (!spot.onEnd() || !isHeld(path))
                              && (isHeldWaste(spot) || spot.across().isPresent())));
    } while (hangWaste(path -> hangs.get(path) < count));
  }

  private IntStream outsides() {
    return IntStream.range(0, paths.size()).filter(path -> paths.get(path).isOutside());
  }

  private boolean isHeld(int path) {
    return held.contains(paths.get(path).piece());
  }

  private boolean isHeldWaste(TabSpot spot) {
    return heldWaste.contains(spot.waste());
  }

  private boolean isOnHeldPiece(TabSpot spot) {
    return spot.across().filter(other -> isHeld(other.path())).isPresent();
  }

  private void hangOnNeighbours(Predicate<TabSpot> suits) {
    boolean more = true;
    while (more) {
      int before = held.size();
      outsides()
          .filter(path -> !isHeld(path))
          .forEach(
              path ->
                  hang(
                      path,
                      spot -> suits.test(spot) && (isHeldWaste(spot) || isOnHeldPiece(spot))));
      more = held.size() > before;
    }
  }

  /** Hangs a part of the waste on pieces that hang, if others could hang on it; false if none. */
  private boolean hangWaste(IntPredicate wants) {
    for (int part = 0; part < waste.parts(); part++) {
      int index = part;
      boolean isWanted =
          !heldWaste.contains(part)
              && outsides()
                  .filter(wants)
                  .anyMatch(path -> spots.get(path).stream().anyMatch(s -> s.waste() == index));
      if (isWanted && hangWaste(part)) {
        heldWaste.add(part);
        return true;
      }
    }
    return false;
  }

  private boolean hangWaste(int part) {
    List<TabSpot> all = new ArrayList<>();
    for (int path = 0; path < paths.size(); path++) {
      if (isHeld(path)) {
        spots.get(path).stream()
            .filter(spot -> spot.waste() == part && !spot.onEnd())
            .forEach(all::add);
      }
    }
    List<TabSpot> chosen = new ArrayList<>();
    while (chosen.size() < needed) {
      Optional<TabSpot> next =
          all.stream()
              .filter(this::isFree)
              .max(Comparator.comparingDouble(spot -> farFrom(spot, chosen)));
      if (next.isEmpty()) {
        return false;
      }
      chosen.add(next.get());
      put(next.get());
    }
    return true;
  }

  private static double farFrom(TabSpot spot, List<TabSpot> chosen) {
    return chosen.stream().mapToDouble(other -> other.at().distance(spot.at())).min().orElse(0);
  }

  /** Gives an outline the tabs it still lacks, evenly as far as there are spots for it. */
  private void hang(int path, Predicate<TabSpot> suits) {
    double[] even = paths.get(path).even(count, gap);
    double zone = even.length == 0 ? 0 : even[0];
    for (double wanted : even) {
      if (hangs.get(path) < count) {
        spots.get(path).stream()
            .filter(suits)
            .filter(spot -> Math.abs(spot.along() - wanted) <= zone)
            .filter(this::isFree)
            .min(Comparator.comparingDouble(spot -> Math.abs(spot.along() - wanted)))
            .ifPresent(this::put);
      }
    }
    List<TabSpot> chosen = new ArrayList<>();
    boolean more = true;
    while (more && hangs.get(path) < needed) {
      Optional<TabSpot> next =
          spots.get(path).stream()
              .filter(suits)
              .filter(this::isFree)
              .max(Comparator.comparingDouble(spot -> farFromPlaces(spot, chosen)));
      next.ifPresent(this::put);
      next.ifPresent(chosen::add);
      more = next.isPresent();
    }
    if (hangs.get(path) >= needed) {
      held.add(paths.get(path).piece());
    }
  }

  private double farFromPlaces(TabSpot spot, List<TabSpot> chosen) {
    double far = farFrom(spot, chosen);
    TabPath path = paths.get(spot.path());
    for (TabPlaces.Place place : places.get(spot.path())) {
      double away = path.at(place.edge(), path.middle(place)).distance(spot.at());
      far = far == 0 ? away : Math.min(far, away);
    }
    return far;
  }

  private boolean isFree(TabSpot spot) {
    return isFree(spot.path(), spot.edge(), spot.middle())
        && spot.across()
            .filter(other -> !isFree(other.path(), other.edge(), other.middle()))
            .isEmpty();
  }

  private boolean isFree(int path, int edge, double middle) {
    TabPath on = paths.get(path);
    return places.get(path).size() < WITH_NEIGHBOURS * count
        && places.get(path).stream()
            .filter(place -> place.edge() == edge)
            .allMatch(place -> Math.abs(on.middle(place) - middle) >= 2 * gap - 1e-9);
  }

  private void put(TabSpot spot) {
    put(spot.path(), spot.edge(), spot.middle());
    spot.across().ifPresent(other -> put(other.path(), other.edge(), other.middle()));
  }

  private void put(int path, int edge, double middle) {
    double length = paths.get(path).edges().get(edge).length();
    places
        .get(path)
        .add(new TabPlaces.Place(edge, (middle - gap / 2) / length, (middle + gap / 2) / length));
    hangs.set(path, hangs.get(path) + 1);
  }
}

package curvestock.machine;

import curvestock.check.Holding;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.OutlineOffset;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup.Tabs;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The outlines of all pieces of a sheet as they are cut: grown if need be, begun away from corners,
 * with their tabs, and with every line that two of them share left in one alone.
 */
final class SheetContours {

  /** Ticks stand off the outline by this, in millimetres. */
  private static final double TICK_OFF = 0.5;

  private static final double TICK = 2;

  private final Layout layout;
  private final MachineSetup setup;
  private final double grown;
  private final List<TabPath> paths = new ArrayList<>();
  private final Optional<SheetTabs> tabs;
  private final List<List<Contour>> ofPieces = new ArrayList<>();
  private final List<List<Edge>> ticks = new ArrayList<>();
  private final List<Integer> tabless = new ArrayList<>();
  private final double shared;

  /**
   * @throws ToolTooWide if an outline is to be grown and a hollow of it is too narrow for the tool
   */
  SheetContours(Layout layout, MachineSetup setup) {
    this.layout = layout;
    this.setup = setup;
    grown = setup.form(layout.cutting()).grown();
    for (int i = 0; i < layout.placements().size(); i++) {
      addPaths(i, layout.placements().get(i));
    }
    tabs = setup.tabs().map(wanted -> new SheetTabs(layout, paths, grown, wanted));
    List<Contour> all = new ArrayList<>();
    for (int i = 0; i < paths.size(); i++) {
      all.add(contour(i));
    }
    // Finished outlines share no line: where they touch, without a kerf, each is whole.
    Optional<SharedCuts> once = grown > 0 ? Optional.of(new SharedCuts(all)) : Optional.empty();
    shared = once.map(SharedCuts::length).orElse(0.0);
    for (Contour contour : once.map(SharedCuts::contours).orElse(all)) {
      while (ofPieces.size() < contour.number()) {
        ofPieces.add(new ArrayList<>());
      }
      ofPieces.get(contour.number() - 1).add(inLines(contour));
    }
  }

  /** Of each piece its holes, then its outside. */
  List<List<Contour>> ofPieces() {
    return ofPieces;
  }

  /** Marks beside the outlines where tabs are proposed. */
  List<List<Edge>> ticks() {
    return ticks;
  }

  /** Pieces, by number, that have fewer tabs than wanted. */
  List<Integer> tabless() {
    return tabless;
  }

  /** Length that two outlines share and that is cut once, in millimetres. */
  double shared() {
    return shared;
  }

  /** Pieces, by number, that come loose when the sheet is cut although tabs are wanted. */
  List<Integer> loose() {
    if (setup.tabs().isEmpty() || paths.isEmpty()) {
      return List.of();
    }
    Tabs wanted = setup.tabs().get();
    Holding holding = Holding.of(layout, wanted.width().millimetres(), SheetTabs.needed(wanted));
    List<Integer> loose =
        wanted.form() == Tabs.Form.GAPS && grown > 0
            ? holding.looseAlong(
                ofPieces.stream()
                    .flatMap(List::stream)
                    .flatMap(contour -> contour.runs().stream())
                    .toList())
            : holding.looseBut(necks());
    return loose.stream().map(index -> index + 1).toList();
  }

  private List<List<Holding.Neck>> necks() {
    List<List<Holding.Neck>> necks = new ArrayList<>();
    layout.placements().forEach(placement -> necks.add(new ArrayList<>()));
    for (int i = 0; i < paths.size(); i++) {
      TabPath path = paths.get(i);
      for (TabPlaces.Place place : places(i)) {
        double middle = path.middle(place);
        Point out = path.outwards(place.edge(), middle);
        Point at = path.at(place.edge(), middle).minus(out.times(grown));
        necks.get(path.piece()).add(new Holding.Neck(at, out));
      }
    }
    return necks;
  }

  private List<TabPlaces.Place> places(int path) {
    return tabs.map(found -> found.of(path)).orElse(List.of());
  }

  private void addPaths(int piece, Placement placement) {
    Outline outline =
        OutlineOffset.outwards(setup.cutOutline(placement, layout.cutting()), grown)
            .orElseThrow(() -> new ToolTooWide(placement.piece().id(), layout.cutting().kerf()));
    double gap = setup.tabs().map(t -> MachineSetup.gap(t, layout.cutting())).orElse(0.0);
    int number = 0;
    for (Loop hole : outline.holes()) {
      number++;
      List<Boolean> isLong =
          hole.edges().stream().map(edge -> edge.length() >= TabPath.ROOM * gap).toList();
      List<Boolean> none = hole.edges().stream().map(edge -> false).toList();
      paths.add(path(piece, number, hole.edges(), isLong, none, longest(hole.edges())));
    }
    List<Edge> edges = outline.outer().edges();
    List<Boolean> sides = Sides.of(placement, edges, TabPath.ROOM * gap);
    List<Boolean> ends = Sides.endsOfBlock(placement, edges, TabPath.ROOM * gap);
    paths.add(path(piece, 0, edges, sides, ends, longestSide(edges, sides)));
  }

  /** The loop begun at the middle of an edge, away from all corners. */
  private static TabPath path(
      int piece, int hole, List<Edge> edges, List<Boolean> sides, List<Boolean> ends, int first) {
    List<Edge> turned = new ArrayList<>();
    List<Boolean> turnedSides = new ArrayList<>();
    List<Boolean> turnedEnds = new ArrayList<>();
    turned.add(edges.get(first).part(0.5, 1));
    for (int i = 1; i < edges.size(); i++) {
      turned.add(edges.get((first + i) % edges.size()));
    }
    turned.add(edges.get(first).part(0, 0.5));
    for (int i = 0; i <= sides.size(); i++) {
      turnedSides.add(sides.get((first + i) % sides.size()));
      turnedEnds.add(ends.get((first + i) % ends.size()));
    }
    return new TabPath(piece, hole, turned, turnedSides, turnedEnds);
  }

  private Contour contour(int index) {
    TabPath path = paths.get(index);
    Placement placement = layout.placements().get(path.piece());
    TabPlaces places = new TabPlaces(path.edges(), places(index));
    int found = places(index).size();
    if (path.isOutside() && setup.tabs().filter(t -> found < t.count()).isPresent()) {
      tabless.add(path.piece() + 1);
    }
    boolean interrupted = setup.gaps().isPresent() && found > 0;
    if (!interrupted) {
      ticks.addAll(places.ticks(TICK_OFF, TICK));
    }
    List<List<Edge>> runs = interrupted ? places.runs() : List.of(path.edges());
    return new Contour(path.piece() + 1, path.hole(), placement, runs, !interrupted);
  }

  private Contour inLines(Contour contour) {
    if (setup.linesWithin().isEmpty()) {
      return contour;
    }
    Chords chords = new Chords(setup.linesWithin().get().millimetres());
    return new Contour(
        contour.number(),
        contour.hole(),
        contour.placement(),
        contour.runs().stream().map(chords::of).toList(),
        contour.closed());
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
}

package curvestock.packing;

import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.layout.TrueGaps;
import curvestock.packing.atlas.Atlas;
import curvestock.packing.atlas.Chart;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Lays as many pieces as it can on one sheet.
 *
 * <p>First come structured layouts; then, unless the {@link Atlas} has all that are wanted, a
 * search for one piece more, and one more again, until the budget of the effort is used up without
 * success; the same from a layout of the atlas that holds more. Every layout that is returned has
 * passed {@link TrueGaps}. The result depends on the inputs and the seed alone. A failed search
 * proves nothing: what is impossible is the business of {@code bound}.
 */
public final class Packer {

  /** Up to this many pieces are put in one by one before lattices are thought of. */
  private static final int FEW = 3;

  /**
   * With more pieces than this a search gains little and its memory, which grows with the square,
   * much.
   */
  private static final int MOST_SEARCHED = 500;

  private static final String SEARCHED = "search";

  /** So many orders of the kinds are tried where there is no search. */
  private static final int AT_ONCE = 2;

  private final OneSheet sheet;
  private final Arena arena;
  private final Remembered remembered;
  private final Atlas atlas;
  private final Map<Piece, Sought> full = new HashMap<>();
  private final Map<Piece, Packed> regular = new HashMap<>();

  /**
   * A packer for one sheet that remembers nothing between runs.
   *
   * @param sheet its edge, its defects and its grain
   * @param cutting spacing between pieces and margin to the edge
   * @param settings seed and effort; the same ones give the same layouts
   */
  public Packer(SheetStock sheet, Cutting cutting, SearchSettings settings) {
    this(sheet, cutting, settings, Packers.FORGETFUL);
  }

  /** A packer that may find in a store what was packed before, and in an atlas what is like it. */
  Packer(SheetStock sheet, Cutting cutting, SearchSettings settings, Packers packers) {
    this.remembered = new Remembered(packers, sheet, cutting, settings);
    this.atlas = packers.atlas();
    this.sheet = new OneSheet(sheet, cutting, settings);
    this.arena = this.sheet.arena;
  }

  /** What a search found, and how many it was asked for at most. */
  private record Sought(Packed packed, int atMost) {
    /** Whether all that were asked for were found, so that more might be. */
    boolean isFull() {
      return packed.layout().placements().size() >= atMost;
    }
  }

  /**
   * As many of one piece as can be found, up to {@code atMost}; an empty layout if none fits.
   *
   * @param atMost a proven bound or the number wanted: no search goes beyond it
   */
  public Packed most(Piece piece, int atMost, Control control) {
    if (atMost == 0) {
      return new Packed(empty(), "nothing fits");
    }
    Sought known = full.get(piece);
    if (known == null || (known.atMost < atMost && known.isFull())) {
      Packed sought =
          remembered.most(
              piece,
              atMost,
              FEW,
              Structured.LEAST_SOUGHT,
              control,
              () -> search(piece, atMost, control));
      known = new Sought(sought, atMost);
      if (!control.stopped()) {
        full.put(piece, known);
      }
    }
    return firstOf(known.packed, atMost);
  }

  /**
   * Goes on from pieces that lie on the sheet: those that are pinned stay where they are, the free
   * ones are brought to where all rules hold, and then more pieces are added, those that find room
   * without moving any other first. Only valid layouts are handed out, at any time.
   *
   * @param better told of each layout that holds more, on the calling thread; the last one told is
   *     the one returned
   * @throws PinnedConflictException if the pinned pieces alone break a rule
   */
  public Continued continueFrom(Arrangement from, Control control, Consumer<Continued> better) {
    return new Continuation(sheet, from, control, better).run();
  }

  /**
   * As many of one piece as a lattice holds: no search, so it is there at once, and often one or
   * two pieces short of {@link #most}. An empty layout if none fits.
   */
  public Packed structured(Piece piece) {
    Packed known = regular.get(piece);
    if (known == null) {
      known =
          remembered.packed(
              "structured",
              List.of(new Demand(piece, Integer.MAX_VALUE)),
              List.of(),
              "",
              Control.NONE,
              () -> best(piece, structured(sheet.body(piece), Structured.MOST_PIECES)));
      regular.put(piece, known);
    }
    return known;
  }

  /**
   * As many of one piece, up to {@code atMost}, as a lattice holds, can be put in one by one, or
   * the atlas has: no search.
   */
  public Packed atOnce(Piece piece, int atMost) {
    Packed plain = plain(piece, atMost);
    return charted(piece, plain, atMost).orElse(plain);
  }

  /** More than that, up to {@code atMost}, if the atlas has them. */
  private Optional<Packed> charted(Piece piece, Packed than, int atMost) {
    return new Charted(sheet, atlas)
        .more(piece, than.layout().placements().size(), atMost)
        .map(layout -> firstOf(new Packed(layout, SEARCHED), atMost));
  }

  /** Without the atlas. */
  private Packed plain(Piece piece, int atMost) {
    if (atMost == 0) {
      return new Packed(empty(), "nothing fits");
    }
    if (atMost <= FEW) {
      Packed tidy = tidy(piece, atMost, Control.NONE);
      if (tidy.layout().placements().size() == atMost) {
        return tidy;
      }
    }
    Packed regular = structured(piece);
    // Where no pattern lies, one may lie askew: whether the job can be cut at all hangs on it.
    return regular.layout().placements().isEmpty()
        ? tidy(piece, 1, Control.NONE)
        : firstOf(regular, atMost);
  }

  /**
   * More of one piece than a lattice holds, by the atlas alone: no search. Nothing if the atlas has
   * none that fits.
   *
   * @param atMost more are not wanted, but the layout may hold more
   */
  public Optional<Packed> charted(Piece piece, int atMost) {
    int than = structured(piece).layout().placements().size();
    return new Charted(sheet, atlas)
        .more(piece, than, atMost)
        .map(layout -> new Packed(layout, SEARCHED));
  }

  /**
   * A chart for an {@link Atlas} of a layout on this packer's sheet, cut its way; nothing unless it
   * is of one kind of arc on a plain rectangle.
   */
  public Optional<Chart> chart(Layout layout) {
    return new Charted(sheet, Atlas.NONE).chart(layout);
  }

  /**
   * Wood that a copy of the piece takes, the gap to its neighbours in it, in the densest lattice
   * known on an endless sheet; square millimetres. Copies of a filled sheet could be laid side by
   * side without end, so a sheet, widened by half the gap, that holds more than its area divided by
   * this would be a denser lattice than any known. A rule of thumb all the same: no lattice here is
   * proven to be the densest. Infinite if no lattice is known.
   */
  public double leastWood(Piece piece) {
    return sheet.body(piece).lattices(arena.gap).stream()
        .mapToDouble(PeriodicLattice::areaPerPiece)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private Packed best(Piece piece, List<Structured.Candidate> candidates) {
    Packed best = new Packed(empty(), "nothing fits");
    for (Structured.Candidate candidate : candidates) {
      if (candidate.count() > best.layout().placements().size()) {
        Layout layout = sheet.layout(copies(piece, candidate.count()), candidate.poses());
        best = TrueGaps.hold(layout) ? new Packed(layout, candidate.name()) : best;
      }
    }
    return best;
  }

  private Packed search(Piece piece, int atMost, Control control) {
    if (atMost <= FEW) {
      Packed tidy = tidy(piece, atMost, control);
      if (tidy.layout().placements().size() == atMost) {
        return tidy;
      }
    }
    List<Structured.Candidate> candidates = structured(sheet.body(piece), atMost);
    Packed best = best(piece, candidates);
    List<double[]> known = new ArrayList<>();
    candidates.forEach(candidate -> known.add(candidate.poses()));
    Optional<Packed> charted = charted(piece, best, atMost);
    int there = charted.map(packed -> packed.layout().placements().size()).orElse(0);
    if (there < atMost) {
      // What is found without the atlas must not be lost to a start that leads less far.
      best = searchOn(piece, best, known, atMost, control);
    }
    if (there > best.layout().placements().size()) {
      best = charted.get();
      control.found(best.layout());
      known.add(0, OneSheet.poses(best.layout()));
      best = searchOn(piece, best, known, atMost, control);
    }
    return best;
  }

  /**
   * One piece more than the best, and one more again, while the search for it succeeds.
   *
   * @param known where searches begin; what is found is added
   */
  private Packed searchOn(
      Piece piece, Packed from, List<double[]> known, int atMost, Control control) {
    Packed best = from;
    int ceiling = Math.min(atMost, MOST_SEARCHED);
    while (best.layout().placements().size() < ceiling && !control.stopped()) {
      int count = best.layout().placements().size();
      Optional<Layout> more = sheet.oneMore(piece, count, known, sheet.budget(), control);
      if (more.isEmpty()) {
        break;
      }
      best = new Packed(more.get(), SEARCHED);
      control.found(best.layout());
      known.add(0, OneSheet.poses(best.layout()));
    }
    return best;
  }

  /** A few pieces need no lattices: they are put in one by one at the lower left. */
  private Packed tidy(Piece piece, int count, Control control) {
    return new Packed(insert(new Demand(piece, count), empty(), control), "one by one");
  }

  private Layout empty() {
    return sheet.of(List.of());
  }

  /**
   * Structured layouts; on sheets with cut-off corners or defects, and for grain, what is left of
   * them.
   */
  private List<Structured.Candidate> structured(Body body, int wanted) {
    if (arena.usableWidth() <= 0 || arena.usableHeight() <= 0) {
      return List.of();
    }
    List<Structured.Candidate> kept = new ArrayList<>();
    Walls walls = new Walls(arena, arena.margin, arena.gap);
    for (Structured.Candidate candidate : new Structured(arena, body, wanted).candidates()) {
      Structured.Candidate clear =
          arena.isPlain() && body.grainFree() ? candidate : clear(candidate, body, walls);
      if (clear.count() > 0) {
        kept.add(clear);
      }
    }
    kept.sort(Comparator.comparingInt(Structured.Candidate::count).reversed());
    return kept;
  }

  private static Structured.Candidate clear(
      Structured.Candidate candidate, Body body, Walls walls) {
    double[] poses = candidate.poses();
    double[] kept = new double[poses.length];
    double[] ignored = new double[poses.length];
    int count = 0;
    for (int i = 0; i < candidate.count(); i++) {
      double angle = poses[3 * i + 2];
      double cos = StrictMath.cos(angle);
      double sin = StrictMath.sin(angle);
      if (walls.energy(body, poses, 3 * i, cos, sin, 1, ignored) <= 1e-14) {
        System.arraycopy(poses, 3 * i, kept, 3 * count++, 3);
      }
    }
    return new Structured.Candidate(candidate.name(), Arrays.copyOf(kept, 3 * count));
  }

  /**
   * Fills the sheet with pieces of several kinds, at most as many of each as wanted: the largest
   * kind first, the smaller ones into what it leaves, then a search for more of each with all free
   * to move.
   */
  public Packed fill(List<Demand> wanted, Control control) {
    return fill(wanted, demand -> most(demand.piece(), demand.count(), control), control);
  }

  /**
   * As the other, each order begun with what is known of its first kind.
   *
   * @param known layouts of one kind alone, for each kind wanted; they may hold more than that many
   */
  public Packed fill(List<Demand> wanted, Function<Demand, Packed> known, Control control) {
    Function<Demand, Layout> first =
        demand -> firstOf(known.apply(demand), demand.count()).layout();
    if (wanted.size() == 1) {
      return firstOf(known.apply(wanted.get(0)), wanted.get(0).count());
    }
    List<List<Demand>> orders = orders(wanted);
    List<Piece> kinds = wanted.stream().map(Demand::piece).toList();
    // How each order begins follows from what was asked of this packer before.
    StringBuilder leads = new StringBuilder();
    orders.forEach(order -> leads.append(PackedText.poses(lead(order, first), kinds)).append("\n"));
    return remembered.packed(
        "fill",
        wanted,
        List.of(),
        leads.toString(),
        control,
        () -> fillAnew(orders, first, control));
  }

  /**
   * As {@link #fill}, but without a search: the first kind by a lattice, the others put in one by
   * one.
   */
  public Packed fillAtOnce(List<Demand> wanted, Control control) {
    return fillAtOnce(wanted, AT_ONCE, control);
  }

  /** As the other, with so many orders of the kinds tried at most, until all pieces are in. */
  public Packed fillAtOnce(List<Demand> wanted, int orders, Control control) {
    if (wanted.size() == 1) {
      return atOnce(wanted.get(0).piece(), wanted.get(0).count());
    }
    return remembered.packed(
        "fill at once",
        wanted,
        List.of(),
        Integer.toString(orders),
        control,
        () -> filledAtOnce(wanted, orders, control));
  }

  /**
   * The pieces of a layout of a larger sheet pushed together onto this one, none leaping over
   * another; or nothing.
   */
  public Optional<Layout> pushed(Layout larger) {
    return larger.placements().size() > MOST_SEARCHED
        ? Optional.empty()
        : sheet.pushed(larger.pieces(), OneSheet.poses(larger));
  }

  /**
   * The pieces of a layout of a larger sheet brought onto this one by a search, all of them free to
   * move; or nothing.
   *
   * @param budget pairs of pieces that the search may test
   */
  public Optional<Layout> shrunk(Layout larger, long budget, Control control) {
    List<Piece> pieces = larger.pieces();
    if (pieces.size() > MOST_SEARCHED) {
      return Optional.empty();
    }
    List<Piece> kinds = pieces.stream().distinct().toList();
    List<double[]> known = List.of(OneSheet.poses(larger));
    Packed packed =
        remembered.packed(
            "shrunk",
            Demand.counted(pieces),
            List.of(),
            budget + "\n" + PackedText.poses(larger, kinds),
            control,
            () ->
                sheet
                    .solve(pieces, none(pieces), known, budget, control)
                    .map(layout -> new Packed(layout, SEARCHED))
                    .orElseGet(() -> new Packed(empty(), "nothing fits")));
    return Optional.of(packed.layout()).filter(found -> !found.placements().isEmpty());
  }

  /**
   * One piece more than a layout of that kind alone holds, looked for with a budget of its own.
   *
   * @param budget pairs of pieces that the search may test
   */
  public Optional<Packed> oneMore(Piece piece, Packed than, long budget, Control control) {
    int count = than.layout().placements().size();
    if (count >= MOST_SEARCHED) {
      return Optional.empty();
    }
    Packed packed =
        remembered.packed(
            "one more",
            List.of(new Demand(piece, count + 1)),
            List.of(),
            budget + "\n" + PackedText.poses(than.layout(), List.of(piece)),
            control,
            () ->
                sheet
                    .oneMore(piece, count, starts(piece, than), budget, control)
                    .map(layout -> new Packed(layout, SEARCHED))
                    .orElse(than));
    return Optional.of(packed).filter(found -> found.layout().placements().size() > count);
  }

  private List<double[]> starts(Piece piece, Packed best) {
    List<double[]> known = new ArrayList<>();
    if (best.how().equals(SEARCHED)) {
      known.add(OneSheet.poses(best.layout()));
    }
    structured(sheet.body(piece), best.layout().placements().size())
        .forEach(candidate -> known.add(candidate.poses()));
    return known;
  }

  private Packed filledAtOnce(List<Demand> wanted, int most, Control control) {
    int all = wanted.stream().mapToInt(Demand::count).sum();
    Layout best = empty();
    List<List<Demand>> orders = orders(wanted);
    for (List<Demand> order : orders.subList(0, Math.min(most, orders.size()))) {
      Layout layout =
          fillInOrder(order, demand -> plain(demand.piece(), demand.count()).layout(), control);
      best = layout.pieceArea() > best.pieceArea() ? layout : best;
      if (best.placements().size() == all || control.stopped()) {
        break;
      }
    }
    return new Packed(best, "patterns and one by one");
  }

  private Packed fillAnew(
      List<List<Demand>> orders, Function<Demand, Layout> first, Control control) {
    Layout best = empty();
    for (List<Demand> order : orders) {
      Layout layout = fillInOrder(order, first, control);
      best = layout.pieceArea() > best.pieceArea() ? layout : best;
    }
    return new Packed(squeeze(orders.get(0), best, control), "mixed fill");
  }

  /** The first pieces of an order: the first kind that fits at all. */
  private Layout lead(List<Demand> order, Function<Demand, Layout> first) {
    for (Demand demand : order) {
      Layout lead = first.apply(demand);
      if (!lead.placements().isEmpty()) {
        return lead;
      }
    }
    return empty();
  }

  /** Largest area first; widest reach first; and each with its first two kinds exchanged. */
  private List<List<Demand>> orders(List<Demand> wanted) {
    List<Demand> byArea = new ArrayList<>(wanted);
    byArea.sort(Comparator.comparingDouble(demand -> -demand.piece().shape().area()));
    List<Demand> byReach = new ArrayList<>(byArea);
    byReach.sort(Comparator.comparingDouble(demand -> -sheet.body(demand.piece()).radius));
    List<List<Demand>> orders = new ArrayList<>();
    for (List<Demand> order : List.of(byArea, byReach)) {
      List<Demand> exchanged = new ArrayList<>(order);
      Collections.swap(exchanged, 0, 1);
      orders.add(order);
      orders.add(exchanged);
    }
    return orders.stream().distinct().toList();
  }

  /**
   * Puts more pieces, the largest first, into what a layout leaves free; those that lie there stay
   * where they are.
   *
   * @param start a layout on this packer's sheet, cut its way
   * @param more at most as many of each are added
   */
  public Packed fillUp(Layout start, List<Demand> more, Control control) {
    List<Piece> before = start.pieces();
    List<Piece> kinds =
        Stream.concat(more.stream().map(Demand::piece), before.stream()).distinct().toList();
    return remembered.packed(
        "fill up",
        more,
        before,
        PackedText.poses(start, kinds) + remembered.key("", ones(before), ""),
        control,
        () -> fillUpAnew(start, more, control));
  }

  /** One of each kind, to say what they look like. */
  private static List<Demand> ones(List<Piece> pieces) {
    return pieces.stream().distinct().map(piece -> new Demand(piece, 1)).toList();
  }

  private Packed fillUpAnew(Layout start, List<Demand> more, Control control) {
    List<Demand> order = new ArrayList<>(more);
    order.sort(Comparator.comparingDouble(demand -> -demand.piece().shape().area()));
    Layout filled = start;
    for (Demand demand : order) {
      filled = insert(demand, filled, control);
    }
    return new Packed(filled, "filled up");
  }

  private Layout fillInOrder(List<Demand> order, Function<Demand, Layout> first, Control control) {
    Layout layout = empty();
    for (Demand demand : order) {
      layout =
          layout.placements().isEmpty() ? first.apply(demand) : insert(demand, layout, control);
    }
    return layout;
  }

  private Layout insert(Demand demand, Layout layout, Control control) {
    SplittableRandom random = sheet.randomFor(layout);
    Layout filled = layout;
    for (int k = 0; k < demand.count() && !control.stopped(); k++) {
      Optional<Layout> more = sheet.insert(demand.piece(), filled, random);
      if (more.isEmpty()) {
        break;
      }
      filled = more.get();
    }
    return filled;
  }

  /** One more of each kind still wanted, largest first, with all pieces free to move. */
  private Layout squeeze(List<Demand> order, Layout start, Control control) {
    Layout best = start;
    for (Demand demand : order) {
      while (best.count(demand.piece()) < demand.count() && !control.stopped()) {
        if (best.pieceArea() + demand.piece().shape().area() > 0.97 * sheet.area()) {
          break;
        }
        List<Piece> pieces = new ArrayList<>(best.pieces());
        pieces.add(demand.piece());
        Optional<Layout> more =
            sheet.solve(
                pieces, none(pieces), List.of(OneSheet.poses(best)), sheet.squeeze(), control);
        if (more.isEmpty()) {
          break;
        }
        best = more.get();
      }
    }
    return best;
  }

  /**
   * The layout cut down to the pieces that lie furthest to the left, so that the rest stays whole.
   */
  private Packed firstOf(Packed packed, int atMost) {
    List<Placement> placements = packed.layout().placements();
    if (placements.size() <= atMost) {
      return packed;
    }
    List<Placement> kept =
        placements.stream()
            .sorted(Comparator.comparingDouble(placement -> placement.outline().box().maxX()))
            .limit(atMost)
            .toList();
    return new Packed(sheet.of(kept), packed.how());
  }

  /** All may move. */
  private static boolean[] none(List<Piece> pieces) {
    return new boolean[pieces.size()];
  }

  private static List<Piece> copies(Piece piece, int count) {
    return Collections.nCopies(count, piece);
  }
}

package curvestock.packing;

import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.layout.TrueGaps;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * One sheet to be filled, and the two ways to bring pieces onto it: a search for all of a set, or
 * one more piece put into the free wood. What comes out has passed {@link TrueGaps}.
 */
final class OneSheet {

  private static final int ATTEMPTS = 3;

  /** The known number is found anew with this part of the budget, until so often in vain. */
  private static final int ANEW = 16;

  private static final int VAIN_ANEW = 2;
  private static final int PUSH_STEPS = 300;

  /** With a third of that, halves among strips stay below what a coarse grid holds. */
  private static final long LEAST_SQUEEZE = 300_000;

  final Arena arena;
  final SearchSettings settings;
  private final SheetStock sheet;
  private final Cutting cutting;
  private final Map<Piece, Body> bodies = new HashMap<>();

  OneSheet(SheetStock sheet, Cutting cutting, SearchSettings settings) {
    this.sheet = sheet;
    this.cutting = cutting;
    this.settings = settings;
    this.arena = new Arena(sheet, cutting);
  }

  double area() {
    return sheet.area();
  }

  Body body(Piece piece) {
    return bodies.computeIfAbsent(piece, KnownBodies::of);
  }

  private List<Body> bodies(List<Piece> pieces) {
    return pieces.stream().map(this::body).toList();
  }

  Layout layout(List<Piece> pieces, double[] poses) {
    List<Placement> placements = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      double angle = poses[3 * i + 2] % (2 * Math.PI);
      Pose pose = new Pose(poses[3 * i], poses[3 * i + 1], angle < 0 ? angle + 2 * Math.PI : angle);
      placements.add(new Placement(pieces.get(i), pose));
    }
    return of(placements);
  }

  Layout of(List<Placement> placements) {
    return new Layout(sheet, cutting, placements);
  }

  static double[] poses(Layout layout) {
    double[] poses = new double[3 * layout.placements().size()];
    int k = 0;
    for (Placement placement : layout.placements()) {
      poses[k++] = placement.pose().x();
      poses[k++] = placement.pose().y();
      poses[k++] = placement.pose().rotation();
    }
    return poses;
  }

  /** Pieces to be laid, as {@link #solve(List, boolean[], List, long, Control)} takes them. */
  private static final class Asked {
    private final List<Piece> pieces;
    private final boolean[] frozen;
    private final List<double[]> known;

    Asked(List<Piece> pieces, boolean[] frozen, List<double[]> known) {
      this.pieces = pieces;
      this.frozen = frozen;
      this.known = known;
    }
  }

  /**
   * A layout of exactly these pieces; a solution that fails the exact gaps is given up for another.
   *
   * @param frozen which of them stay where {@code known} has them
   * @param known where searches begin: poses of the first pieces, in order, the best layout first
   */
  Optional<Layout> solve(
      List<Piece> pieces, boolean[] frozen, List<double[]> known, long budget, Control control) {
    return solve(new Asked(pieces, frozen, known), budget, 0, new Rounds(), control);
  }

  /**
   * As the other.
   *
   * @param round makes a search for the same pieces take another way
   * @param rounds is told how near it came, if in vain
   */
  private Optional<Layout> solve(
      Asked asked, long budget, int round, Rounds rounds, Control control) {
    List<Body> bodies = bodies(asked.pieces);
    StartingPoses starts = new StartingPoses(arena, bodies, asked.frozen, asked.known);
    for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
      long seed = mixed(asked.pieces.size(), attempt + ATTEMPTS * round);
      Search search = new Search(arena, bodies, asked.frozen, starts, seed);
      Optional<double[]> found = search.solve(budget, control);
      if (found.isEmpty()) {
        rounds.vain(search.nearest());
        return Optional.empty();
      }
      Layout layout = layout(asked.pieces, found.get());
      if (TrueGaps.hold(layout)) {
        return Optional.of(layout);
      }
    }
    rounds.vain(0);
    return Optional.empty();
  }

  /**
   * The pieces pushed from where they lie to where they keep gap and margin, without one leaping
   * over another; nothing if that does not solve it.
   */
  Optional<Layout> pushed(List<Piece> pieces, double[] from) {
    List<Body> set = bodies(pieces);
    boolean[] free = new boolean[set.size()];
    double[] poses = from.clone();
    Overlap overlap = new Overlap(arena, set, free);
    double energy = new Relaxation(overlap, free).all(poses, PUSH_STEPS, Lane.GOAL);
    return Optional.of(poses)
        .filter(reached -> energy <= Lane.GOAL)
        .map(reached -> layout(pieces, reached))
        .filter(TrueGaps::hold);
  }

  /**
   * The layout with one more piece, put last, and no other moved; nothing if no place was found.
   *
   * @param layout right by {@link TrueGaps}
   */
  Optional<Layout> insert(Piece piece, Layout layout, SplittableRandom random) {
    List<Piece> pieces = new ArrayList<>(layout.pieces());
    pieces.add(piece);
    return new Insertion(arena, random, samplesPerInsertion())
        .add(bodies(pieces), poses(layout))
        .map(poses -> layout(pieces, poses))
        .filter(more -> TrueGaps.holdFrom(pieces.size() - 1, more));
  }

  /** Chance of its own for each kind that is inserted at a stage of the work. */
  SplittableRandom randomFor(Layout layout) {
    return new SplittableRandom(settings.seed() + 7919L * layout.placements().size());
  }

  /** A seed for each search of its own: numbers that lie close must not give like searches. */
  private long mixed(int pieces, int attempt) {
    long numbered = 31L * (31L * settings.seed() + pieces) + attempt;
    return new SplittableRandom(numbered).nextLong();
  }

  /**
   * One piece more than the best of the known layouts, which hold one kind each; or nothing.
   *
   * <p>Layouts differ in how near they are to taking another piece. So the budget is spent in
   * rounds, and before each but the first the known number is found anew and becomes the best known
   * layout.
   *
   * @param known is added to
   */
  Optional<Layout> oneMore(
      Piece piece, int count, List<double[]> known, long budget, Control control) {
    List<Piece> more = Collections.nCopies(count + 1, piece);
    Rounds rounds = new Rounds();
    Rounds anew = new Rounds();
    for (int round = 0; rounds.goOn() && !control.stopped(); round++) {
      if (round > 0 && count > 0 && anew.inVain() < VAIN_ANEW) {
        List<double[]> smaller = known.stream().filter(poses -> poses.length < 3 * count).toList();
        Asked same = new Asked(more.subList(0, count), new boolean[count], smaller);
        solve(same, budget / ANEW, round, anew, control)
            .ifPresent(again -> known.add(0, poses(again)));
      }
      Asked all = new Asked(more, new boolean[count + 1], known);
      Optional<Layout> found = solve(all, budget / Rounds.USUAL, round, rounds, control);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /** Pairs of pieces that may be tested in the search for one piece more. */
  long budget() {
    return switch (settings.effort()) {
      case QUICK -> 1_000_000;
      case NORMAL -> 90_000_000;
      case THOROUGH -> 400_000_000;
    };
  }

  /** The same for one piece more among several kinds, which is asked for again and again. */
  long squeeze() {
    return Math.max(budget() / 10, LEAST_SQUEEZE);
  }

  private int samplesPerInsertion() {
    return switch (settings.effort()) {
      case QUICK -> 500;
      case NORMAL -> 2_000;
      case THOROUGH -> 10_000;
    };
  }
}

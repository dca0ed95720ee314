package curvestock.packing;

import curvestock.packing.FlushLattice.Block;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Structured layouts of one shape: each lattice laid in each quarter-turned direction flush to the
 * edges, alone or as two blocks side by side, the second in whatever lattice fits the rest best.
 *
 * <p>Every layout keeps gap and margin by construction. Best first; layouts of equal count in the
 * order in which they were found.
 */
final class Structured {

  /** A layout: poses x, y, angle per piece, and the lattice's name. */
  @SuppressWarnings("ArrayRecordComponent") // internal, never compared or changed
  record Candidate(String name, double[] poses) {
    int count() {
      return poses.length / 3;
    }
  }

  /** Fullest first; a stable sort leaves those of equal count as they were found. */
  private static final Comparator<Candidate> BY_COUNT =
      Comparator.comparingInt(Candidate::count).reversed();

  private static final int KEPT = 12;

  /** Where pieces may yet fall away (cut-off corners, defects), more layouts are worth keeping. */
  private static final int KEPT_ROUGH = 80;

  /** No layout holds more than this, whatever is wanted. */
  static final int MOST_PIECES = 4000;

  /** Fewer than these are never asked for: the choice among lattices would suffer. */
  static final int LEAST_SOUGHT = 400;

  /** With more pieces than this two blocks gain next to nothing and take long. */
  private static final int MOST_SPLIT = 600;

  /** So many layouts are held while more are made; the rest could not be kept in the end. */
  private static final int MOST_HELD = 500;

  private final Arena arena;
  private final Body body;
  private final List<PeriodicLattice> lattices;

  /** Each lattice in each of four directions. */
  private final List<List<FlushLattice>> flushLattices = new ArrayList<>();

  /** All that a second block may be. */
  private final List<FlushLattice> seconds = new ArrayList<>();

  private final int most;

  /** A rectangle left beside a first block, in mm. */
  private record Rest(double width, double height) {}

  /** The fullest block in it, if one of at least so many was found. */
  private record Second(int least, Optional<Block> found) {}

  private final Map<Rest, Second> asked = new HashMap<>();

  Structured(Arena arena, Body body) {
    this(arena, body, MOST_PIECES);
  }

  /**
   * @param wanted so many pieces are enough; layouts may hold more
   */
  Structured(Arena arena, Body body, int wanted) {
    this.most = Math.min(MOST_PIECES, Math.max(LEAST_SOUGHT, wanted));
    this.arena = arena;
    this.body = body;
    this.lattices = body.lattices(arena.gap);
    boolean mirrored = isMirrored(body);
    for (int k = 0; k < 4 * lattices.size(); k++) {
      flushLattices.add(FlushLattice.all(body, lattices.get(k / 4), k % 4, mirrored, arena.grain));
      if (k % 4 < 2) {
        seconds.addAll(flushLattices.get(k));
      }
    }
  }

  /** Whether the piece is its own mirror image about its x axis, as sectors and strips are. */
  private static boolean isMirrored(Body body) {
    for (int k = 0; k < body.cornerX.length; k++) {
      boolean found = false;
      for (int j = 0; j < body.cornerX.length && !found; j++) {
        found =
            Math.hypot(body.cornerX[k] - body.cornerX[j], body.cornerY[k] + body.cornerY[j]) < 1e-9;
      }
      if (!found) {
        return false;
      }
    }
    return Arrays.stream(body.arcCentreY).allMatch(y -> Math.abs(y) < 1e-9);
  }

  List<Candidate> candidates() {
    double width = arena.usableWidth();
    double height = arena.usableHeight();
    List<Candidate> found = new ArrayList<>();
    for (List<FlushLattice> direction : flushLattices) {
      direction.forEach(flushLattice -> offer(found, flushLattice.in(width, height, most)));
    }
    int alone = found.stream().mapToInt(Candidate::count).max().orElse(0);
    for (int k = 0; k < flushLattices.size(); k++) {
      if (k % 4 < 2) {
        split(found, flushLattices.get(k), width, height, alone);
      }
    }
    found.sort(BY_COUNT);
    return varied(found, kept());
  }

  private int kept() {
    return arena.isPlain() ? KEPT : KEPT_ROUGH;
  }

  /** Drops those that {@link #varied} would drop anyway; keeps the order of equals. */
  private void thinOut(List<Candidate> found) {
    found.sort(BY_COUNT);
    Map<String, Integer> taken = new HashMap<>();
    found.removeIf(candidate -> taken.merge(candidate.name(), 1, Integer::sum) > kept() / 4);
  }

  /**
   * The first ones, but no more than a quarter of them of one lattice: a search starts from them.
   */
  private static List<Candidate> varied(List<Candidate> found, int most) {
    Map<String, Integer> taken = new HashMap<>();
    List<Candidate> kept = new ArrayList<>();
    for (Candidate candidate : found) {
      if (kept.size() < most && taken.merge(candidate.name(), 1, Integer::sum) <= most / 4) {
        kept.add(candidate);
      }
    }
    return List.copyOf(kept);
  }

  private void offer(List<Candidate> to, Block block) {
    double left = arena.box.minX() + arena.margin;
    double low = arena.box.minY() + arena.margin;
    double[] poses = new double[3 * block.count()];
    for (int i = 0; i < block.count(); i++) {
      double[] pose = block.poses().get(i);
      poses[3 * i] = pose[0] + left;
      poses[3 * i + 1] = pose[1] + low;
      poses[3 * i + 2] = pose[2];
    }
    if (block.count() > 0) {
      to.add(new Candidate(block.name(), poses));
      if (to.size() % MOST_HELD == 0) {
        thinOut(to);
      }
    }
  }

  /**
   * A first block cut off after each of its columns or rows, and the best of all lattices in the
   * rest; only what holds as many as one block alone.
   */
  private void split(
      List<Candidate> to, List<FlushLattice> direction, double width, double height, int atLeast) {
    Optional<Block> full = fullest(direction, width, height, 1);
    if (full.isEmpty() || full.get().count() > MOST_SPLIT || full.get().count() >= most) {
      return;
    }
    for (boolean alongX : new boolean[] {true, false}) {
      split(to, full.get(), alongX, width, height, atLeast);
    }
  }

  private void split(
      List<Candidate> to, Block full, boolean alongX, double width, double height, int atLeast) {
    List<Double> cuts = new ArrayList<>();
    for (double[] pose : full.poses()) {
      TurnedBox box = TurnedBox.of(body, pose[2]);
      cuts.add(alongX ? pose[0] + box.maxX() : pose[1] + box.maxY());
    }
    cuts.sort(null);
    double last = -1;
    for (double cut : cuts) {
      if (cut - last > 0.5) {
        last = cut;
        join(full, alongX, cut, width, height, atLeast).ifPresent(joined -> offer(to, joined));
      }
    }
  }

  private Optional<Block> join(
      Block full, boolean alongX, double cut, double width, double height, int atLeast) {
    List<double[]> poses = new ArrayList<>();
    for (double[] pose : full.poses()) {
      TurnedBox box = TurnedBox.of(body, pose[2]);
      if ((alongX ? pose[0] + box.maxX() : pose[1] + box.maxY()) <= cut + FlushLattice.ROUNDING) {
        poses.add(pose);
      }
    }
    double start = cut + arena.gap;
    double restX = alongX ? width - start : width;
    double restY = alongX ? height : height - start;
    Optional<Block> rest = second(restX, restY, atLeast - poses.size());
    if (rest.isEmpty()) {
      return poses.size() < atLeast ? Optional.empty() : Optional.of(new Block(full.name(), poses));
    }
    for (double[] pose : rest.get().poses()) {
      poses.add(
          new double[] {pose[0] + (alongX ? start : 0), pose[1] + (alongX ? 0 : start), pose[2]});
    }
    return Optional.of(new Block(full.name() + " and " + rest.get().name(), poses));
  }

  /**
   * The fullest second block, if it holds so many: what others have asked for the same rest, or
   * what its area forbids, is not sought again.
   */
  private Optional<Block> second(double width, double height, int atLeast) {
    int least = Math.max(1, atLeast);
    Second known = asked.get(new Rest(width, height));
    boolean answered = known != null && (known.found.isPresent() || known.least <= least);
    if (!answered && width > 0 && height > 0 && least * body.area <= width * height * (1 + 1e-9)) {
      known = new Second(least, fullest(seconds, width, height, least));
      asked.put(new Rest(width, height), known);
      answered = true;
    }
    return answered ? known.found.filter(block -> block.count() >= least) : Optional.empty();
  }

  /** The first of the fullest, if it holds so many. */
  private Optional<Block> fullest(
      List<FlushLattice> among, double width, double height, int atLeast) {
    Optional<Block> fullest = Optional.empty();
    int sought = atLeast;
    for (FlushLattice flushLattice : among) {
      if (flushLattice.atMost(width, height) >= sought) {
        Block block = flushLattice.in(width, height, most);
        if (block.count() >= sought) {
          fullest = Optional.of(block);
          sought = block.count() + 1;
        }
      }
    }
    return fullest;
  }
}

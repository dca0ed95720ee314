package curvestock.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Structured layouts of one shape: each pattern laid in each quarter-turned direction flush to the
 * edges, alone or as two blocks side by side, the second in whatever pattern fits the rest best.
 *
 * <p>Every layout keeps gap and margin by construction. Best first; layouts of equal count in the
 * order in which they were found.
 */
final class Structured {

  /** A layout: poses x, y, angle per piece, and the pattern's name. */
  @SuppressWarnings("ArrayRecordComponent") // internal, never compared or changed
  record Candidate(String name, double[] poses) {
    int count() {
      return poses.length / 3;
    }
  }

  private record Block(String name, List<double[]> poses) {
    int count() {
      return poses.size();
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

  /** Fewer than these are never asked for: the choice among patterns would suffer. */
  private static final int LEAST_SOUGHT = 400;

  /** With more pieces than this two blocks gain next to nothing and take long. */
  private static final int MOST_SPLIT = 600;

  /** So many layouts are held while more are made; the rest could not be kept in the end. */
  private static final int MOST_HELD = 500;

  /**
   * Pieces that fill a sheet exactly may stand out by this much (mm): the sum of what {@link
   * Contact} adds to each of up to two hundred steps.
   */
  private static final double ROUNDING = 2e-7;

  private final Arena arena;
  private final Body body;
  private final List<Pattern> patterns;

  /** Whether the piece is its own mirror image about its x axis, as sectors and strips are. */
  private final boolean mirrored;

  private final int most;

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
    this.patterns = new PatternFamilies(body, arena.gap).all();
    this.mirrored = isMirrored(body);
  }

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
    return Arrays.stream(body.hubY).allMatch(y -> Math.abs(y) < 1e-9);
  }

  List<Candidate> candidates() {
    double width = arena.usableWidth();
    double height = arena.usableHeight();
    List<Candidate> found = new ArrayList<>();
    for (Pattern pattern : patterns) {
      for (int quarter = 0; quarter < 4; quarter++) {
        for (Block block : blocks(pattern, quarter, width, height)) {
          offer(found, block);
        }
      }
    }
    int alone = found.stream().mapToInt(Candidate::count).max().orElse(0);
    for (Pattern pattern : patterns) {
      for (int quarter = 0; quarter < 2; quarter++) {
        split(found, pattern, quarter, width, height, alone);
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
   * The first ones, but no more than a quarter of them of one pattern: a search starts from them.
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
      double[] pose = block.poses.get(i);
      poses[3 * i] = pose[0] + left;
      poses[3 * i + 1] = pose[1] + low;
      poses[3 * i + 2] = pose[2];
    }
    if (block.count() > 0) {
      to.add(new Candidate(block.name, poses));
      if (to.size() % MOST_HELD == 0) {
        thinOut(to);
      }
    }
  }

  /**
   * A first block cut off after each of its columns or rows, and the best of all patterns in the
   * rest.
   */
  private void split(
      List<Candidate> to, Pattern pattern, int quarter, double width, double height, int atLeast) {
    Block full = best(blocks(pattern, quarter, width, height));
    if (full == null || full.count() > MOST_SPLIT || full.count() >= most) {
      return;
    }
    for (boolean alongX : new boolean[] {true, false}) {
      split(to, full, alongX, width, height, atLeast);
    }
  }

  private void split(
      List<Candidate> to, Block full, boolean alongX, double width, double height, int atLeast) {
    List<Double> cuts = new ArrayList<>();
    for (double[] pose : full.poses) {
      Extent extent = Extent.of(body, pose[2]);
      cuts.add(alongX ? pose[0] + extent.maxX() : pose[1] + extent.maxY());
    }
    cuts.sort(null);
    double last = -1;
    for (double cut : cuts) {
      if (cut - last > 0.5) {
        last = cut;
        Block joined = join(full, alongX, cut, width, height);
        if (joined.count() >= atLeast) {
          offer(to, joined);
        }
      }
    }
  }

  private Block join(Block full, boolean alongX, double cut, double width, double height) {
    List<double[]> poses = new ArrayList<>();
    for (double[] pose : full.poses) {
      Extent extent = Extent.of(body, pose[2]);
      if ((alongX ? pose[0] + extent.maxX() : pose[1] + extent.maxY()) <= cut + ROUNDING) {
        poses.add(pose);
      }
    }
    double start = cut + arena.gap;
    double restX = alongX ? width - start : width;
    double restY = alongX ? height : height - start;
    Block rest = null;
    for (Pattern pattern : patterns) {
      for (int quarter = 0; quarter < 2; quarter++) {
        Block block = best(blocks(pattern, quarter, restX, restY));
        if (block != null && (rest == null || block.count() > rest.count())) {
          rest = block;
        }
      }
    }
    String name = full.name;
    if (rest != null) {
      name = full.name + " and " + rest.name;
      for (double[] pose : rest.poses) {
        poses.add(
            new double[] {pose[0] + (alongX ? start : 0), pose[1] + (alongX ? 0 : start), pose[2]});
      }
    }
    return new Block(name, poses);
  }

  private static Block best(List<Block> blocks) {
    Block best = null;
    for (Block block : blocks) {
      if (block.count() > 0 && (best == null || block.count() > best.count())) {
        best = block;
      }
    }
    return best;
  }

  /** The pattern turned by quarters, flush left or right and low or high with each cell piece. */
  private List<Block> blocks(Pattern pattern, int quarter, double width, double height) {
    List<Block> blocks = new ArrayList<>();
    double turn = quarter * Math.PI / 2;
    for (int mirror = 0; mirror < 2; mirror++) {
      double[] step = turned(pattern.stepX(), pattern.stepY(), quarter);
      double[] next =
          turned(pattern.nextX(), mirror == 0 ? pattern.nextY() : -pattern.nextY(), quarter);
      if (mirror == 1 && (pattern.nextY() == 0 || pattern.cell().size() > 1 || !mirrored)) {
        continue;
      }
      if (mirror == 1) {
        // One mirror-symmetric piece a cell: the mirrored pattern leans the other way.
        step = turned(-pattern.stepX(), pattern.stepY(), quarter);
      }
      List<double[]> cell = new ArrayList<>();
      for (double[] pose : pattern.cell()) {
        double[] at = turned(pose[0], pose[1], quarter);
        cell.add(new double[] {at[0], at[1], pose[2] + turn});
      }
      if (cell.stream().anyMatch(pose -> !body.grainAllows(pose[2], arena.grain))) {
        continue;
      }
      for (double[] anchorX : cell) {
        Extent ex = Extent.of(body, anchorX[2]);
        for (double[] anchorY : cell) {
          Extent ey = Extent.of(body, anchorY[2]);
          blocks.add(
              clip(
                  pattern.name(),
                  cell,
                  step,
                  next,
                  -ex.minX() - anchorX[0],
                  -ey.minY() - anchorY[1],
                  width,
                  height));
        }
      }
    }
    return blocks;
  }

  private static double[] turned(double x, double y, int quarter) {
    return switch (quarter % 4) {
      case 0 -> new double[] {x, y};
      case 1 -> new double[] {-y, x};
      case 2 -> new double[] {-x, -y};
      default -> new double[] {y, -x};
    };
  }

  /** All pieces of the lattice that lie in the rectangle. */
  private Block clip(
      String name,
      List<double[]> cell,
      double[] step,
      double[] next,
      double originX,
      double originY,
      double width,
      double height) {
    List<double[]> poses = new ArrayList<>();
    double determinant = step[0] * next[1] - step[1] * next[0];
    if (width <= 0 || height <= 0 || Math.abs(determinant) < 1) {
      return new Block(name, poses);
    }
    for (double[] piece : cell) {
      Extent extent = Extent.of(body, piece[2]);
      double baseX = originX + piece[0];
      double baseY = originY + piece[1];
      double lowX = -extent.minX() - ROUNDING;
      double highX = width - extent.maxX() + ROUNDING;
      double lowY = -extent.minY() - ROUNDING;
      double highY = height - extent.maxY() + ROUNDING;
      if (lowX > highX || lowY > highY) {
        continue;
      }
      int[] range = range(step, next, determinant, baseX, baseY, lowX, highX, lowY, highY);
      for (int j = range[2]; j <= range[3] && poses.size() < most; j++) {
        for (int i = range[0]; i <= range[1] && poses.size() < most; i++) {
          double x = baseX + i * step[0] + j * next[0];
          double y = baseY + i * step[1] + j * next[1];
          if (x >= lowX && x <= highX && y >= lowY && y <= highY) {
            poses.add(new double[] {x, y, piece[2]});
          }
        }
      }
    }
    return new Block(name, poses);
  }

  /** Least and greatest multiples of step and next that can reach the rectangle. */
  private static int[] range(
      double[] step,
      double[] next,
      double determinant,
      double baseX,
      double baseY,
      double lowX,
      double highX,
      double lowY,
      double highY) {
    double[] is = new double[4];
    double[] js = new double[4];
    int k = 0;
    for (double x : new double[] {lowX, highX}) {
      for (double y : new double[] {lowY, highY}) {
        double dx = x - baseX;
        double dy = y - baseY;
        is[k] = (dx * next[1] - dy * next[0]) / determinant;
        js[k] = (step[0] * dy - step[1] * dx) / determinant;
        k++;
      }
    }
    java.util.Arrays.sort(is);
    java.util.Arrays.sort(js);
    return new int[] {
      (int) Math.floor(is[0]),
      (int) Math.ceil(is[3]),
      (int) Math.floor(js[0]),
      (int) Math.ceil(js[3])
    };
  }
}

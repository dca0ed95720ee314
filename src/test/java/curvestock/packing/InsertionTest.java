package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.layout.TrueGaps;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** One more block among many. */
class InsertionTest {

  private static final Piece BLOCK = Sheets.strip("B", 1, 0.5);
  private static final SheetStock SHEET = Sheets.inches(96, 48);

  /** Rows of fifty, close together in the lower part of the sheet. */
  private static double[] poses(int count) {
    double[] poses = new double[3 * count];
    for (int i = 0; i < count; i++) {
      poses[3 * i] = 25.4 * (1 + 1.2 * (i % 50));
      poses[3 * i + 1] = 25.4 * (1 + 0.7 * Math.floorDiv(i, 50));
    }
    return poses;
  }

  private static Optional<double[]> inserted(int count) {
    Arena arena = new Arena(SHEET, Sheets.USUAL);
    List<Body> bodies = Collections.nCopies(count + 1, new Body(BLOCK));
    return new Insertion(arena, new SplittableRandom(1), 100).add(bodies, poses(count));
  }

  @Test
  void add_amongAThousandBlocks_findsARightPlace() {
    double[] found = inserted(1000).orElseThrow();

    List<Placement> placements = new ArrayList<>();
    for (int k = 0; k < found.length; k += 3) {
      placements.add(new Placement(BLOCK, new Pose(found[k], found[k + 1], found[k + 2])));
    }
    assertThat(placements).hasSize(1001);
    assertThat(TrueGaps.hold(new Layout(SHEET, Sheets.USUAL, placements))).isTrue();
  }

  /** Four times the blocks may take four times the memory, not sixteen times. */
  @Test
  void add_amongFourTimesTheBlocks_allocatesInProportion() {
    inserted(10);

    long few = allocated(250);
    long many = allocated(1000);

    assertThat(many).isLessThan(6 * few);
    assertThat(many).isLessThan(4_000_000);
  }

  private static long allocated(int count) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    inserted(count);
    return threads.getCurrentThreadAllocatedBytes() - before;
  }
}

package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import curvestock.piece.Piece;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Blocks of flushLattices: their bound, and how much work two of them side by side take. */
class StructuredTest {

  /** By its definition: no rectangle holds more of a flushLattice than its bound says. */
  @Test
  void atMost_ofRandomLattices_isNeverLessThanTheBlockAndSeldomMore() {
    int exact = 0;
    int all = 0;
    for (long seed = 1; seed <= 8; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Body body = new Body(Piece.of("A", "random", random.shape()));
      for (PeriodicLattice lattice : new LatticeFamilies(body, 3.2).all()) {
        for (int quarter = 0; quarter < 4; quarter++) {
          for (FlushLattice flushLattice : FlushLattice.all(body, lattice, quarter, true, 0)) {
            double width = random.between(100, 1500);
            double height = random.between(100, 1500);

            int count = flushLattice.in(width, height, Integer.MAX_VALUE).count();

            assertThat(flushLattice.atMost(width, height))
                .as("seed %d, %s, quarter %d, %f x %f", seed, lattice, quarter, width, height)
                .isGreaterThanOrEqualTo(count);
            exact += flushLattice.atMost(width, height) == count ? 1 : 0;
            all++;
          }
        }
      }
    }
    assertThat(exact).isGreaterThan(all * 9 / 10);
  }

  /** 600 x 400 mm, small strips: measured in bytes, since time depends on the machine. */
  @Test
  void candidates_ofSmallStrips_takeLittleWork() {
    Piece strip = Sheets.strip("T", 1.5, 0.5);
    Arena arena = new Arena(Sheets.inches(24, 16), Sheets.USUAL);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();

    List<Structured.Candidate> found = new Structured(arena, new Body(strip), 4).candidates();

    assertThat(found.get(0).count()).isGreaterThan(300);
    assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(600_000_000);
  }
}

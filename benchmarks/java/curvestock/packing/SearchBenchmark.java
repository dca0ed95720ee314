package curvestock.packing;

import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * The two halves of the engine on quarter turns (R 30 in, 5 in wide) and a 96 × 48 in sheet: all
 * structured layouts, and one move of a search lane for 14 pieces, of which it never finds room.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SearchBenchmark {

  private static final int PIECES = 14;
  private static final int MOVES_PER_START = 80;

  private final Piece piece =
      Piece.of(
          "A",
          "arc",
          new AnnularSector(Length.ofInches(30), Length.ofInches(5), Angle.ofDegrees(90)));
  private final SheetStock sheet =
      SheetStock.rectangle(
          "sheet", Length.ofInches(96), Length.ofInches(48), Length.ofMillimetres(12), Money.ZERO);
  private final Cutting cutting =
      Cutting.leaving(Length.ofInches(0.125), Length.ZERO, Length.ofInches(0.25));
  private final Arena arena = new Arena(sheet, cutting);
  private final Body body = new Body(piece);
  private final boolean[] frozen = new boolean[PIECES];
  private final List<Body> bodies = Collections.nCopies(PIECES, body);
  private final StartingPoses starts = new StartingPoses(arena, bodies, frozen, List.of());
  private final SplittableRandom random = new SplittableRandom(1);
  private final Lane lane = new Lane(new Overlap(arena, bodies), arena, frozen, random.split(), 60);
  private int moves;

  /** From the piece's outline to the list of structured layouts. */
  @Benchmark
  public int structuredLayouts() {
    return new Structured(arena, new Body(piece)).candidates().size();
  }

  /** One move with its relaxation; a fresh start every 80 moves, as in the search. */
  @Benchmark
  public double laneStep() {
    if (moves++ % MOVES_PER_START == 0) {
      lane.start(starts.next(moves, random));
    } else {
      lane.step();
    }
    return lane.bestEnergy();
  }
}

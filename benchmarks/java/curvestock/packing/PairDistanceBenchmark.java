package curvestock.packing;

import curvestock.geometry.Clearance;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;

/**
 * Pairs of pieces judged per second: by true arcs in three ways, and by JTS on polygons flattened
 * to 0.001 in, with and without its index of edges. The flattening itself is not charged to JTS.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@OperationsPerInvocation(NearPairs.COUNT)
public class PairDistanceBenchmark {

  private static final double FAR_IN = 50_000;

  private final NearPairs pairs = new NearPairs(1);
  private final double[] pose = new double[6];
  private final double[] gradient = new double[6];

  /** {@link Clearance#between} of two outlines that already lie where they lie. */
  @Benchmark
  public void exactClearance(Blackhole sink) {
    for (int k = 0; k < NearPairs.COUNT; k++) {
      sink.consume(Clearance.between(pairs.first[k], pairs.second[k]));
    }
  }

  /** {@link Contact#gap}: the gap by distance fields, as structured layouts use it. */
  @Benchmark
  public void contactGap(Blackhole sink) {
    for (int k = 0; k < NearPairs.COUNT; k++) {
      sink.consume(Contact.gap(pairs.body, 0, pairs.body, pairs.x[k], pairs.y[k], pairs.turn[k]));
    }
  }

  /** One evaluation of {@link Overlap} with its gradient, as the search uses it. */
  @Benchmark
  public void overlapWithGradient(Blackhole sink) {
    for (int k = 0; k < NearPairs.COUNT; k++) {
      pose[0] = FAR_IN;
      pose[1] = FAR_IN;
      pose[2] = 0;
      pose[3] = FAR_IN + pairs.x[k];
      pose[4] = FAR_IN + pairs.y[k];
      pose[5] = pairs.turn[k];
      sink.consume(pairs.overlap.evaluate(pose, gradient));
    }
  }

  @Benchmark
  public void jtsDistance(Blackhole sink) {
    for (int k = 0; k < NearPairs.COUNT; k++) {
      sink.consume(DistanceOp.distance(pairs.firstFlat[k], pairs.secondFlat[k]));
    }
  }

  /** JTS's indexed distance of boundaries; blind to a piece that lies wholly inside another. */
  @Benchmark
  public void jtsIndexedDistance(Blackhole sink) {
    for (int k = 0; k < NearPairs.COUNT; k++) {
      sink.consume(IndexedFacetDistance.distance(pairs.firstFlat[k], pairs.secondFlat[k]));
    }
  }
}

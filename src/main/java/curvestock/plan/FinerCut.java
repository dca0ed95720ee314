package curvestock.plan;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.PieceKind;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Segmentation;
import curvestock.job.Job;
import curvestock.packing.Packers;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.units.Angle;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The fewest pieces to a turn of which every piece of the helix's roadbed fits a sheet, those with
 * a straight included. Every one was planned and laid on a sheet.
 */
record FinerCut(int perTurn) {

  private static final int MOST = 48;

  /** Whether these are what the roadbed is cut into, segments without a straight among them. */
  static boolean isAboutSegments(Job job, Set<String> tooLarge) {
    if (job.structure().isEmpty()) {
      return false;
    }
    HelixPlan plan = job.structure().get().plan();
    Set<String> bed =
        plan.roadbed().kinds().stream().map(PieceKind::id).collect(Collectors.toSet());
    return bed.containsAll(tooLarge)
        && plan.roadbed().kinds().stream()
            .anyMatch(
                kind ->
                    tooLarge.contains(kind.id())
                        && kind.blankDemand().piece().shape().blank() instanceof AnnularSector);
  }

  /** Finer than the job's own segments; empty if none of up to 48 to a turn will do. */
  static Optional<FinerCut> of(Job job) {
    HelixSpec spec = job.structure().orElseThrow().plan().spec();
    double now = 360 / spec.segmentation().segment().degrees();
    for (int perTurn = (int) Math.floor(now + 1e-9) + 1; perTurn <= MOST; perTurn++) {
      if (fits(job, spec, perTurn)) {
        return Optional.of(new FinerCut(perTurn));
      }
    }
    return Optional.empty();
  }

  private static boolean fits(Job job, HelixSpec spec, int perTurn) {
    try {
      Segmentation finer = Segmentation.of(Angle.ofDegrees(360.0 / perTurn));
      return HelixPlan.of(spec.with(finer), job.style()).roadbed().kinds().stream()
          .allMatch(kind -> fits(job, kind.blankDemand().piece()));
    } catch (IllegalArgumentException impossible) {
      return false;
    }
  }

  /** Whether the piece, without its holes, lies on one of the sheets. */
  static boolean fits(Job job, Piece piece) {
    return job.sheets().stream()
        .filter(sheet -> job.suits(piece, sheet))
        .map(sheet -> Packers.FORGETFUL.of(sheet, job.cutting(), job.search()))
        .anyMatch(packer -> !packer.structured(piece).layout().placements().isEmpty());
  }
}

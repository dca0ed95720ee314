package curvestock.helix.build;

import curvestock.helix.course.CentreLine;
import curvestock.helix.course.HeightProfile;
import curvestock.helix.spec.HelixSpec;
import curvestock.units.Length;
import java.util.Comparator;
import java.util.List;

/** Every piece with where it goes and how high, in the order of building. */
public final class AssemblySchedule {

  private static final double ROUNDING = 1e-6;

  private final HelixSpec spec;
  private final CentreLine line;
  private final HeightProfile profile;
  private final List<ScheduleRow> rows;

  public AssemblySchedule(HelixSpec spec, CentreLine line, HeightProfile profile, Roadbed roadbed) {
    this.spec = spec;
    this.line = line;
    this.profile = profile;
    rows =
        roadbed.pieces().stream()
            .sorted(
                Comparator.comparingDouble((BedPiece piece) -> laidAfter(piece, roadbed.pieces()))
                    .thenComparing(BedPiece::layer)
                    .thenComparing(BedPiece::from))
            .map(this::row)
            .toList();
  }

  /** Where the last piece begins that must lie before this one can: those under it. */
  private static double laidAfter(BedPiece piece, List<BedPiece> pieces) {
    return pieces.stream()
        .filter(other -> other.layer() < piece.layer() && other.from() < piece.to() - ROUNDING)
        .mapToDouble(BedPiece::from)
        .reduce(piece.from(), Math::max);
  }

  private ScheduleRow row(BedPiece piece) {
    return new ScheduleRow(
        piece,
        line.turnAt(piece.from()),
        line.bearing(piece.from()),
        line.bearing(piece.to()),
        underside(piece, piece.from()),
        underside(piece, piece.to()),
        railTop(piece.from()),
        railTop(piece.to()));
  }

  private Length underside(BedPiece piece, double at) {
    return foot(at).plus(spec.stack().plywood().times(piece.layer() - 1.0));
  }

  private Length railTop(double at) {
    return foot(at).plus(spec.railAboveUnderside());
  }

  /** Underside of the lowest layer above the base. */
  private Length foot(double at) {
    return spec.supports().footHeight().plus(Length.ofMillimetres(profile.heightAt(at)));
  }

  /** From the bottom up; a piece of the upper layer when all that it lies on is laid. */
  public List<ScheduleRow> rows() {
    return rows;
  }
}

package curvestock.helix.build;

import curvestock.helix.course.CentreLine;
import curvestock.helix.course.HeightProfile;
import curvestock.helix.spec.HelixSpec;
import curvestock.units.Length;
import java.util.List;

/** Every piece with where it goes and how high, in the order of building. */
public final class AssemblySchedule {

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
                (a, b) ->
                    a.from() == b.from()
                        ? Integer.compare(a.layer(), b.layer())
                        : Double.compare(a.from(), b.from()))
            .map(this::row)
            .toList();
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

  /** From the bottom up; where two layers begin at one place the lower first. */
  public List<ScheduleRow> rows() {
    return rows;
  }
}

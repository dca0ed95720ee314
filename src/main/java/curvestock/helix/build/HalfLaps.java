package curvestock.helix.build;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.course.CentreLine;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.piece.AnnularSector;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Where the pieces of a helix are halved in thickness: at both ends, but for the outermost. */
public final class HalfLaps {

  private final HelixSpec spec;
  private final CentreLine line;

  public HalfLaps(HelixSpec spec, CentreLine line) {
    this.spec = spec;
    this.line = line;
  }

  /** The laps of one piece, in the frame of its kind; none if joints are of another sort. */
  public List<Lap> on(BedPiece piece) {
    List<Lap> laps = new ArrayList<>();
    if (spec.construction() instanceof Construction.HalfLap joint) {
      double half = joint.lap().millimetres() / 2;
      piece.lower().ifPresent(at -> laps.add(lap(LapEnd.LOWER, piece.cutFrom(), at.at() + half)));
      piece.upper().ifPresent(at -> laps.add(lap(LapEnd.UPPER, at.at() - half, piece.cutTo())));
    }
    Pose home = piece.pose().inverse();
    return laps.stream().map(lap -> lap.at(home)).toList();
  }

  private Lap lap(LapEnd end, double from, double to) {
    List<Edge> part = line.portion(from, to);
    return new Lap(end, end == LapEnd.UPPER ? part : reversed(part), spec.ground().width());
  }

  private static List<Edge> reversed(List<Edge> part) {
    List<Edge> back = new ArrayList<>();
    for (int i = part.size() - 1; i >= 0; i--) {
      back.add(part.get(i).reversed());
    }
    return back;
  }

  /** A lap of the given length on an end of a plain sector that climbs counter-clockwise. */
  public static Lap of(AnnularSector sector, LapEnd end, Length length) {
    double radius = sector.radius().millimetres();
    double turn = end == LapEnd.UPPER ? 1 : -1;
    double sweep = length.millimetres() / radius;
    double shoulder = turn * (sector.sweep().radians() / 2 - sweep);
    Arc course = new Arc(Point.ORIGIN, radius, shoulder, turn * sweep);
    return new Lap(end, List.of(course), sector.width());
  }
}

package curvestock.helix.build;

import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import java.util.List;

/**
 * Something to draw on a piece of roadbed before it leaves the sheet, in the frame of its kind.
 *
 * @param sort what it is for
 * @param lines straight lines, from point to point
 * @param words what is written beside it; empty for nothing
 * @param wordsAt where the middle of the words may stand, best first
 */
public record RoadbedMark(Sort sort, List<Segment> lines, String words, List<Point> wordsAt) {

  /** What a mark is for. */
  public enum Sort {
    /**
     * Where a support carries the piece: a tick at each edge that is held, and the station's name.
     */
    STATION,
    /** A cross where a splice plate's screw goes through. */
    SCREW,
    /** Where half the thickness ends at a half-lap. */
    SHOULDER
  }

  public RoadbedMark {
    lines = List.copyOf(lines);
    wordsAt = List.copyOf(wordsAt);
  }

  /** The same mark on a piece that lies there. */
  public RoadbedMark at(Pose pose) {
    return new RoadbedMark(
        sort,
        lines.stream().map(line -> line.at(pose)).toList(),
        words,
        wordsAt.stream().map(pose::apply).toList());
  }
}

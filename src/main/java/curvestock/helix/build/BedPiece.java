package curvestock.helix.build;

import curvestock.geometry.Pose;
import java.util.List;
import java.util.Optional;

/**
 * One piece of roadbed in its place.
 *
 * @param number as on schedule and drawing; unique
 * @param kindId which of the {@link PieceKind kinds} it is
 * @param layer 1 for the lower layer
 * @param from joint or ring end where it begins, in millimetres along the line
 * @param to joint or ring end where it ends
 * @param cutFrom where its wood begins: before {@code from} by a lead-in or half a lap
 * @param cutTo where its wood ends
 * @param lower the joint at its lower end, if any
 * @param upper the joint at its upper end, if any
 * @param stations places along the line where it is held up: within the wood, or, of a block, so
 *     near its joint that the block reaches under it
 * @param pose where its frame lies in plan
 */
public record BedPiece(
    String number,
    String kindId,
    int layer,
    double from,
    double to,
    double cutFrom,
    double cutTo,
    Optional<Joint> lower,
    Optional<Joint> upper,
    List<StationPlace> stations,
    Pose pose) {
  public BedPiece {
    stations = List.copyOf(stations);
  }

  /** A station and the distance along the line at which a turn passes it. */
  public record StationPlace(Station station, double at) {}
}

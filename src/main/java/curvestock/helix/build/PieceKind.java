package curvestock.helix.build;

import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.piece.Demand;
import curvestock.piece.Drilled;
import curvestock.piece.Piece;
import curvestock.piece.Shape;
import java.util.List;

/**
 * Pieces that are cut alike.
 *
 * <p>Frames: a sector's and a strip's are those of their shapes. Any other piece has its origin in
 * the middle of its lower end and +x in the direction of climb.
 *
 * @param id unique among the pieces of the helix
 * @param name in plain words
 * @param blank outline without holes, which is all that packing needs to know
 * @param holes through it, in the frame of the blank
 * @param count how many are wanted
 */
public record PieceKind(String id, String name, Shape blank, List<Hole> holes, int count) {
  public PieceKind {
    holes = List.copyOf(holes);
  }

  /** The piece without its holes. */
  public Demand blankDemand() {
    return new Demand(Piece.of(id, name, blank), count);
  }

  /** The piece as it is cut: holes are part of the outline. */
  public Demand demand() {
    return new Demand(Piece.of(id, name, drilled()), count);
  }

  private Shape drilled() {
    if (holes.isEmpty()) {
      return blank;
    }
    List<Loop> rims = holes.stream().map(Hole::rim).toList();
    return new Drilled(blank, rims);
  }

  /** The same kind, so many more times. */
  PieceKind plus(int more) {
    return new PieceKind(id, name, blank, holes, count + more);
  }

  /** The blank's outline where it lies at {@code pose}. */
  public Outline at(Pose pose) {
    return blank.outline().at(pose);
  }
}

package curvestock.layout;

import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.piece.Piece;

/** A piece laid on a sheet: its frame moved by {@code pose} in the sheet's frame. */
public record Placement(Piece piece, Pose pose) {

  /** The boundary where it lies on the sheet. */
  public Outline outline() {
    return piece.shape().outline().at(pose);
  }
}

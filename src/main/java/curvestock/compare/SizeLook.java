package curvestock.compare;

import curvestock.layout.Layout;
import curvestock.piece.Piece;
import curvestock.units.Angle;
import curvestock.units.Money;

/**
 * One segment size before anything is searched.
 *
 * @param design the helix so divided
 * @param pattern the fullest regular pattern of its segment on the main sheet; may hold nothing
 * @param sheets about how many sheets as full as that hold the whole job: a guess, not a bound; 0
 *     where the pattern holds nothing
 * @param paid about what so many sheets cost, tax included
 */
public record SizeLook(Design design, Layout pattern, int sheets, Money paid) {

  public Division division() {
    return design.division();
  }

  /** The larger of its angles. */
  public Angle angle() {
    return division().largest();
  }

  /** Pieces of the helix that are cut, with their spares. */
  public int pieces() {
    return design.cut();
  }

  public int joints() {
    return design.parts().joints();
  }

  /** The whole segment there is most of. */
  public Piece segment() {
    return design.segment();
  }

  /** Segments on a sheet, by the pattern. */
  public int perSheet() {
    return pattern.placements().size();
  }

  /** The rectangle of the piece that takes most room. */
  public EnclosingRectangle largest() {
    return design.largest();
  }
}

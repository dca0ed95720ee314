package curvestock.plan;

import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;

/**
 * What any cheaper purchase would have to do with one piece, and how far what was found is from it.
 *
 * @param needed how many of the piece one sheet would have to hold; proven
 * @param found most that a layout was found for so far
 * @param plausible most that the sheet could hold in the densest lattice known for such pieces, or
 *     {@code found} where a search for more has ended; no proof
 * @param together how many pieces of all kinds that sheet would have to hold, the needed ones among
 *     them, if it would be the only one; else {@code needed}
 * @param searched whether it was looked for with the whole budget
 */
public record Obstacle(
    Piece piece,
    SheetStock sheet,
    int needed,
    int found,
    int plausible,
    int together,
    boolean searched) {}

package curvestock.check;

import curvestock.geometry.Outline;

/**
 * Where a piece is to lose half its thickness.
 *
 * @param fromAbove whether from the face that lies up on the sheet, else from below
 * @param area of it, in the piece's own frame
 */
public record Recess(boolean fromAbove, Outline area) {}

/**
 * What is cut: shapes of roadbed and small parts, and how many of each are wanted.
 *
 * <p>Comes in: lengths and angles. Goes out: exact {@link curvestock.geometry.Outline outlines} in
 * each shape's own frame (millimetres). Imports {@code units} and {@code geometry}. Start reading
 * at {@link curvestock.piece.Piece}.
 */
package curvestock.piece;

/**
 * The arithmetic of marking out by hand: pivots, corners, chords with offsets, and an order to cut
 * in.
 *
 * <p>Comes in: a {@link curvestock.layout.Layout}. Goes out: numbers, in millimetres from the
 * sheet's lower left corner, y up. Knows no text, no pages. Imports {@code geometry}, {@code
 * piece}, {@code sheet}, {@code layout}. Start reading at {@link curvestock.handwork.MarkingOut}.
 */
package curvestock.handwork;

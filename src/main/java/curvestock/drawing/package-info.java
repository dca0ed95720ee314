/**
 * Drawings of cut sheets: true-scale SVG for people and for machines, and pictures of them.
 *
 * <p>Comes in: a {@link curvestock.layout.Layout} and what its title block should say. Goes out:
 * SVG text (1 user unit = 1 mm) and PNG bytes; nothing is written to disk here. Circular edges are
 * always {@code A} commands. Imports {@code units}, {@code geometry}, {@code piece}, {@code sheet},
 * {@code layout} and Batik. The same layout gives the same bytes. Start reading at {@link
 * curvestock.drawing.SheetDrawing}.
 *
 * <p>The one turn of axes, said here for all: sheets have y up from their lower left corner, SVG
 * has y down, so the sheet point (x, y) is drawn at (x, H − y), where H is the top of the sheet's
 * bounding box. {@code check} reads drawings back by the same rule.
 */
package curvestock.drawing;

/**
 * Pages to print: full-size drawings tiled over sheets of paper, and sheets of numbers for the
 * workshop, as PDF.
 *
 * <p>Comes in: figures on a {@link curvestock.drawing.Paper} in millimetres. Goes out: the bytes of
 * a PDF at true scale, its font embedded, without any time stamp, so that the same figures give the
 * same bytes. Imports {@code drawing} and what comes before it; the only package that knows PDFBox.
 * Start reading at {@link curvestock.printing.PdfBook}, then {@link
 * curvestock.printing.TiledDrawing}.
 */
package curvestock.printing;

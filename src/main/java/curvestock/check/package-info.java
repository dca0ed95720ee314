/**
 * Independent verification of written drawings: reads SVG and DXF back and judges them by the job.
 *
 * <p>Comes in: the text of a drawing and an {@link curvestock.check.Expectation}. Goes out: a
 * {@link curvestock.check.CheckReport} with every fault found and what was measured, or a {@link
 * curvestock.check.CheckException} if the text is no drawing that can be judged. Several drawings
 * of one job are judged together by {@link curvestock.check.JobCheck}: then no piece may be missing
 * or too many.
 *
 * <p>It shares no geometry code with the packer: it takes only the nominal shapes and the sheet
 * from the common records, has edges, distances and containment of its own, by other methods (a
 * search that halves intervals with proven bounds instead of closed forms, winding numbers instead
 * of crossings), and asks JTS for a second opinion on overlap. Imports {@code units}, {@code
 * geometry} (plain records), {@code piece}, {@code sheet}, {@code layout}, Batik's path parser and
 * JTS.
 *
 * <p>A file becomes a {@code Drawing} ({@code SvgSheet} or {@code DxfSheet}); {@code SpacingCheck}
 * judges where its pieces lie, {@code MarkCheck} what is not cut, {@code PocketCheck} what is
 * cleared to a depth, {@code UndersideCheck} the drawing of a sheet turned over.
 *
 * <p>Its blind side: what a number says is not read, only where it stands; and rounding of the
 * file's numbers is forgiven, at most {@value curvestock.check.LayoutCheck#ROUNDING} mm. Start
 * reading at {@link curvestock.check.LayoutCheck}.
 */
package curvestock.check;

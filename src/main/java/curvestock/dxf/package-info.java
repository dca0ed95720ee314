/**
 * Drawings in the openly documented exchange format DXF, ASCII, release 12: lines, arcs, circles,
 * polylines with bulges and text, on a layer for each operation.
 *
 * <p>A {@link curvestock.machine.MachineSheet} goes in, the text of a file comes out. Imports
 * {@code geometry}, {@code units} and {@code machine}. Start reading at {@link
 * curvestock.dxf.SheetDxf}; {@link curvestock.dxf.DxfWriter} knows the format and nothing else. The
 * reader that judges the files lives in {@code check} and shares no code with this package.
 */
package curvestock.dxf;

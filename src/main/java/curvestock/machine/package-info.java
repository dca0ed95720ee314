/**
 * What a machine is told: which lines it cuts, marks and engraves, in which order, from which start
 * points, with which tabs, at which size.
 *
 * <p>A layout and a {@link curvestock.machine.MachineSetup} go in, a {@link
 * curvestock.machine.MachineSheet} comes out, which {@code drawing} writes as SVG and {@code dxf}
 * as DXF: half-laps of the helix as areas to clear on either side, small holes to drill, how the
 * sheet is turned over. Millimetres and radians, y up. Imports {@code units} to {@code layout},
 * from {@code helix} the laps, and from {@code check} the words in which a file says how its
 * outlines differ from the finished size. Start reading at {@link curvestock.machine.MachineSheet}.
 */
package curvestock.machine;

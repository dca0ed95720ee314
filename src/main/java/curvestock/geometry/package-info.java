/**
 * Plane geometry of outlines made of straight lines and circular arcs.
 *
 * <p>Units, said once for the whole package and for packing: <b>millimetres and radians, angles
 * counter-clockwise from +x, y up</b>. Outer loops run counter-clockwise, holes clockwise, so that
 * the material lies to the left of every edge. Nothing here knows of files, screens, wood or
 * trains.
 *
 * <p>Arcs stay arcs: {@link curvestock.geometry.Clearance} measures the true gap between two
 * outlines in closed form, and chords are used only where {@link curvestock.geometry.Flattening} is
 * asked for them, with a stated error on a stated side. Imports only JTS. Start reading at {@link
 * curvestock.geometry.Outline}.
 */
package curvestock.geometry;

/**
 * The wood and the iron: joints, pieces, plates, supports, and the lists to build from.
 *
 * <p>Comes in: {@code helix.spec} and {@code helix.course}. Goes out: pieces with exact outlines,
 * stations, support table, assembly schedule and shopping list, which all come from the same joints
 * and stations. The order of making is {@link curvestock.helix.build.Joints}, {@link
 * curvestock.helix.build.Stations}, {@link curvestock.helix.build.Roadbed}, and the tables from
 * those. Imports {@code units}, {@code geometry}, {@code piece} and the helix packages before it.
 * Start reading at {@link curvestock.helix.build.Roadbed}.
 */
package curvestock.helix.build;

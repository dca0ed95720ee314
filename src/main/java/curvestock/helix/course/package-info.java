/**
 * The line of the track: where it runs in plan, how far, and how high.
 *
 * <p>Comes in: {@code helix.spec}. Goes out: the {@link curvestock.helix.course.Climb} with its
 * unknowns worked out, the {@link curvestock.helix.course.CentreLine} in plan and the {@link
 * curvestock.helix.course.HeightProfile} along it. All distances <i>s</i> are millimetres along the
 * roadbed's own centre line, counted from where the track enters the ring: below zero on the
 * approach. Imports {@code units}, {@code geometry}, {@code helix.standard}, {@code helix.spec}.
 * Start reading at {@link curvestock.helix.course.Climb}.
 */
package curvestock.helix.course;

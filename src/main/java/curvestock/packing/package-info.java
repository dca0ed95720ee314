/**
 * Lays pieces on a sheet: structured layouts by closed forms, layouts of an atlas brought to the
 * sizes asked for, and a continuous search over positions and angles, with exact arcs throughout.
 *
 * <p>Comes in: pieces with counts, a sheet, the cutting gaps, a seed and an effort. Goes out: a
 * valid layout. Millimetres and radians, as in {@code geometry}. Imports {@code units}, {@code
 * geometry}, {@code piece}, {@code sheet}, {@code layout}; knows no files, no screens, no clock.
 */
package curvestock.packing;

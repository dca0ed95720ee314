package curvestock.drawing;

import curvestock.units.LengthStyle;

/**
 * What a drawing of a helix says beyond the helix itself.
 *
 * @param job title of the job
 * @param style how lengths are printed
 * @param invented whether the job's figures are invented, which is then said on the drawing
 */
public record HelixTitle(String job, LengthStyle style, boolean invented) {}

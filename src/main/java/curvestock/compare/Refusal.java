package curvestock.compare;

import curvestock.units.Angle;

/** A segment angle that cannot be cut from the job's sheets, and why. */
public record Refusal(Angle angle, String reason) {}

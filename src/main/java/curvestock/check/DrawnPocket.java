package curvestock.check;

import java.util.OptionalDouble;

/**
 * An area to be cleared, as drawn.
 *
 * @param name what it is called in messages
 * @param fromAbove whether from the face that lies up
 * @param depth as the drawing says it, in millimetres
 * @param lines its closed outline
 */
record DrawnPocket(String name, boolean fromAbove, OptionalDouble depth, Drawing.Lines lines) {}

package curvestock.compare;

import curvestock.units.Money;

/**
 * What one more turn of a choice adds.
 *
 * @param sheets to the number of sheets
 * @param sheetCost to their price, at most
 * @param joints to the joints
 * @param all to everything: sheets, cutting, joints and parts
 */
public record MoreTurn(int sheets, Money sheetCost, int joints, Money all) {}

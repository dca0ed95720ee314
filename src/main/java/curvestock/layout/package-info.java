/**
 * Where pieces lie on a sheet. The common language of packing, purchase, check and drawing.
 *
 * <p>Plain records, and one rule: {@link curvestock.layout.TrueGaps} says whether a layout is
 * right, for the packing engine and for hand work; {@code check} judges drawings independently.
 * Imports {@code units}, {@code geometry}, {@code piece}, {@code sheet}. Start reading at {@link
 * curvestock.layout.Layout}.
 */
package curvestock.layout;

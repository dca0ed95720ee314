/**
 * Where pieces lie on a sheet. The common language of packing, purchase, check and drawing.
 *
 * <p>Plain records: that a layout keeps its gaps is the business of the packing engine that makes
 * it and of {@code check}, which judges it independently. Imports {@code units}, {@code geometry},
 * {@code piece}, {@code sheet}. Start reading at {@link curvestock.layout.Layout}.
 */
package curvestock.layout;

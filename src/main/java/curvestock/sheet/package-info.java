/**
 * What is cut from: sheets that can be bought or are on hand, and how the tool cuts them.
 *
 * <p>Imports {@code units} and {@code geometry}. Start reading at {@link
 * curvestock.sheet.SheetStock}.
 */
package curvestock.sheet;

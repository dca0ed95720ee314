/**
 * The decision before buying: which sheets, how many, and which layout on each.
 *
 * <p>Comes in: a {@link curvestock.purchase.CuttingStockInstance} (wanted pieces, sheets on offer
 * with their terms, packed layouts) and {@link curvestock.purchase.PackingLimits} (what is proven
 * about every possible layout). Goes out: a {@link curvestock.purchase.Purchase} with a {@link
 * curvestock.purchase.CostBound} that no layout can beat. The layouts only limit what is found; the
 * bound does not depend on them.
 *
 * <p>Imports {@code units}, {@code geometry}, {@code piece}, {@code sheet}, {@code layout}, {@code
 * packing} (search settings), {@code bound}, and ojAlgo. Start reading at {@link
 * curvestock.purchase.CheapestPurchase}.
 */
package curvestock.purchase;

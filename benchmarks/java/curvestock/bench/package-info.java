/**
 * Measures the packing engine against simple rivals, a reference model and published results.
 *
 * <p>Comes in: the case tables of {@code benchmarks/data}. Goes out: Markdown reports in {@code
 * benchmarks}. Compiled and run with the Maven profile {@code benchmarks} only; may use the clock,
 * which the engine may not. Start reading at {@link curvestock.bench.CompareCases}.
 */
package curvestock.bench;

/**
 * Seeded noise for the edges of the program: job files, lengths and drawings that are broken, odd
 * or made to do harm, and the one law they all must obey. A few hundred of each run with the tests;
 * {@code benchmarks/java/curvestock/bench/FuzzRun} runs thousands.
 */
package curvestock.fuzz;

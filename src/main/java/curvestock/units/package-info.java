/**
 * Lengths, angles and money as people write them.
 *
 * <p>Every boundary of the program (job file, command line, drawings, reports) speaks in these
 * types, so that a bare number can never be taken for the wrong unit. Imports nothing of
 * Curvestock. Start reading at {@link curvestock.units.Length}.
 */
package curvestock.units;

/** The command line: a thin skin over {@code app}. */
package curvestock.cli;

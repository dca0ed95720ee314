/**
 * Reading and writing files: the only package that writes.
 *
 * <p>Comes in: named contents; goes out: a finished folder, or nothing at all. Imports nothing of
 * Curvestock. Start reading at {@link curvestock.files.ResultFolder}.
 */
package curvestock.files;

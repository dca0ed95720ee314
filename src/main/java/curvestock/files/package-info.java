/**
 * Reading and writing files: the only package that writes.
 *
 * <p>Comes in: named contents; goes out: a finished folder, or nothing at all. Of Curvestock it
 * imports {@code packing} alone, whose packings {@link curvestock.files.PackingCache} keeps; {@link
 * curvestock.files.FinishedRuns} keeps whole results. Start reading at {@link
 * curvestock.files.ResultFolder}.
 */
package curvestock.files;

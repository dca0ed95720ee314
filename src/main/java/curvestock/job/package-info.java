/**
 * The job file: what a person wrote, read into a {@link curvestock.job.Job}.
 *
 * <p>Comes in: the text of a YAML file and the name to print in messages. Goes out: a {@code Job}
 * made of the records of {@code piece}, {@code sheet}, {@code helix} and {@code packing}, or a
 * {@link curvestock.job.JobException} with every problem found, each with its place in the file.
 * Opens no file. Imports any package before it; of libraries, Jackson's YAML parser (and
 * SnakeYAML's error places) in {@code TreeReader} alone.
 *
 * <p>Three steps: {@code TreeReader} turns the text into {@code Node}s that know their line and
 * column; {@code Block} and {@code Field} read one mapping and one value and note problems; one
 * small reader per part of the file ({@code SheetReader}, {@code HelixReader}, {@code PieceReader}
 * ...) makes the records. To add a key, add it to that reader, to {@code job.schema.json} and to
 * the tests. Start reading at {@link curvestock.job.JobReader}.
 */
package curvestock.job;

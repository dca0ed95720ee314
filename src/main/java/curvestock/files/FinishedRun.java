package curvestock.files;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The whole outcome of a run that came to its own end.
 *
 * @param code exit code
 * @param said what it printed, lines set off by {@code \n}, the name of its folder left open as
 *     {@link #FOLDER}
 * @param files those of its folder by their paths, as they were judged and written
 */
public record FinishedRun(int code, String said, SortedMap<String, byte[]> files) {

  /** Stands for the name of the folder that a run writes to. */
  public static final String FOLDER = "\0";

  public FinishedRun {
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
  }

  /**
   * Writes the files once more, as {@link ResultFolder#publish} does.
   *
   * @throws FileProblem if the target is in the way or the disk refuses; nothing has changed then
   */
  public void publish(Path target, boolean force) throws FileProblem {
    new Publication(target, files).run(force);
  }

  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.writeInt(code);
      write(out, said.getBytes(StandardCharsets.UTF_8));
      out.writeInt(files.size());
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        write(out, file.getKey().getBytes(StandardCharsets.UTF_8));
        write(out, file.getValue());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory never refuses to be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(DataOutputStream out, byte[] bytes) throws IOException {
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  /** From {@link #bytes()}; the same build wrote them, and their checksum was right. */
  static FinishedRun of(byte[] bytes) {
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      int code = in.readInt();
      String said = new String(read(in), StandardCharsets.UTF_8);
      SortedMap<String, byte[]> files = new TreeMap<>();
      for (int left = in.readInt(); left > 0; left--) {
        String path = new String(read(in), StandardCharsets.UTF_8);
        files.put(path, read(in));
      }
      return new FinishedRun(code, said, files);
    } catch (IOException e) {
      throw new UncheckedIOException("an entry of a right checksum is whole", e);
    }
  }

  private static byte[] read(DataInputStream in) throws IOException {
    return in.readNBytes(in.readInt());
  }
}

package curvestock.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads text files strictly. */
public final class TextFiles {

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private TextFiles() {}

  /**
   * The file's text, without a byte order mark.
   *
   * @param mostBytes files longer than this are refused
   * @throws FileProblem if the file does not exist, is a folder, is too long, cannot be read, or is
   *     not UTF-8
   */
  public static String read(Path file, int mostBytes) throws FileProblem {
    if (Files.isDirectory(file)) {
      throw new FileProblem(file, "this is a folder", "Name a file in it.");
    }
    byte[] bytes = bytes(file, mostBytes);
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new FileProblem(file, "the text is not UTF-8", "Save it as UTF-8 in your editor.", e);
    }
  }

  private static byte[] bytes(Path file, int mostBytes) throws FileProblem {
    // Read up to the limit rather than ask for the size: a pipe or device has none.
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(mostBytes);
      if (in.read() >= 0) {
        throw new FileProblem(
            file,
            "the file is longer than " + mostBytes + " bytes",
            "Is it the right file? Shorten it if so.");
      }
      return bytes;
    } catch (NoSuchFileException e) {
      throw new FileProblem(file, "there is no such file", "Check the name and the folder.", e);
    } catch (IOException e) {
      throw new FileProblem(
          file, "it cannot be read (" + reason(e) + ")", "Check that you may read it.", e);
    }
  }

  /** The system's word for what went wrong, without the path that the message has already. */
  static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "not allowed";
    }
    // A full disk comes as an IOException with no more than the system's own message.
    String said = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
    return said == null || said.isBlank() ? e.getClass().getSimpleName() : said;
  }
}

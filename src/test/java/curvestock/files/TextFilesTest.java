package curvestock.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextFilesTest {

  @TempDir Path base;

  private void assertRefused(Path file, int mostBytes, String message) {
    assertThatThrownBy(() -> TextFiles.read(file, mostBytes))
        .isInstanceOf(FileProblem.class)
        .hasMessageStartingWith(file + ": " + message);
  }

  @Test
  void read_utf8_withOrWithoutByteOrderMark_isTheText() throws Exception {
    Path plain = Files.writeString(base.resolve("a"), "27½ in");
    Path marked = Files.writeString(base.resolve("b"), "\uFEFF27½ in");

    assertThat(TextFiles.read(plain, 7)).isEqualTo("27½ in");
    assertThat(TextFiles.read(marked, 100)).isEqualTo("27½ in");
  }

  @Test
  void read_anythingElse_saysWhatAndHowToMend() throws Exception {
    Path latin = Files.write(base.resolve("latin"), new byte[] {'a', (byte) 0xBD});
    Path longer = Files.writeString(base.resolve("longer"), "12345678");

    assertRefused(latin, 100, "the text is not UTF-8. Save it as UTF-8");
    assertRefused(longer, 7, "the file is longer than 7 bytes. ");
    assertRefused(base, 7, "this is a folder. ");
    assertRefused(base.resolve("none"), 7, "there is no such file. Check the name");
  }

  /** What Linux and Java say of a full disk, a read-only one, a folder that is another's. */
  @Test
  void reason_isTheSystemsWord() {
    assertThat(TextFiles.reason(new IOException("No space left on device")))
        .isEqualTo("No space left on device");
    assertThat(TextFiles.reason(new FileSystemException("/x", null, "Read-only file system")))
        .isEqualTo("Read-only file system");
    assertThat(TextFiles.reason(new AccessDeniedException("/x"))).isEqualTo("not allowed");
    assertThat(TextFiles.reason(new FileAlreadyExistsException("/x")))
        .isEqualTo("FileAlreadyExistsException");
    assertThat(TextFiles.reason(new IOException())).isEqualTo("IOException");
  }
}

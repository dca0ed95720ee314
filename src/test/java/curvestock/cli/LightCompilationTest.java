package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class LightCompilationTest {

  /** The first directive that names a method holds (JEP 165); a name of a class gone helps none. */
  @Test
  void directive_namesClassesThatAreThereBeforeAllElse() throws Exception {
    List<String> names =
        Pattern.compile("\"([^\"]*)\\.\\*\"")
            .matcher(LightCompilation.DIRECTIVE)
            .results()
            .map(found -> found.group(1))
            .toList();
    Path classes =
        Path.of(LightCompilation.class.getProtectionDomain().getCodeSource().getLocation().toURI());

    assertThat(names).last().isEqualTo("*");
    for (String name : names.subList(0, names.size() - 1)) {
      Path folder = classes.resolve(name).getParent();
      String file = Path.of(name).getFileName() + ".class";
      try (DirectoryStream<Path> there = Files.newDirectoryStream(folder, file)) {
        assertThat(there).as(name).isNotEmpty();
      }
    }
  }

  /** Names that stand for none here, so that the other tests run as ever. */
  @Test
  void direct_onThisJvm_isTaken() {
    String other = LightCompilation.DIRECTIVE.replace("\"*.*\"", "\"no/such/*.*\"");

    assertThat(LightCompilation.direct(other)).isTrue();
  }

  @Test
  void shortSearch_laidOver_isTaken() {
    assertThat(LightCompilation.direct(LightCompilation.SHORT.replace("*.*", "no/such/*.*")))
        .isTrue();
  }

  @Test
  void direct_whatIsNoDirective_isRefusedWithoutAFault() {
    assertThat(LightCompilation.direct("[{match: nothing")).isFalse();
  }
}

package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class JobTextTest {

  static Stream<Path> demoData() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("demo-data"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("demoData")
  void written_withoutAChange_isTheSameJobWithItsComments(Path file) throws IOException {
    String text = Files.readString(file);
    Map<String, Object> tree = JobText.tree(text, "demo");

    String written = JobText.written(text, tree);

    assertThat(stated(written, "demo")).isEqualTo(stated(text, "demo"));
    assertThat(comments(written)).isEqualTo(comments(text)).isPositive();
    assertThat(JobText.tree(written, "demo")).isEqualTo(tree);
  }

  private static long comments(String text) {
    return text.lines().filter(line -> line.contains("# ")).count();
  }

  /**
   * The page sends its tree as JSON, which is YAML too; without the original no comment is kept.
   */
  @ParameterizedTest
  @MethodSource("demoData")
  void tree_asJsonOrWrittenAfresh_isTheSameJob(Path file)
      throws IOException, JsonProcessingException {
    String text = Files.readString(file);
    Map<String, Object> tree = JobText.tree(text, "demo");

    assertThat(stated(new ObjectMapper().writeValueAsString(tree), "demo"))
        .isEqualTo(stated(text, "demo"));
    assertThat(stated(JobText.written("", tree), "demo")).isEqualTo(stated(text, "demo"));
  }

  @Test
  void written_afterAChange_keepsAllElseAsItStood() {
    String text = "# on top\na: 1/2   # half\nb:\n  c: 0.10\n  d: [1, 2]\nlong: 'it is: so'\n";
    Map<String, Object> tree = new LinkedHashMap<>(JobText.tree(text, "t"));
    tree.put("a", "27 1/2");
    tree.put("b", Map.of("c", "0.10", "d", List.of("1", "2", "3")));
    tree.put("new", List.of(Map.of("x", "yes", "y", "# no comment")));

    String written = JobText.written(text, tree);

    assertThat(written)
        .contains("# on top")
        .contains("a: 27 1/2")
        .contains("# half")
        .contains("c: 0.10")
        .contains("'it is: so'");
    assertThat(JobText.tree(written, "t")).isEqualTo(tree);
  }

  @Test
  void written_wordsThatYamlReadsOtherwise_comeBackAsTheyWere() {
    Map<String, Object> tree = new LinkedHashMap<>();
    for (String word :
        List.of(
            "null",
            "~",
            "yes",
            "010",
            "1e3",
            "!tag",
            "&anchor",
            "*alias",
            "a: b",
            "- x",
            " pad ",
            "two\nlines",
            "\"quoted\"",
            "#hash",
            "{brace",
            "%",
            "@at",
            "2001-01-01",
            "<<",
            "=")) {
      tree.put("k" + tree.size(), word);
    }

    assertThat(JobText.tree(JobText.written("", tree), "t")).isEqualTo(tree);
  }

  @Test
  void tree_ofWhatIsNoBlock_isRefused() {
    assertThatThrownBy(() -> JobText.tree("- a\n- b\n", "list.yaml"))
        .isInstanceOf(JobException.class)
        .hasMessageContaining("block of keys");
    assertThatThrownBy(() -> JobText.written("a: &x 1\nb: *x\n", Map.of("a", "1")))
        .isInstanceOf(JobException.class)
        .hasMessageContaining("anchors");
  }

  /** The job as read, whatever text it was read from. */
  private static Job stated(String text, String name) {
    Job job = JobReader.read(text, name);
    return job.on(job.sheets(), job.cutting());
  }

  /** The embedded job says beside its price that it is invented; a price of one's own is not. */
  @Test
  @SuppressWarnings("unchecked")
  void written_withAnotherPrice_dropsTheRemarkThatItIsInvented() {
    Map<String, Object> tree = new LinkedHashMap<>(JobText.tree(DefaultJob.text(), "default"));
    Map<String, Object> sheet =
        new LinkedHashMap<>((Map<String, Object>) ((List<?>) tree.get("sheets")).get(0));
    String same = JobText.written(DefaultJob.text(), tree);
    sheet.put("price", "71.50");
    tree.put("sheets", List.of(sheet));

    String text = JobText.written(DefaultJob.text(), tree);

    assertThat(same).contains("price: 68.00 # invented");
    assertThat(text).contains("price: 71.50").doesNotContain("71.50 # invented");
    assertThat(text).contains("# as measured with a caliper");
  }
}

package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The published schema against the reader. Validated by the networknt json-schema-validator, a
 * general-purpose library that knows nothing of job files.
 */
class JobSchemaTest {

  private static final SchemaJudge JUDGE = new SchemaJudge();

  static List<Path> demos() {
    return DemoData.files();
  }

  static List<BrokenJob> seen() {
    return BrokenJob.all().stream().filter(BrokenJob::bySchema).toList();
  }

  static List<BrokenJob> unseen() {
    return BrokenJob.all().stream().filter(broken -> !broken.bySchema()).toList();
  }

  /** Source: the meta-schema of JSON Schema draft 2020-12, as bundled with the validator. */
  @Test
  void schema_followsItsMetaSchema() throws Exception {
    Schema meta =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    JsonNode schema = new ObjectMapper().readTree(JobSchema.text());

    assertThat(meta.validate(schema)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void everyDemo_isAllowed(Path file) throws Exception {
    assertThat(JUDGE.errors(DemoData.text(file))).isEmpty();
  }

  @Test
  void soundJob_isAllowed() throws Exception {
    assertThat(JUDGE.errors(BrokenJob.SOUND)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("seen")
  void brokenJob_thatTheFormGivesAway_isRefused(BrokenJob broken) throws Exception {
    assertThat(JUDGE.errors(broken.text())).isNotEmpty();
  }

  /** Keeps the table honest: what is marked as beyond the schema really is. */
  @ParameterizedTest
  @MethodSource("unseen")
  void brokenJob_thatOnlyTheReaderSees_isAllowed(BrokenJob broken) throws Exception {
    assertThat(JUDGE.errors(broken.text())).isEmpty();
  }

  @Test
  void everyKey_isDescribedOrRefersToADescribedForm() throws Exception {
    List<String> bare = new ArrayList<>();
    collectUndescribed(new ObjectMapper().readTree(JobSchema.text()), "", bare);

    assertThat(bare).isEmpty();
  }

  private static void collectUndescribed(JsonNode node, String path, List<String> bare) {
    node.properties()
        .forEach(
            child -> {
              String here = path + "/" + child.getKey();
              boolean isKey = path.endsWith("/properties") && !path.contains("/if/");
              boolean described =
                  child.getValue().has("description") || child.getValue().has("$ref");
              if (isKey && !path.contains("/then") && !path.contains("/anyOf") && !described) {
                bare.add(here);
              }
              collectUndescribed(child.getValue(), here, bare);
            });
  }
}

package curvestock.job;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;

/** Judges job files by the published schema, with a general-purpose validator. */
final class SchemaJudge {

  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

  private final Schema schema =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(JobSchema.text());

  /** What the schema finds wrong. */
  List<Error> errors(String jobFile) throws JsonProcessingException {
    JsonNode tree = YAML.readTree(jobFile);
    return schema.validate(tree);
  }
}

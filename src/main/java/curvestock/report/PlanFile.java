package curvestock.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import curvestock.job.JobSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What {@code plan.json} says of the job it was made for and of the sheets drawn.
 *
 * @param jobs the texts of the job, several for a batch; empty if the file carries none
 * @param sheets what lies on each sheet, by the paths of its drawings within the folder
 */
public record PlanFile(List<JobSource> jobs, Map<String, OnSheet> sheets) {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Copies the lists. */
  public PlanFile {
    jobs = List.copyOf(jobs);
    sheets = Map.copyOf(sheets);
  }

  /**
   * A sheet of the plan.
   *
   * @param sheet its name in the job
   * @param pieces how many of each piece lie on it, by id
   * @param numbers that they bear, in the order of the layout
   */
  public record OnSheet(String sheet, Map<String, Integer> pieces, List<String> numbers) {
    public OnSheet {
      pieces = Map.copyOf(pieces);
      numbers = List.copyOf(numbers);
    }
  }

  /** The plan in the text; empty if it is none that {@link PlanJson} wrote. */
  public static Optional<PlanFile> read(String text) {
    JsonNode root;
    try {
      root = MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      return Optional.empty();
    }
    if (root.path("curvestockPlan").asInt() != PlanJson.FORMAT) {
      return Optional.empty();
    }
    List<JobSource> jobs = new ArrayList<>();
    for (JsonNode job : root.path("jobFiles")) {
      Optional<String> stock = Optional.ofNullable(job.get("stock")).map(JsonNode::asText);
      jobs.add(new JobSource(job.path("text").asText(), stock, Optional.empty()));
    }
    Map<String, OnSheet> sheets = new HashMap<>();
    for (JsonNode sheet : root.path("sheets")) {
      Map<String, Integer> pieces = new TreeMap<>();
      List<String> numbers = new ArrayList<>();
      for (JsonNode placement : sheet.path("placements")) {
        pieces.merge(placement.path("piece").asText(), 1, Integer::sum);
        numbers.add(placement.path("label").asText());
      }
      OnSheet on = new OnSheet(sheet.path("sheet").asText(), pieces, numbers);
      for (String file : List.of("file", "cutFile", "dxfFile")) {
        sheets.put(sheet.path(file).asText(), on);
      }
    }
    return Optional.of(new PlanFile(jobs, sheets));
  }
}

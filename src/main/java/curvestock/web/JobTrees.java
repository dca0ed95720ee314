package curvestock.web;

import curvestock.compare.Division;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What the page asks of a job's tree of texts besides reading it. */
final class JobTrees {

  /** Nothing of these changes where pieces lie, or what is bought. */
  private static final Set<String> BESIDE =
      Set.of("title", "note", "invented", "currency", "print", "rates", "patterns", "laid");

  private static final String HELIX = "helix";
  private static final String SEARCH = "search";

  private JobTrees() {}

  /**
   * All of the job that its plan depends on, as a text: jobs of one text have one plan. How long
   * was searched is no part of it.
   */
  static String planned(Map<String, Object> tree) {
    Map<String, Object> rest = new TreeMap<>(tree);
    rest.keySet().removeAll(BESIDE);
    if (rest.get(SEARCH) instanceof Map<?, ?> search) {
      Object seed = search.get("seed");
      rest.put(SEARCH, seed == null ? "" : seed);
    }
    return Json.text(Json.tree(sorted(rest)));
  }

  /** In whatever order its keys were written. */
  private static Object sorted(Object value) {
    if (value instanceof Map<?, ?> map) {
      Map<String, Object> sorted = new TreeMap<>();
      map.forEach((key, each) -> sorted.put((String) key, sorted(each)));
      return sorted;
    }
    return value instanceof List<?> list ? list.stream().map(JobTrees::sorted).toList() : value;
  }

  /** The job with its helix in equal segments of another size. */
  static Map<String, Object> divided(Map<String, Object> tree, Division division) {
    Map<String, Object> other = new LinkedHashMap<>(tree);
    Map<String, Object> helix = new LinkedHashMap<>();
    if (tree.get(HELIX) instanceof Map<?, ?> given) {
      given.forEach((key, value) -> helix.put((String) key, value));
    }
    helix.keySet().removeAll(Set.of("segment-angle", "segments-per-turn", "lower-segments"));
    double parts = 360 / division.segment().degrees();
    if (Math.abs(parts - Math.rint(parts)) < 1e-6) {
      helix.put("segments-per-turn", Long.toString(Math.round(parts)));
    } else {
      helix.put("segment-angle", BigDecimal.valueOf(division.segment().degrees()).toPlainString());
    }
    other.put(HELIX, helix);
    return other;
  }
}

package curvestock.web;

import com.fasterxml.jackson.databind.JsonNode;
import curvestock.job.JobText;

/** Small invented jobs for trying the page. */
final class Jobs {

  /** Few wide pieces, so that plans are quick. */
  static final String SMALL =
      """
      # An invented job for tests; this comment must survive.
      curvestock: 1
      title: Shelf loop (invented)
      invented: true
      units: in
      currency: $
      sheets:
        - name: birch
          size: 4x8 ft        # as sold
          thickness: 0.476
          price: 68.00
      cutting:
        kerf: 1/8
        margin: 1/4
      helix:
        scale: HO
        turns: 1 1/2
        radius: 30
        width: 5
        climb: 6
        segments-per-turn: 4
        joint: half-lap
      search:
        effort: quick
      """;

  /** Narrow sheets, on which half a turn finds no room: quick to compare sizes for. */
  static final String NARROW = SMALL.replace("4x8 ft", "2x8 ft");

  /** Pieces alone: nothing to compare, so the answer is complete as soon as they are packed. */
  static final String PIECES =
      """
      curvestock: 1
      title: Yard curves (invented)
      invented: true
      units: in
      sheets: [{name: birch, size: 4x4 ft, thickness: 0.476, price: 34.00}]
      cutting: {kerf: 1/8, margin: 1/4}
      pieces: [{name: quarter, count: 4, arc: {radius: 24, width: 4, angle: 60}}]
      search: {effort: quick}
      """;

  private Jobs() {}

  static JsonNode pieces() {
    return Json.tree(JobText.tree(PIECES, "pieces.yaml"));
  }

  static JsonNode narrow() {
    return Json.tree(JobText.tree(NARROW, "narrow.yaml"));
  }

  static JsonNode small() {
    return Json.tree(JobText.tree(SMALL, "small.yaml"));
  }
}

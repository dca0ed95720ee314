package curvestock.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.answer.Answer;
import curvestock.answer.Building;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.Hole;
import curvestock.helix.build.PieceKind;
import java.util.List;

/**
 * A whole helix as data, {@code helix.json}; units as {@link TableJson} has them, heights above the
 * base. In plan the origin is the middle of the ring (of an oval's first half turn), +x at bearing
 * 0°.
 */
public final class HelixJson {

  /** Raised when a field changes its meaning or goes away. */
  public static final int FORMAT = 2;

  private HelixJson() {}

  public static String of(Answer answer) {
    Building helix = answer.building().orElseThrow();
    ObjectNode root = TableJson.MAPPER.createObjectNode();
    root.put("curvestockHelix", FORMAT);
    root.put("title", answer.heading().title());
    root.put("invented", answer.heading().invented());
    root.put("units", TableJson.UNITS);
    root.put("works", helix.works());
    List.of(
            helix.figures(),
            helix.tracks(),
            helix.checks(),
            helix.budgets(),
            helix.joints(),
            helix.kinds(),
            helix.schedule(),
            helix.supports(),
            helix.blocks(),
            helix.bySupport(),
            helix.bridges(),
            helix.cuttingList(),
            answer.shopping(),
            helix.assumed())
        .forEach(table -> TableJson.add(root, table));
    holes(root.putArray("holes"), helix.plan());
    return TableJson.written(root);
  }

  /** In the frames of the kinds. */
  private static void holes(ArrayNode holes, HelixPlan plan) {
    for (PieceKind kind : plan.roadbed().kinds()) {
      for (Hole hole : kind.holes()) {
        holes
            .addObject()
            .put("kind", kind.id())
            .put("x", TableJson.decimal(hole.centre().x()))
            .put("y", TableJson.decimal(hole.centre().y()))
            .put("diameter", TableJson.decimal(hole.diameter().millimetres()));
      }
    }
  }
}

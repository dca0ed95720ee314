package curvestock.report;

import curvestock.helix.build.ScheduleRow;
import curvestock.layout.Placement;
import curvestock.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What is written on each piece below its number: the turn it belongs to, or its name. */
public final class PieceNotes {

  private PieceNotes() {}

  /**
   * For the pieces of one sheet, in the layout's order; none if the job has no whole helix, whose
   * pieces alone have a turn.
   *
   * @param sheet from 1
   */
  public static List<String> of(Plan plan, int sheet) {
    if (plan.job().structure().isEmpty()) {
      return List.of();
    }
    Map<String, Integer> turns = new HashMap<>();
    for (ScheduleRow row : plan.job().structure().get().plan().schedule().rows()) {
      turns.put(row.piece().number(), row.turn());
    }
    List<String> labels = plan.labels().get(sheet - 1);
    List<Placement> placements = plan.layouts().get(sheet - 1).placements();
    List<String> notes = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      Integer turn = turns.get(labels.get(i));
      notes.add(turn == null ? placements.get(i).piece().name() : "turn " + turn);
    }
    return notes;
  }
}

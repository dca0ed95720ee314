package curvestock.report;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.RoadbedMark;
import curvestock.helix.build.RoadbedMarks;
import curvestock.helix.build.ScheduleRow;
import curvestock.layout.Placement;
import curvestock.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What is written on each piece below its number: the turn it belongs to, or its name. */
public final class PieceNotes {

  private static final List<RoadbedMark> NO_MARKS = List.of();

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

  /**
   * What is drawn on each piece of one sheet, in the layout's order and the pieces' own frames:
   * supports, laps and screws of the piece of that number. None if the job has no whole helix.
   *
   * @param sheet from 1
   */
  public static List<List<RoadbedMark>> marks(Plan plan, int sheet) {
    if (plan.job().structure().isEmpty()) {
      return List.of();
    }
    HelixPlan helix = plan.job().structure().get().plan();
    RoadbedMarks marks = helix.marks();
    Map<String, BedPiece> pieces = new HashMap<>();
    helix.roadbed().pieces().forEach(piece -> pieces.put(piece.number(), piece));
    return plan.labels().get(sheet - 1).stream()
        .map(label -> pieces.containsKey(label) ? marks.on(pieces.get(label)) : NO_MARKS)
        .toList();
  }
}

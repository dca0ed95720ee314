package curvestock.plan;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.HalfLaps;
import curvestock.helix.build.Lap;
import curvestock.helix.build.RoadbedMark;
import curvestock.helix.build.RoadbedMarks;
import curvestock.layout.Placement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the helix asks for on each piece of a sheet: marks to draw, laps to clear. */
public final class MarkedPieces {

  private static final List<RoadbedMark> NO_MARKS = List.of();

  private MarkedPieces() {}

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

  /**
   * The half-laps of each piece of one sheet, in the layout's order and the pieces' own frames;
   * none if the job has no whole helix. A spare is cut like the others of its kind.
   *
   * @param sheet from 1
   */
  public static List<List<Lap>> laps(Plan plan, int sheet) {
    if (plan.job().structure().isEmpty()) {
      return List.of();
    }
    HelixPlan helix = plan.job().structure().get().plan();
    HalfLaps laps = helix.laps();
    Map<String, BedPiece> byNumber = new HashMap<>();
    Map<String, BedPiece> byKind = new HashMap<>();
    for (BedPiece piece : helix.roadbed().pieces()) {
      byNumber.put(piece.number(), piece);
      byKind.putIfAbsent(piece.kindId(), piece);
    }
    List<String> labels = plan.labels().get(sheet - 1);
    List<Placement> placements = plan.layouts().get(sheet - 1).placements();
    List<List<Lap>> all = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      BedPiece piece =
          byNumber.getOrDefault(labels.get(i), byKind.get(placements.get(i).piece().id()));
      all.add(piece == null ? List.of() : laps.on(piece));
    }
    return all;
  }
}

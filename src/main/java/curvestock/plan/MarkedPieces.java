package curvestock.plan;

import curvestock.helix.build.BedPiece;
import curvestock.helix.build.HalfLaps;
import curvestock.helix.build.Lap;
import curvestock.helix.build.RoadbedMark;
import curvestock.helix.build.RoadbedMarks;
import curvestock.job.Job;
import curvestock.layout.Placement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

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
    Map<String, Supplier<List<RoadbedMark>>> byNumber = new HashMap<>();
    for (Job.Bed bed : plan.job().beds()) {
      RoadbedMarks marks = bed.plan().marks();
      for (BedPiece piece : bed.plan().roadbed().pieces()) {
        byNumber.put(bed.numbers() + piece.number(), () -> marks.on(piece));
      }
    }
    return byNumber.isEmpty()
        ? List.of()
        : plan.labels().get(sheet - 1).stream()
            .map(label -> byNumber.getOrDefault(label, () -> NO_MARKS).get())
            .toList();
  }

  /**
   * The half-laps of each piece of one sheet, in the layout's order and the pieces' own frames;
   * none if the job has no whole helix. A spare is cut like the others of its kind.
   *
   * @param sheet from 1
   */
  public static List<List<Lap>> laps(Plan plan, int sheet) {
    Map<String, Supplier<List<Lap>>> byNumber = new HashMap<>();
    Map<String, Supplier<List<Lap>>> byKind = new HashMap<>();
    for (Job.Bed bed : plan.job().beds()) {
      HalfLaps laps = bed.plan().laps();
      for (BedPiece piece : bed.plan().roadbed().pieces()) {
        byNumber.put(bed.numbers() + piece.number(), () -> laps.on(piece));
        byKind.putIfAbsent(bed.ids() + piece.kindId(), () -> laps.on(piece));
      }
    }
    if (byNumber.isEmpty()) {
      return List.of();
    }
    List<String> labels = plan.labels().get(sheet - 1);
    List<Placement> placements = plan.layouts().get(sheet - 1).placements();
    List<List<Lap>> all = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      Supplier<List<Lap>> ofKind =
          byKind.getOrDefault(placements.get(i).piece().id(), () -> List.of());
      all.add(byNumber.getOrDefault(labels.get(i), ofKind).get());
    }
    return all;
  }
}

package curvestock.compare;

import curvestock.job.Job;
import curvestock.packing.Packers;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Scans the angles: every few degrees first, then halving between two of them until each step down
 * is known to a tenth of a degree. Angles are counted in whole tenths.
 */
final class AngleSweep {

  private static final int FROM = 300;
  private static final int TO = 1800;
  private static final int STRIDE = 25;
  private static final int TENTHS = 10;
  private static final int TENTHS_PER_TURN = 3600;

  private final Designs designs;
  private final Packers packers;
  private final SheetStock sheet;
  private final JointPrice joint;
  private final CompareListener listener;
  private final Map<Integer, Integer> counts = new TreeMap<>();

  AngleSweep(Designs designs, JointPrice joint, Packers packers, CompareListener listener) {
    this.designs = designs;
    this.packers = packers;
    this.sheet = designs.mainSheet();
    this.joint = joint;
    this.listener = listener;
  }

  /** The scan; nothing if it was stopped, or no segment fits the sheet. */
  Optional<AngleScan> scan() {
    count(IntStream.rangeClosed(0, (TO - FROM) / STRIDE).map(i -> FROM + i * STRIDE).toArray());
    int budget = 2 * counts.size();
    for (List<Integer> next = middles(); !next.isEmpty() && !listener.stopped(); next = middles()) {
      count(next.stream().mapToInt(Integer::intValue).toArray());
      listener.worked(counts.size(), Math.max(budget, counts.size()));
    }
    List<AngleScan.Sample> samples =
        counts.entrySet().stream().map(e -> sample(e.getKey(), e.getValue())).toList();
    if (listener.stopped() || samples.stream().allMatch(sample -> sample.perSheet() == 0)) {
      return Optional.empty();
    }
    List<AngleScan.ForJob> front = front(samples);
    return Optional.of(
        new AngleScan(sheet, samples, bestForSheet(samples), front, bestForJob(front)));
  }

  /** Angles halfway between neighbours that hold different numbers of pieces. */
  private List<Integer> middles() {
    List<Integer> middles = new ArrayList<>();
    Integer before = null;
    for (Integer angle : counts.keySet()) {
      if (before != null && angle - before > 1 && !counts.get(before).equals(counts.get(angle))) {
        middles.add((before + angle) / 2);
      }
      before = angle;
    }
    return middles;
  }

  private void count(int[] angles) {
    int[] found =
        IntStream.of(angles)
            .parallel()
            .map(angle -> listener.stopped() ? 0 : held(angle))
            .toArray();
    for (int i = 0; i < angles.length; i++) {
      counts.put(angles[i], found[i]);
    }
  }

  private int held(int tenths) {
    Job job = designs.job();
    try {
      return packers
          .of(sheet, job.cutting(), job.search())
          .structured(designs.segment(angle(tenths)))
          .layout()
          .placements()
          .size();
    } catch (IllegalArgumentException impossible) {
      // A whole helix cannot be divided in every angle.
      return 0;
    }
  }

  private static Angle angle(int tenths) {
    return Angle.ofDegrees((double) tenths / TENTHS);
  }

  private static AngleScan.Sample sample(int tenths, int count) {
    return new AngleScan.Sample(angle(tenths), count);
  }

  private static AngleScan.Sample bestForSheet(List<AngleScan.Sample> samples) {
    return samples.stream()
        .max(
            Comparator.comparingDouble(AngleScan.Sample::turnsPerSheet)
                .thenComparing(AngleScan.Sample::angle))
        .orElseThrow();
  }

  private AngleScan.ForJob bestForJob(List<AngleScan.ForJob> front) {
    return front.stream()
        .min(
            Comparator.comparing(this::money)
                .thenComparingInt(AngleScan.ForJob::pieces)
                .thenComparingInt(AngleScan.ForJob::sheets))
        .orElseThrow();
  }

  private Money money(AngleScan.ForJob choice) {
    return sheet.price().times(choice.sheets()).plus(joint.each().times(choice.pieces() - 1L));
  }

  /** Fewest pieces for each number of sheets, as far as more sheets make fewer pieces. */
  private List<AngleScan.ForJob> front(List<AngleScan.Sample> samples) {
    List<AngleScan.ForJob> all =
        samples.stream()
            .filter(sample -> sample.perSheet() > 0)
            .map(sample -> new AngleScan.ForJob(sample, pieces(sample), sheets(sample)))
            .sorted(
                Comparator.comparingInt(AngleScan.ForJob::sheets)
                    .thenComparingInt(AngleScan.ForJob::pieces)
                    .thenComparing(choice -> choice.sample().angle()))
            .toList();
    List<AngleScan.ForJob> front = new ArrayList<>();
    for (AngleScan.ForJob choice : all) {
      if (front.isEmpty() || choice.pieces() < front.get(front.size() - 1).pieces()) {
        front.add(choice);
      }
    }
    return front;
  }

  private int sheets(AngleScan.Sample sample) {
    return (pieces(sample) + sample.perSheet() - 1) / sample.perSheet();
  }

  private int pieces(AngleScan.Sample sample) {
    long tenths = Math.round(sample.angle().degrees() * TENTHS);
    double pieces = designs.turns() * TENTHS_PER_TURN / tenths;
    return designs.layers() * (int) Math.ceil(pieces - 1e-9);
  }
}

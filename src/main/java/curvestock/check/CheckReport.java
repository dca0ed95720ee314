package curvestock.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a check found and measured.
 *
 * @param kind the form in which the sheet is drawn
 * @param findings all faults, in the order of the tests; empty if the drawing is right
 * @param counts how many of each piece were found, by piece id
 * @param leastGap the least gap between two pieces; empty if no two are within about 50 mm
 * @param leastMargin the least distance of a piece from the sheet's edge; empty without pieces
 * @param worstShapeError the largest deviation of an outline from its nominal shape after the best
 *     fit, in millimetres, over the outlines that fit
 * @param numbered whether pieces bear their numbers
 */
public record CheckReport(
    DrawingKind kind,
    List<Finding> findings,
    Map<String, Integer> counts,
    Optional<Measure> leastGap,
    Optional<Measure> leastMargin,
    double worstShapeError,
    boolean numbered) {

  /** Copies the findings, and the counts sorted by piece id. */
  public CheckReport {
    findings = List.copyOf(findings);
    counts = java.util.Collections.unmodifiableMap(new TreeMap<>(counts));
  }

  /** The same with one more finding. */
  CheckReport with(Finding finding) {
    List<Finding> more = new ArrayList<>(findings);
    more.add(finding);
    return new CheckReport(kind, more, counts, leastGap, leastMargin, worstShapeError, numbered);
  }

  /** Whether nothing is wrong. */
  public boolean passed() {
    return findings.isEmpty();
  }

  /** How many pieces were found. */
  public int pieces() {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  /**
   * A measured distance.
   *
   * @param millimetres at most a millionth of a millimetre above the true distance
   * @param what between which paths, in words
   */
  public record Measure(double millimetres, String what) {}
}

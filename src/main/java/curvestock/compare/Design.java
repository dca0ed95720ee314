package curvestock.compare;

import curvestock.job.Job;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A helix in one division, as packing sees it.
 *
 * @param division into which angles it is divided
 * @param job what is planned: the roadbed's pieces, base and listed pieces, without holes (which do
 *     not matter to packing) and without the small parts
 * @param bed the roadbed's pieces
 * @param segment the whole segment there is most of
 * @param small plates and blocks from the same sheets, which are laid into what is left over
 * @param parts what the joints take
 * @param fall where the joints of successive turns fall
 * @param cutMillimetres length of all edges of the helix, holes and small parts too; none shared
 * @param kilograms weight of its wood, small parts too
 */
record Design(
    Division division,
    Job job,
    List<Demand> bed,
    Piece segment,
    List<Demand> small,
    JointParts parts,
    JointFall fall,
    double cutMillimetres,
    double kilograms) {

  Design {
    bed = List.copyOf(bed);
    small = List.copyOf(small);
  }

  /** Pieces of roadbed, all kinds and layers. */
  int pieces() {
    return count(bed);
  }

  /** Pieces of roadbed that are cut: with their spares. */
  int cut() {
    Set<String> ids = bed.stream().map(each -> each.piece().id()).collect(Collectors.toSet());
    return job.demands().stream()
        .filter(demand -> ids.contains(demand.piece().id()))
        .mapToInt(Demand::count)
        .sum();
  }

  /** The rectangle of the piece that takes most room; of a plain segment across its ends. */
  EnclosingRectangle largest() {
    return EnclosingRectangle.of(largestPiece());
  }

  /** Whether the piece that takes most room is an end piece with its straight lead in one. */
  boolean isLargestWithLead() {
    return !(largestPiece().shape().blank() instanceof AnnularSector);
  }

  private Piece largestPiece() {
    return bed.stream()
        .map(Demand::piece)
        .max(Comparator.comparingDouble(piece -> EnclosingRectangle.of(piece).area()))
        .orElseThrow();
  }

  static int count(List<Demand> demands) {
    return demands.stream().mapToInt(Demand::count).sum();
  }

  /** The piece there is most of; of those the largest. */
  static Piece mostOf(List<Demand> bed) {
    Demand most = bed.get(0);
    for (Demand demand : bed) {
      boolean larger = demand.piece().shape().area() > most.piece().shape().area();
      if (demand.count() > most.count() || (demand.count() == most.count() && larger)) {
        most = demand;
      }
    }
    return most.piece();
  }

  static double perimeter(List<Demand> demands) {
    return demands.stream()
        .mapToDouble(demand -> demand.count() * demand.piece().shape().outline().perimeter())
        .sum();
  }
}

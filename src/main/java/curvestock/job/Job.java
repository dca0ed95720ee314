package curvestock.job;

import curvestock.helix.HelixOrder;
import curvestock.helix.SegmentPlan;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.LengthStyle;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that a job file says.
 *
 * @param title what the job is called on drawings
 * @param note free text of the user, may be empty
 * @param invented whether the file says that its data are made up; drawings then say so too
 * @param style how lengths are printed
 * @param currency printed before prices, may be empty
 * @param sheets what can be cut from; at least one, names all different
 * @param cutting kerf, extra and margin
 * @param helix the ring of segments wanted, if any; of a whole circular helix its plain ring
 * @param structure the whole helix wanted, if the file says more of it than the ring
 * @param pieces the pieces listed one by one; may be empty if there is a helix
 * @param search seed and effort
 * @param rates what cutting and joining cost
 */
public record Job(
    String title,
    String note,
    boolean invented,
    LengthStyle style,
    String currency,
    List<SheetStock> sheets,
    Cutting cutting,
    Optional<SegmentPlan> helix,
    Optional<HelixOrder> structure,
    List<Demand> pieces,
    SearchSettings search,
    Rates rates) {

  /**
   * @throws IllegalArgumentException if there is no sheet, or nothing to cut
   */
  public Job {
    sheets = List.copyOf(sheets);
    pieces = List.copyOf(pieces);
    if (sheets.isEmpty()) {
      throw new IllegalArgumentException("a job must have at least one sheet");
    }
    if (helix.isEmpty() && structure.isEmpty() && pieces.isEmpty()) {
      throw new IllegalArgumentException("a job must have a helix, pieces, or both");
    }
  }

  /** The same job with another seed or effort. */
  public Job with(SearchSettings settings) {
    return new Job(
        title, note, invented, style, currency, sheets, cutting, helix, structure, pieces, settings,
        rates);
  }

  /** The same job on other sheets, cut another way. */
  public Job on(List<SheetStock> stock, Cutting way) {
    return new Job(
        title, note, invented, style, currency, stock, way, helix, structure, pieces, search,
        rates);
  }

  /** The same job that asks for exactly these pieces, and for no helix: what comparisons plan. */
  public Job only(List<Demand> wanted) {
    return new Job(
        title,
        note,
        invented,
        style,
        currency,
        sheets,
        cutting,
        Optional.empty(),
        Optional.empty(),
        wanted,
        search,
        rates);
  }

  /** All pieces wanted: those of the helix, then those listed. Ids are unique. */
  public List<Demand> demands() {
    List<Demand> wanted =
        structure
            .map(HelixOrder::demands)
            .or(() -> helix.map(SegmentPlan::demands))
            .orElse(List.of());
    return Stream.concat(wanted.stream(), pieces.stream()).toList();
  }
}

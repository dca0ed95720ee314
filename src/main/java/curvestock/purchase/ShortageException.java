package curvestock.purchase;

import curvestock.piece.Demand;
import java.util.List;
import java.util.stream.Collectors;

/** No way was found to cover the demand with the sheets in stock and the layouts found. */
public final class ShortageException extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final transient List<Demand> missing;

  ShortageException(List<Demand> missing) {
    super(
        "the sheets in stock do not suffice with the layouts found: still missing "
            + missing.stream()
                .map(demand -> demand.count() + " of piece " + demand.piece().id())
                .collect(Collectors.joining(", ")));
    this.missing = List.copyOf(missing);
  }

  /** The pieces that the best purchase found lacks. */
  public List<Demand> missing() {
    return missing;
  }
}

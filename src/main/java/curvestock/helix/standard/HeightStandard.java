package curvestock.helix.standard;

import curvestock.units.Length;
import java.util.List;
import java.util.Optional;

/** Which published height above the rails is to be kept free. */
public enum HeightStandard {
  NMRA_S7("NMRA S-7"),
  NEM_102("NEM 102, no overhead wire"),
  /** The wire at its lowest; the height of the wire's own build comes on top. */
  NEM_102_WIRE("NEM 102, wire at its lowest"),
  /** 17 to 23 feet of the prototype, to scale: for standard-gauge scales without a table. */
  PROTOTYPE_FEET("17 to 23 feet of the prototype");

  private static final double LEAST_FEET = 17;
  private static final double MOST_FEET = 23;
  private static final List<CsvTable.Row> ROWS = CsvTable.read("clearance-heights.csv").rows();

  private final String title;

  HeightStandard(String title) {
    this.title = title;
  }

  public String title() {
    return title;
  }

  /** The heights for a scale; empty if the standard's table has no row for it. */
  public Optional<Sourced<Range>> heights(Scale scale) {
    if (this == PROTOTYPE_FEET && scale.isNarrow()) {
      return Optional.empty();
    }
    if (this == PROTOTYPE_FEET) {
      Range range = new Range(scale.ofPrototypeFeet(LEAST_FEET), scale.ofPrototypeFeet(MOST_FEET));
      return Optional.of(new Sourced<>(range, title, Certainty.DERIVED));
    }
    return ROWS.stream()
        .filter(row -> scale.isCalled(row.text("scale")) && row.is("standard", name()))
        .map(row -> row.sourced(new Range(row.length("low"), row.length("high"))))
        .findFirst();
  }

  /** From the least height, for low equipment, to the greatest, for high equipment. */
  public record Range(Length least, Length greatest) {}
}

package curvestock.job;

import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.Traffic;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.HeightStandard;
import curvestock.helix.standard.Scale;
import curvestock.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code trains:} of a helix: what has to pass, and how much room it is to have. */
final class TrainsReader {

  private static final Map<String, HeightStandard> STANDARDS =
      Map.of(
          "NMRA S-7", HeightStandard.NMRA_S7,
          "NEM 102", HeightStandard.NEM_102,
          "NEM 102 with wire", HeightStandard.NEM_102_WIRE,
          "prototype feet", HeightStandard.PROTOTYPE_FEET);

  private static final List<String> WORDS =
      List.of("NMRA S-7", "NEM 102", "NEM 102 with wire", "prototype feet");

  private static final Length SPARE = Length.ofInches(0.125);
  private static final Length OPENING = Length.ofInches(24);

  /** What an arm reaches from outside. */
  private static final Length REACH = Length.ofInches(24);

  private final Assumed assumed;
  private final boolean reachable;

  /**
   * @param ground empty if unreadable
   */
  TrainsReader(Assumed assumed, Optional<GroundPlan> ground) {
    this.assumed = assumed;
    this.reachable =
        ground.filter(plan -> !plan.isOval() && plan.outerEdge().compareTo(REACH) <= 0).isPresent();
  }

  Optional<Traffic> read(Block helix, Scale scale, double toScale) {
    Optional<Field> field = helix.find("trains");
    Optional<Block> block =
        field.flatMap(
            given ->
                given.block(
                    "tallest",
                    "longest",
                    "train-length",
                    "spare",
                    "clearance-standard",
                    "opening"));
    Optional<Length> tallest = length(block, "tallest");
    Optional<Vehicle> longest =
        block.flatMap(given -> given.find("longest")).flatMap(TrainsReader::vehicle);
    Optional<Length> train = length(block, "train-length");
    Length spare =
        assumed.length(
            block,
            "spare",
            Lengths.GAP,
            "trains.spare",
            SPARE.times(toScale),
            assumed.shown(SPARE) + " in HO above and beside, other scales in proportion");
    HeightStandard usual = usualStandard(scale);
    HeightStandard standard =
        assumed.value(
            block,
            "clearance-standard",
            given -> given.choice(STANDARDS, WORDS),
            "trains.clearance-standard",
            usual,
            usual.title(),
            "it has a figure for this scale");
    Length opening =
        assumed.length(
            block,
            "opening",
            Lengths.OPENING,
            "trains.opening",
            reachable ? Length.ZERO : OPENING,
            reachable
                ? "small enough to reach over from outside; " + Assumed.PRACTICE
                : Assumed.PRACTICE);
    return block
        .orElse(helix)
        .build(() -> new Traffic(tallest, longest, train, spare, standard, opening));
  }

  /** The custom of the job's units first, then whichever standard knows the scale. */
  private HeightStandard usualStandard(Scale scale) {
    List<HeightStandard> order =
        assumed.imperial()
            ? List.of(HeightStandard.NMRA_S7, HeightStandard.NEM_102)
            : List.of(HeightStandard.NEM_102, HeightStandard.NMRA_S7);
    return order.stream()
        .filter(
            standard ->
                standard.heights(scale).filter(r -> r.certainty().isPrintable()).isPresent())
        .findFirst()
        .orElse(HeightStandard.PROTOTYPE_FEET);
  }

  private static Optional<Length> length(Optional<Block> block, String key) {
    return block.flatMap(given -> given.find(key)).flatMap(Field::size);
  }

  private static Optional<Vehicle> vehicle(Field field) {
    return field
        .block("height", "length", "width", "truck-centres")
        .flatMap(
            block -> {
              Optional<Length> height = block.need("height", "height: 2.8 in").flatMap(Field::size);
              Optional<Length> length = block.need("length", "length: 12 in").flatMap(Field::size);
              Optional<Length> width = block.need("width", "width: 1.4 in").flatMap(Field::size);
              Optional<Length> trucks =
                  block.need("truck-centres", "truck-centres: 8 in").flatMap(Field::size);
              return block.build(
                  () ->
                      new Vehicle(
                          height.orElseThrow(),
                          length.orElseThrow(),
                          width.orElseThrow(),
                          trucks.orElseThrow()));
            });
  }
}

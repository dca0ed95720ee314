package curvestock.helix.verdict;

import curvestock.helix.build.SupportTable;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Text;
import java.util.Optional;
import java.util.stream.Collectors;

/** Whether each washer of a rod lies flat: wholly on a joint's splice plate, or clear of it. */
final class RodPlateRule {

  private RodPlateRule() {}

  /** Empty where there are no rods or no plates under the roadbed. */
  static Optional<Verdict> verdict(HelixSpec spec, SupportTable supports) {
    if (!(spec.supports().riser() instanceof Riser.ThreadedRods)
        || !(spec.construction() instanceof Construction.ButtWithPlate)) {
      return Optional.empty();
    }
    String names =
        supports.partlyUnderPlates().stream()
            .map(row -> row.station().name())
            .distinct()
            .collect(Collectors.joining(", "));
    return Optional.of(
        Verdict.of(Rule.RODS_IN_PLATES, names.isEmpty() ? State.OK : State.MARGINAL)
            .with(Fact.SUPPORTS, new Text(names)));
  }
}

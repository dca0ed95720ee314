package curvestock.helix.clearance;

import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Traffic;
import curvestock.helix.standard.HeightStandard.Range;
import curvestock.helix.standard.Sourced;
import curvestock.units.Length;
import java.util.Optional;

/**
 * The height that must stay free above the rails.
 *
 * @param least below this a train does not pass
 * @param comfortable below this it passes, with less room than the standard asks
 * @param reason where the figures come from
 * @param comfort where the comfortable height comes from, if not from there too
 */
public record HeightNeed(
    Length least, Length comfortable, String reason, Optional<String> comfort) {

  /**
   * The tallest vehicle with its spare is the least; the standard's greatest height is comfortable.
   * Without a vehicle the standard's own least height stands in.
   *
   * @throws IllegalArgumentException if there is neither a vehicle nor a published height for the
   *     scale
   */
  public static HeightNeed of(HelixSpec spec) {
    Traffic traffic = spec.traffic();
    Optional<Sourced<Range>> published =
        traffic.heights().heights(spec.scale()).filter(range -> range.certainty().isPrintable());
    Optional<Length> vehicle = traffic.tallestKnown().map(height -> height.plus(traffic.spare()));
    if (vehicle.isPresent()) {
      return ofVehicle(vehicle.get(), published);
    }
    return published
        .map(
            range ->
                new HeightNeed(
                    range.value().least(),
                    range.value().greatest(),
                    range.citation(),
                    Optional.empty()))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no published height for scale "
                        + spec.scale().name()
                        + " in "
                        + traffic.heights().title()
                        + "; give yours as `trains: {tallest: ...}`"));
  }

  private static HeightNeed ofVehicle(Length vehicle, Optional<Sourced<Range>> published) {
    String reason = "tallest vehicle plus spare room";
    return published
        .filter(range -> range.value().greatest().compareTo(vehicle) > 0)
        .map(
            range ->
                new HeightNeed(
                    vehicle, range.value().greatest(), reason, Optional.of(range.citation())))
        .orElseGet(() -> new HeightNeed(vehicle, vehicle, reason, Optional.empty()));
  }
}

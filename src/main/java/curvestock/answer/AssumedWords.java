package curvestock.answer;

import curvestock.helix.spec.Setting;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What builders call the figures that a job leaves open, by their keys in the helix block. */
final class AssumedWords {

  private static final Map<String, String> NAMES =
      Map.ofEntries(
          Map.entry("direction", "direction of climb"),
          Map.entry("entry", "angle of the entry"),
          Map.entry("heights.underlay", "thickness of the underlay"),
          Map.entry("heights.ties", "height of the ties"),
          Map.entry("heights.rail", "height of the rail"),
          Map.entry("joint", "kind of joint"),
          Map.entry("joint.half-lap", "length of the half-laps"),
          Map.entry("joint.plate.form", "shape of the splice plates"),
          Map.entry("joint.plate.length", "length of the splice plates"),
          Map.entry("joint.plate.thickness", "thickness of the splice plates"),
          Map.entry("joint.plate.screw-hole", "holes for screws"),
          Map.entry("joint.plate.from-sheets", "splice plates cut from the sheets"),
          Map.entry("joint.side-plates.length", "length of the side plates"),
          Map.entry("joint.side-plates.thickness", "thickness of the side plates"),
          Map.entry("joint.side-plates.from-sheets", "side plates cut from the sheets"),
          Map.entry("supports", "kind of riser"),
          Map.entry(
              "supports.foot-height", "height of the plywood's underside where the climb begins"),
          Map.entry("supports.blocks.width", "width of the riser blocks"),
          Map.entry("supports.blocks.along", "length of the riser blocks along the track"),
          Map.entry("supports.blocks.kerf", "saw kerf for the riser blocks"),
          Map.entry("supports.blocks.board", "board for the riser blocks"),
          Map.entry("supports.rods.thread", "thread of the rods"),
          Map.entry("supports.rods.inset", "edge of the roadbed to the middle of a rod"),
          Map.entry("supports.rods.fit", "play of a rod in its hole"),
          Map.entry("supports.rods.washer", "diameter of the washers"),
          Map.entry("supports.rods.end-allowance", "spare length of a rod"),
          Map.entry("supports.rods.base", "thickness of the base that the rods go through"),
          Map.entry("supports.rods.kerf", "saw kerf in the rods"),
          Map.entry("supports.rods.stock", "rods to buy"),
          Map.entry("trains.spare", "spare room around every vehicle"),
          Map.entry("trains.clearance-standard", "clearance standard"),
          Map.entry("trains.opening", "opening for a person inside"),
          Map.entry("density", "weight of the plywood"),
          Map.entry("base.rim", "rim of the base outside the roadbed"));

  private AssumedWords() {}

  /** The name of a figure, to stand before its value; never empty. */
  static String of(String key) {
    return setting(key)
        .map(Setting::title)
        .or(() -> Optional.ofNullable(NAMES.get(key)))
        .orElseThrow(() -> new IllegalArgumentException("no name for the assumed " + key));
  }

  /** Settings that advice may change have their names already. */
  private static Optional<Setting> setting(String key) {
    return Stream.of(Setting.values())
        .filter(each -> each != Setting.JOINT && each.key().equals(key))
        .findFirst();
  }
}

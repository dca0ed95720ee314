package curvestock.helix.build;

import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Plates, riser blocks and their braces that are cut from the same sheets as the roadbed. */
public final class SmallParts {

  /** What is left to saw off a riser block: our own choice. */
  private static final Length TO_SAW = Length.ofInches(1.0 / 16);

  private final LengthStyle style;
  private final List<Demand> demands = new ArrayList<>();

  /**
   * Counts the parts.
   *
   * @param style of the lengths in their names
   */
  public SmallParts(
      HelixSpec spec,
      Joints joints,
      List<Bridge> bridges,
      SupportTable supports,
      LengthStyle style) {
    this.style = style;
    if (!joints.all().isEmpty()) {
      addPlates(spec, joints.all(), bridges);
    }
    if (spec.supports().riser() instanceof Riser.WoodBlocks wood && wood.stock().isEmpty()) {
      addBlocks(wood, supports.blocks().orElseThrow());
      addBraces(wood, supports.braces().orElseThrow());
    }
  }

  private void addPlates(HelixSpec spec, List<Joint> joints, List<Bridge> bridges) {
    if (spec.construction() instanceof Construction.ButtWithPlate butt
        && butt.plate().fromRoadbedSheets()) {
      Demand plates = new SplicePlates(butt, spec.ground(), joints.size()).demand();
      Piece plate = ofThickness(plates.piece(), butt.plate().thickness(), spec);
      demands.add(new Demand(plate, plates.count()));
    }
    if (spec.construction() instanceof Construction.PlatesBeside beside
        && beside.fromRoadbedSheets()) {
      Strip plate = new Strip(beside.length(), beside.height());
      Piece piece = Piece.of("side-plate", "side plate", plate);
      int count = new SidePlates(beside, spec.ground(), joints, bridges).count();
      demands.add(new Demand(ofThickness(piece, beside.thickness(), spec), count));
    }
  }

  /** A plate as thick as the roadbed comes from the same sheets, one of another from others. */
  private static Piece ofThickness(Piece piece, Length thickness, HelixSpec spec) {
    double apart = thickness.minus(spec.stack().plywood()).millimetres();
    return Math.abs(apart) <= 0.01 ? piece : piece.ofThickness(thickness);
  }

  /** Blocks as rectangles, in sixteenths or whole millimetres: their ends are sawn afterwards. */
  private void addBlocks(Riser.WoodBlocks wood, BlockPlan plan) {
    for (BlockPlan.Block block : plan.blocks()) {
      Length step = wood.inches() ? TO_SAW : Length.ofMillimetres(1);
      Strip strip = new Strip(block.stockLength().plus(TO_SAW).up(step), wood.along());
      String name = "riser block of " + style.formatSawn(block.height());
      demands.add(new Demand(Piece.of(block.id(), name, strip), block.count()));
    }
  }

  /** As long as the longest of those that go by one name. */
  private void addBraces(Riser.WoodBlocks wood, Braces braces) {
    Map<String, List<Braces.Brace>> alike = new LinkedHashMap<>();
    braces
        .all()
        .forEach(
            brace -> alike.computeIfAbsent(brace.part(), part -> new ArrayList<>()).add(brace));
    int number = 0;
    for (Map.Entry<String, List<Braces.Brace>> each : alike.entrySet()) {
      Length longest =
          each.getValue().stream().map(Braces.Brace::length).reduce(Length.ZERO, Length::longer);
      Strip strip = new Strip(longest, wood.along());
      number++;
      demands.add(
          new Demand(Piece.of("brace-" + number, each.getKey(), strip), each.getValue().size()));
    }
  }

  public List<Demand> demands() {
    return List.copyOf(demands);
  }
}

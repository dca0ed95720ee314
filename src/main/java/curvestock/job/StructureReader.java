package curvestock.job;

import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BaseFrame;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HardwarePrices;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.RoadbedStack;
import curvestock.helix.spec.SegmentRun;
import curvestock.helix.spec.Segmentation;
import curvestock.helix.spec.SupportPlan;
import curvestock.helix.spec.Traffic;
import curvestock.helix.standard.Scale;
import curvestock.helix.standard.Sourced;
import curvestock.helix.standard.WoodDensity;
import curvestock.helix.standard.WoodDensity.Wood;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Money;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Reads a {@code helix:} block that says more than where to cut: scale, climb, joints, supports,
 * trains. What it leaves open is taken from the trade and noted as assumed.
 */
final class StructureReader {

  /** Keys that make a block a whole helix rather than a plain ring of segments. */
  static final List<String> KEYS =
      List.of(
          "scale",
          "inner-track",
          "side-margin",
          "tracks",
          "track-spacing",
          "starter-angle",
          "climb",
          "rise-per-turn",
          "steepest-grade",
          "direction",
          "entry",
          "exit",
          "straight",
          "bottom",
          "top",
          "heights",
          "joint",
          "supports",
          "trains",
          "prices",
          "wood",
          "density",
          "base");

  private static final double MOST_TURNS = 100;
  private static final double MOST_GRADE = 20;
  private static final double MOST_DENSITY = 2000;
  private static final double MOST_RATIO = 1000;
  private static final double HO = 87.0857;
  private static final int LONGEST_NAME = 30;

  private static final Length UNDERLAY = Length.ofInches(0.1875);
  private static final Length TIE = Length.ofInches(0.075);
  private static final Length RAIL = Length.ofInches(0.1);
  private static final Length RIM = Length.ofInches(1);

  private static final Map<String, Scale> SCALES =
      Scale.published().stream()
          .map(Sourced::value)
          .collect(Collectors.toUnmodifiableMap(Scale::name, Function.identity()));

  private final Block helix;
  private final Length plywood;
  private final List<SheetStock> sheets;
  private final Length kerf;
  private final LengthStyle style;
  private final LengthStyle rounding;
  private final Assumed assumed;

  /**
   * @param plywood thickness of the roadbed
   * @param sheets the job's sheets; empty if unreadable
   * @param kerf of the saw that cuts them
   * @param style of what is printed
   * @param rounding of what is assumed, by the units of the job's own numbers
   */
  StructureReader(
      Block helix,
      Length plywood,
      List<SheetStock> sheets,
      Length kerf,
      LengthStyle style,
      LengthStyle rounding) {
    this.helix = helix;
    this.sheets = List.copyOf(sheets);
    this.plywood = plywood;
    this.kerf = kerf;
    this.style = style;
    this.rounding = rounding;
    this.assumed = new Assumed(style, rounding.unit().isImperial());
  }

  Optional<HelixOrder> read() {
    Optional<Scale> scale = helix.need("scale", "scale: HO").flatMap(this::scale);
    double toScale = scale.map(known -> HO / known.ratio()).orElse(1.0);
    Optional<GroundPlan> ground = new GroundReader(assumed).read(helix, scale);
    Optional<Segmentation> segmentation = segmentation();
    Optional<Ascent> ascent = ascent();
    EndReader ends = new EndReader(assumed, toScale, plywood);
    Optional<EndPlan> bottom = ends.read(helix, "bottom");
    Optional<EndPlan> top = ends.read(helix, "top");
    Optional<RoadbedStack> stack = stack(toScale);
    Optional<Construction> joint =
        new JointReader(assumed, plywood, sheets, toScale, style, ground).read(helix);
    Optional<SupportPlan> supports = supports(ground, joint, segmentation);
    Optional<Traffic> traffic =
        scale.flatMap(known -> new TrainsReader(assumed, ground).read(helix, known, toScale));
    HardwarePrices prices = prices();
    double density = density();
    Optional<BaseFrame> base = base(ground);
    return helix.build(
        () -> {
          HelixPlan plan =
              HelixPlan.of(
                  new HelixSpec(
                      scale.orElseThrow(),
                      ground.orElseThrow(),
                      ascent.orElseThrow(),
                      bottom.orElseThrow(),
                      top.orElseThrow(),
                      stack.orElseThrow(),
                      joint.orElseThrow(),
                      segmentation.orElseThrow(),
                      supports.orElseThrow(),
                      traffic.orElseThrow(),
                      prices,
                      density),
                  style);
          return HelixOrder.settled(plan, assumed.all(), base, rounding);
        });
  }

  private Optional<Scale> scale(Field field) {
    if (field.isText()) {
      return field.choice(
          SCALES, Scale.published().stream().map(known -> known.value().name()).toList());
    }
    return field
        .block("name", "ratio", "gauge")
        .flatMap(
            block -> {
              Optional<String> name =
                  block.need("name", "name: my own").flatMap(text -> text.line(LONGEST_NAME));
              Optional<Double> ratio =
                  block.need("ratio", "ratio: 87").flatMap(number -> number.amount(MOST_RATIO));
              Optional<Length> gauge = block.need("gauge", "gauge: 16.5 mm").flatMap(Field::size);
              return block.build(
                  () -> new Scale(name.orElseThrow(), ratio.orElseThrow(), gauge.orElseThrow()));
            });
  }

  private Optional<Segmentation> segmentation() {
    Optional<Angle> segment =
        helix.needOneOf("segments-per-turn", "segment-angle").flatMap(HelixReader::segment);
    Optional<Angle> starter = helix.find("starter-angle").flatMap(field -> field.angle(1, 360));
    Optional<SegmentRun> lower = HelixReader.lower(helix);
    return helix.build(() -> new Segmentation(segment.orElseThrow(), starter, lower));
  }

  private Optional<Ascent> ascent() {
    Optional<Double> turns = helix.find("turns").flatMap(field -> field.amount(MOST_TURNS));
    Optional<Length> climb = helix.find("climb").flatMap(Field::size);
    Optional<Length> rise = helix.find("rise-per-turn").flatMap(Field::size);
    Optional<Grade> steepest =
        helix
            .find("steepest-grade")
            .flatMap(field -> field.amount(MOST_GRADE))
            .map(Grade::ofPercent);
    Optional<Angle> exit = helix.find("exit").flatMap(field -> field.angle(-360, 360));
    return helix.build(
        () ->
            new Ascent(
                turns.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                climb,
                rise,
                steepest,
                exit));
  }

  private Optional<RoadbedStack> stack(double toScale) {
    Optional<Block> block =
        helix.find("heights").flatMap(field -> field.block("underlay", "ties", "rail"));
    String why = "typical in HO, other scales in proportion; " + Assumed.PRACTICE;
    Length underlay =
        assumed.length(
            block, "underlay", Lengths.GAP, "heights.underlay", UNDERLAY.times(toScale), why);
    Length ties =
        assumed.length(block, "ties", Lengths.GAP, "heights.ties", TIE.times(toScale), why);
    Length rail =
        assumed.length(block, "rail", Lengths.GAP, "heights.rail", RAIL.times(toScale), why);
    return block.orElse(helix).build(() -> new RoadbedStack(plywood, underlay, ties, rail));
  }

  private Optional<SupportPlan> supports(
      Optional<GroundPlan> ground,
      Optional<Construction> joint,
      Optional<Segmentation> segmentation) {
    Length all = plywood.times(joint.map(Construction::layers).orElse(1));
    Length run =
        ground.map(plan -> plan.runPerTurn(plan.bedRadius())).orElse(Length.ofMillimetres(1));
    Angle segment = segmentation.map(Segmentation::segment).orElse(Angle.ofDegrees(90));
    Optional<Length> base = helix.find("base").map(given -> plywood);
    return new SupportReader(assumed, kerf, base).read(helix, run, all, segment);
  }

  private HardwarePrices prices() {
    Optional<Block> block =
        helix
            .find("prices")
            .flatMap(
                field ->
                    field.block(
                        "nut", "washer", "coupling-nut", "screw", "plate", "glue-kilogram"));
    return new HardwarePrices(
        price(block, "nut"),
        price(block, "washer"),
        price(block, "coupling-nut"),
        price(block, "screw"),
        price(block, "plate"),
        price(block, "glue-kilogram"));
  }

  private static Optional<Money> price(Optional<Block> block, String key) {
    return block.flatMap(given -> given.find(key)).flatMap(Field::price);
  }

  private double density() {
    Optional<Field> stated = helix.find("density");
    if (stated.isPresent()) {
      return stated.get().amount(MOST_DENSITY).orElse(1.0);
    }
    Map<String, Wood> woods = Map.of("birch", Wood.BIRCH, "softwood", Wood.SOFTWOOD);
    Wood wood =
        helix
            .find("wood")
            .flatMap(field -> field.choice(woods, List.of("birch", "softwood")))
            .orElse(Wood.BIRCH);
    Sourced<Double> density = WoodDensity.of(wood, plywood);
    assumed.note(
        "density",
        assumed.shownDensity(density.value()),
        assumed.withDensities(density.citation()) + "; figure for this thickness");
    return density.value();
  }

  private Optional<BaseFrame> base(Optional<GroundPlan> ground) {
    Optional<Block> block = helix.find("base").flatMap(field -> field.block("form", "rim"));
    if (block.isEmpty() || ground.isEmpty()) {
      return Optional.empty();
    }
    Map<String, BaseFrame.Form> forms =
        Map.of("square", BaseFrame.Form.SQUARE, "octagon", BaseFrame.Form.OCTAGON);
    Optional<BaseFrame.Form> form =
        block
            .get()
            .need("form", "form: octagon")
            .flatMap(field -> field.choice(forms, List.of("square", "octagon")));
    Length rim =
        assumed.length(block, "rim", Lengths.GAP, "base.rim", RIM, "beyond the roadbed's edges");
    return block.get().build(() -> BaseFrame.under(ground.get(), form.orElseThrow(), rim));
  }
}

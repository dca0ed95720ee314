package curvestock.helix.build;

import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HardwarePrices;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.SplicePlate;
import curvestock.helix.standard.Washer;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What to buy besides the sheets, counted from the same joints and stations as everything else. */
public final class ShoppingList {

  /** Along a batten. */
  private static final double SCREWED_INCHES = 4;

  private final HelixSpec spec;
  private final LengthStyle style;
  private final Roadbed roadbed;
  private final Joints joints;
  private final SupportTable supports;
  private final List<ShoppingItem> items = new ArrayList<>();
  private int screws;
  private Optional<BoardCutting> riserCutting = Optional.empty();

  /**
   * Counts everything.
   *
   * @param style of the lengths in the names of goods
   */
  public ShoppingList(
      HelixSpec spec,
      Joints joints,
      Roadbed roadbed,
      SupportTable supports,
      List<Bridge> bridges,
      LengthStyle style) {
    this.spec = spec;
    this.style = style;
    this.joints = joints;
    this.roadbed = roadbed;
    this.supports = supports;
    addRisers(bridges.stream().filter(bridge -> bridge.form() == Bridge.Form.BATTEN).toList());
    addCrossPieces(spec.supports().riser());
    bridges.forEach(this::addBridge);
    addBlockScrews();
    addBattenScrews(bridges);
    addPlatesAndScrews(bridges);
    addGlue(bridges);
  }

  /** Battens come from the boards of the blocks, where there are any. */
  private void addBridge(Bridge bridge) {
    boolean batten = bridge.form() == Bridge.Form.BATTEN;
    if (batten && riserCutting.isPresent() && spec.supports().riser() instanceof Riser.WoodBlocks) {
      return;
    }
    Bridge.Cut cut = bridge.cut(style);
    String where =
        "%s edge between %s".formatted(bridge.outer() ? "outer" : "inner", bridge.between());
    if (batten) {
      add(
          "wooden battens " + size(cut.length(), cut.breadth(), cut.depth()),
          bridge.count(),
          Optional.empty(),
          "glued and screwed under the %s, one for each turn that passes".formatted(where));
      return;
    }
    // What is bought is a layer; a strip is glued up from two.
    add(
        "strips of plywood or hardboard "
            + size(cut.length(), cut.depth(), cut.breadth().times(0.5)),
        2L * bridge.count(),
        Optional.empty(),
        "for %s, two layers each, along the %s; %s"
            .formatted(
                counted(bridge.count(), "edge strip"),
                where,
                StripPanel.of(2L * bridge.count(), cut, style).words(style)));
  }

  private static String counted(long count, String one) {
    return count + " " + one + (count == 1 ? "" : "s");
  }

  private static void addBattens(List<BoardCutting.Cut> cuts, Bridge bridge) {
    for (int i = 0; i < bridge.count(); i++) {
      cuts.add(new BoardCutting.Cut("batten over " + bridge.over(), bridge.length()));
    }
  }

  private void addRisers(List<Bridge> battens) {
    Riser riser = spec.supports().riser();
    if (riser instanceof Riser.WoodBlocks wood && wood.stock().isPresent()) {
      BlockPlan blocks = supports.blocks().orElseThrow();
      List<BoardCutting.Cut> cuts = new ArrayList<>(blocks.cuts());
      List<BoardCutting.Cut> braces = supports.braces().orElseThrow().cuts();
      cuts.addAll(braces);
      battens.forEach(bridge -> addBattens(cuts, bridge));
      long bridged = battens.stream().mapToLong(Bridge::count).sum();
      String what =
          "%s riser blocks".formatted(blocks.count())
              + (braces.isEmpty()
                  ? ""
                  : (bridged == 0 ? " and " : ", ") + counted(braces.size(), "brace"))
              + (bridged == 0 ? "" : " and " + counted(bridged, "batten"));
      Length squaring = wood.inches() ? Length.ofInches(0.5) : Length.ofMillimetres(12);
      addStock(
          new BoardCutting(wood.stock().get(), wood.kerf(), squaring, style::roundSawn, cuts),
          what,
          "board");
    } else if (riser instanceof Riser.ThreadedRods rods) {
      RodPlan plan = new RodPlan(spec, rods, supports);
      addStock(
          new BoardCutting(rods.stock(), rods.kerf(), Length.ZERO, style::roundSawn, plan.cuts()),
          plan.count() + " rods",
          "length");
      add(
          "coupling nuts " + rods.thread().name(),
          plan.couplings(),
          spec.prices().coupling(),
          "to join lengths where a rod is longer than you can buy");
      String each = "one above and one below each turn and the base, on every rod";
      String thread = rods.thread().name();
      add("nuts " + thread, plan.nuts(), spec.prices().nut(), each);
      add(washers(rods), plan.washers(), spec.prices().washer(), each);
    }
  }

  private void addCrossPieces(Riser riser) {
    if (riser instanceof Riser.WoodBlocks wood) {
      add(
          "cross pieces " + size(spec.ground().width(), wood.along(), wood.crossPiece()),
          supports.blocks().orElseThrow().crossPieces(),
          Optional.empty(),
          "one across the blocks under the roadbed, at each support on each turn");
    }
  }

  /** With what to ask for in the shop. */
  private String washers(Riser.ThreadedRods rods) {
    Washer washer = rods.washerBought();
    return "washers "
        + rods.thread().name()
        + (washer.standard().isEmpty() ? "" : " " + washer.standard())
        + ", "
        + style.formatGiven(washer.outer())
        + " outside";
  }

  private void addStock(BoardCutting cutting, String what, String one) {
    riserCutting = Optional.of(cutting);
    int boards = cutting.boards().size();
    int least = cutting.leastPossible();
    String note =
        boards == least
            ? "for %s; no fewer will do".formatted(what)
            : "for %s, as in the cut list; none needs fewer than %s".formatted(what, least);
    Optional<Money> price = cutting.stock().price().map(each -> each.times(boards));
    items.add(
        new ShoppingItem(
            cutting.stock().name(), boards, boards == 1 ? one : one + "s", price, note));
  }

  /** As the blocks are fastened, a line for each size: {@link BlockScrews}. */
  private void addBlockScrews() {
    if (!(spec.supports().riser() instanceof Riser.WoodBlocks wood) || !BlockScrews.hold(wood)) {
      return;
    }
    List<BlockPlan.Block> blocks = supports.blocks().orElseThrow().blocks();
    Map<String, Long> counts = new LinkedHashMap<>();
    Map<String, String> notes = new LinkedHashMap<>();
    Map<BlockScrews, Long> down = new LinkedHashMap<>();
    Map<BlockScrews, Long> seams = new LinkedHashMap<>();
    for (BlockPlan.Block block : blocks) {
      long joined = BlockScrews.atSeams(spec, wood, joints, block);
      BlockScrews.down(spec, wood, block)
          .ifPresent(
              size -> {
                down.merge(size, (long) block.count(), Long::sum);
                seams.merge(size, joined, Long::sum);
              });
    }
    down.forEach(
        (size, many) ->
            count(counts, notes, size, many, "one down into each of %s blocks".formatted(many)));
    seams.forEach(
        (size, many) ->
            count(
                counts,
                notes,
                size,
                many,
                "a second one into each of the %s blocks that a joint sits on".formatted(many)));
    long lowest =
        blocks.stream().filter(BlockPlan.Block::onBase).mapToLong(BlockPlan.Block::count).sum();
    count(
        counts,
        notes,
        BlockScrews.foot(wood),
        lowest,
        "one at an angle into the base for each of the %s that stand on it".formatted(lowest));
    countBraces(wood, counts, notes);
    counts.forEach(
        (name, count) -> add("screws " + name, count, spec.prices().screw(), notes.get(name)));
  }

  private void countBraces(
      Riser.WoodBlocks wood, Map<String, Long> counts, Map<String, String> notes) {
    List<Braces.Brace> braces = supports.braces().orElseThrow().all();
    for (boolean along : new boolean[] {false, true}) {
      long many = braces.stream().filter(brace -> brace.along() == along).count();
      String which = counted(many, "brace") + (along ? " along the track" : " across");
      BlockScrews.brace(wood, along)
          .ifPresent(size -> count(counts, notes, size, 2 * many, "two for each of " + which));
    }
  }

  private static void count(
      Map<String, Long> counts,
      Map<String, String> notes,
      BlockScrews screws,
      long count,
      String note) {
    if (count > 0) {
      counts.merge(screws.name(), count, Long::sum);
      notes.merge(screws.name(), note, (before, more) -> before + ", " + more);
    }
  }

  private void addBattenScrews(List<Bridge> bridges) {
    List<Bridge> battens =
        bridges.stream().filter(bridge -> bridge.form() == Bridge.Form.BATTEN).toList();
    long count =
        battens.stream()
            .mapToLong(
                bridge ->
                    bridge.count()
                        * (1L + (long) Math.floor(bridge.length().inches() / SCREWED_INCHES)))
            .sum();
    battens.stream()
        .map(bridge -> spec.plywood().plus(bridge.cut(style).depth()).minus(BlockScrews.SKIN))
        .min(Comparator.naturalOrder())
        .ifPresent(
            longest ->
                add(
                    "screws for battens, up to %s long"
                        .formatted(
                            style.formatDown(
                                longest.down(
                                    style.unit().isImperial()
                                        ? Length.ofInches(0.125)
                                        : Length.ofMillimetres(1)))),
                    count,
                    spec.prices().screw(),
                    "one every " + every()));
  }

  private String every() {
    return style.formatGiven(
        style.unit().isImperial() ? Length.ofInches(SCREWED_INCHES) : Length.ofMillimetres(100));
  }

  private void addPlatesAndScrews(List<Bridge> bridges) {
    int count = joints.all().size();
    HardwarePrices prices = spec.prices();
    if (spec.construction() instanceof Construction.ButtWithPlate butt) {
      SplicePlate plate = butt.plate();
      SplicePlates plates = new SplicePlates(butt, spec.ground(), count);
      if (!plate.fromRoadbedSheets()) {
        String size = size(plate.length(), plates.width(), plate.thickness());
        add("splice plates " + size, count, prices.plate(), "one for each joint");
      }
      Length longest = BlockScrews.mostThrough(plate, spec.plywood());
      String note =
          "%s into each piece at each joint; %s"
              .formatted(
                  plate.screwsEachSide(),
                  BlockScrews.plate(plate, spec.plywood(), style.unit().isImperial())
                      .map(BlockScrews::name)
                      .orElse("shorter than " + style.formatDown(longest)));
      screws = plates.screws();
      add("screws for plates", screws, prices.screw(), note);
    } else if (spec.construction() instanceof Construction.PlatesBeside beside
        && !beside.fromRoadbedSheets()) {
      String size = size(beside.length(), beside.height(), beside.thickness());
      int plates = new SidePlates(beside, spec.ground(), joints.all(), bridges).count();
      String note =
          "two for each joint"
              + (plates < 2 * count ? ", but one where an edge strip runs past the joint" : "");
      add("side plates " + size, plates, prices.plate(), note);
    }
  }

  private String size(Length length, Length width, Length thickness) {
    return style.formatGiven(length)
        + " × "
        + style.formatGiven(width)
        + " × "
        + style.formatGiven(thickness);
  }

  private void addGlue(List<Bridge> bridges) {
    double grip = blockEnds() + crossPieceTops() + bridges.stream().mapToDouble(this::glued).sum();
    long grams = Math.round(glueGrams() + GluedArea.grams(grip));
    if (grams > 0) {
      Optional<Money> price =
          spec.prices()
              .glueKilogram()
              .map(kilogram -> Money.of(BigDecimal.valueOf(kilogram.minorUnits() * grams, 5)));
      String note = GluedArea.words(style);
      items.add(new ShoppingItem("glue", grams, "g", price, note));
    }
  }

  /** Both ends of all blocks. */
  private double blockEnds() {
    return spec.supports().riser() instanceof Riser.WoodBlocks wood
        ? 2.0
            * supports.blocks().orElseThrow().count()
            * wood.width().millimetres()
            * wood.along().millimetres()
        : 0;
  }

  private double crossPieceTops() {
    return spec.supports().riser() instanceof Riser.WoodBlocks wood
        ? supports.blocks().orElseThrow().crossPieces()
            * spec.ground().width().millimetres()
            * wood.along().millimetres()
        : 0;
  }

  /**
   * A strip's first layer on the edge of the plywood and its second on the first; a batten's top.
   */
  private double glued(Bridge bridge) {
    double height =
        bridge.form() == Bridge.Form.STRIP
            ? bridge.depth().plus(spec.plywood()).millimetres()
            : bridge.breadth().millimetres();
    return bridge.count() * bridge.length().millimetres() * height;
  }

  /** Glued area: plates, laps, or a whole layer. */
  private double gluedArea(Construction construction, int count, double width) {
    if (construction instanceof Construction.ButtWithPlate butt) {
      return new SplicePlates(butt, spec.ground(), 1).shape().area() * count;
    }
    if (construction instanceof Construction.HalfLap half) {
      return half.lap().millimetres() * width * count;
    }
    if (construction instanceof Construction.PlatesBeside beside) {
      return 2 * beside.length().millimetres() * spec.stack().plywood().millimetres() * count;
    }
    return roadbed.area() / spec.construction().layers();
  }

  private void add(String name, long quantity, Optional<Money> each, String note) {
    if (quantity > 0) {
      Optional<Money> price = each.map(money -> money.times(quantity));
      items.add(new ShoppingItem(name, quantity, "", price, note));
    }
  }

  /** How risers are cut from boards or rods; empty where they come from the roadbed's sheets. */
  public Optional<BoardCutting> riserCutting() {
    return riserCutting;
  }

  public List<ShoppingItem> items() {
    return List.copyOf(items);
  }

  /** Screws for all joints. */
  public int screws() {
    return screws;
  }

  /** Glue for all joints, or between two layers, in grams. */
  public double glueGrams() {
    int count = joints.all().size();
    double width = spec.ground().width().millimetres();
    return GluedArea.grams(gluedArea(spec.construction(), count, width));
  }

  /** Known price of the plates and screws that are bought for one joint. */
  public Money boughtPerJoint() {
    Money plate = spec.prices().plate().orElse(Money.ZERO);
    if (spec.construction() instanceof Construction.ButtWithPlate butt) {
      Money screw = spec.prices().screw().orElse(Money.ZERO);
      return screw
          .times(2L * butt.plate().screwsEachSide())
          .plus(butt.plate().fromRoadbedSheets() ? Money.ZERO : plate);
    }
    return spec.construction() instanceof Construction.PlatesBeside beside
            && !beside.fromRoadbedSheets()
        ? plate.times(2)
        : Money.ZERO;
  }

  /** Sum of the known prices. */
  public Money knownPrices() {
    return known(items);
  }

  private static Money known(List<ShoppingItem> items) {
    return items.stream().flatMap(item -> item.price().stream()).reduce(Money.ZERO, Money::plus);
  }
}

package curvestock.answer;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.BaseFrame;
import curvestock.helix.build.BlockPlan;
import curvestock.helix.build.BoardCutting;
import curvestock.helix.build.Bridge;
import curvestock.helix.build.Joint;
import curvestock.helix.build.RodPlan;
import curvestock.helix.build.SplicePlates;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.StockBoard;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Mass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is taken to the bench, in sentences: joints, supports, blocks, boards, the base. */
public final class BenchWords {

  /** What is meant where papers and pieces say 'up'. */
  public static final String UP =
      "'Up' is the side that the track goes on. Sheets and patterns show every piece with that side"
          + " facing you.";

  /** Blocks to stack to see whether the saw's stop is right. */
  private static final int STACK = 10;

  /** Of fewer blocks alike no stack tells more than a tape on one. */
  private static final int LEAST_STACK = 5;

  /** When a piece gets its number: the one rule of every paper. */
  public static final String NUMBER =
      "Write the number, 'up' and 'inner edge' on each piece before it leaves the sheet.";

  private final Building helix;
  private final HelixPlan plan;
  private final HelixSpec spec;
  private final Figures figures;
  private final LengthStyle style;

  public BenchWords(Building helix, Figures figures) {
    this.helix = helix;
    this.plan = helix.plan();
    this.spec = plan.spec();
    this.figures = figures;
    this.style = figures.style();
  }

  /** Where the joints are and how they are made. */
  public List<String> joints() {
    if (plan.joints().all().isEmpty()) {
      return List.of("none");
    }
    List<String> lines = new ArrayList<>();
    int turns = (int) Math.ceil(plan.climb().turns() - 1e-9);
    for (int turn = 1; turn <= turns; turn++) {
      List<Joint> here = plan.joints().ofTurn(turn);
      if (!here.isEmpty()) {
        lines.add(
            here.stream()
                .map(joint -> joint.name() + " at " + bearing(joint.at()))
                .collect(Collectors.joining(", ", "Turn " + turn + ": ", "")));
      }
    }
    if (spec.construction() instanceof Construction.HalfLap halved) {
      lines.add(
          "Each half-lap is %s long and half the plywood's thickness deep. Your job gives the plywood as %s thick, which makes %s: measure your own sheet. Cut the lap from above at a piece's upper end and from below at its lower end, so that each piece rests on the one before."
              .formatted(
                  figures.given(halved.lap()),
                  figures.given(spec.stack().plywood()),
                  HalfLapWords.depthWords(spec.stack().plywood(), figures)));
    }
    lines.addAll(plates());
    return lines;
  }

  /** The splice plates and their screws; empty if joints have none. */
  public List<String> plates() {
    return spec.construction() instanceof Construction.ButtWithPlate butt
        ? plates(butt)
        : List.of();
  }

  private List<String> plates(Construction.ButtWithPlate butt) {
    List<String> lines = new ArrayList<>();
    SplicePlates plates = new SplicePlates(butt, spec.ground(), plan.joints().all().size());
    lines.add(
        "One splice plate under each of the %s joints: %s along the track, %s across, %s thick, its middle on a radius of %s from the centre of the curve."
            .formatted(
                plates.count(),
                figures.given(butt.plate().length()),
                figures.length(plates.width()),
                figures.given(butt.plate().thickness()),
                figures.length(plates.middleRadius())));
    lines.add(
        "Screws: a row of %s on each side of the joint, %s from it. Across the plate, from its centre line: %s. Holes of %s."
            .formatted(
                butt.plate().screwsEachSide(),
                figures.length(plates.screwsAlong()),
                plates.screwsAcross().stream().map(this::across).collect(Collectors.joining(", ")),
                figures.given(butt.plate().screwHole())));
    return lines;
  }

  private String across(Length offset) {
    double mm = offset.millimetres();
    return Math.abs(mm) < 1e-6
        ? "on the line"
        : figures.length(Length.ofMillimetres(Math.abs(mm))) + (mm > 0 ? " outwards" : " inwards");
  }

  /** What holds it up, in short. */
  public List<String> risers() {
    Riser riser = spec.supports().riser();
    if (riser instanceof Riser.WoodBlocks) {
      BlockPlan blocks = plan.supports().blocks().orElseThrow();
      return List.of(
          "The roadbed rests on %s in %s."
              .formatted(
                  Figures.count(blocks.count(), "riser block"),
                  Figures.count(blocks.blocks().size(), "height")));
    }
    Riser.ThreadedRods rods = (Riser.ThreadedRods) riser;
    RodPlan rodPlan = new RodPlan(spec, rods, plan.supports());
    TreeSet<Length> lengths = new TreeSet<>();
    rodPlan.rods().forEach(each -> lengths.add(each.length()));
    return List.of(
        "The roadbed rests on %s rods (%s), %s to %s long, with %s nuts and %s washers."
            .formatted(
                rodPlan.count(),
                rods.thread().name(),
                figures.length(lengths.first()),
                figures.length(lengths.last()),
                rodPlan.nuts(),
                rodPlan.washers()));
  }

  /** How rods are set; empty if there are none. */
  public Optional<String> setting() {
    if (!(spec.supports().riser() instanceof Riser.ThreadedRods rods)) {
      return Optional.empty();
    }
    RodPlan rodPlan = new RodPlan(spec, rods, plan.supports());
    return Optional.of(
        "To mark the base for the rods, print footprint.pdf full size, lay it on the base and prick through the centre of each rod. Drill there, a little wider than the rod. Each rod goes through the base (%s thick), with a washer and a nut above and below it, and reaches %s below the top of the base. At every turn, set the lower nut so that its underside is at the nut height in support-table.pdf; then add a washer, the roadbed, a washer and the upper nut."
            .formatted(figures.length(rods.base()), figures.length(rodPlan.belowBaseTop())));
  }

  /** How the bridges are fitted; empty if there are none. */
  public List<String> bridgeRemarks() {
    List<Bridge> bridges = plan.stations().bridges();
    List<String> remarks = new ArrayList<>();
    if (bridges.stream().anyMatch(bridge -> bridge.form() == Bridge.Form.BATTEN)) {
      remarks.add(
          "Glue and screw each batten to the underside of the roadbed, a screw every "
              + figures.length(
                  figures.style().unit().isImperial()
                      ? Length.ofInches(4)
                      : Length.ofMillimetres(100))
              + (plan.spec().construction().layers() > 1
                  ? ", once the two layers above it are glued together"
                  : ", before its turn goes up")
              + ". It ends just short of the two supports and is straight:"
              + " the roadbed curves away from it in the middle. It hangs over the track below, and"
              + " the checks count that. Where the roadbed is not glued down yet, only clamp the batten to it; glue and screw it there"
              + " when you glue the roadbed.");
    }
    if (plan.stations().hasStrips()) {
      remarks.add(strips(bridges));
    }
    return remarks;
  }

  private String strips(List<Bridge> bridges) {
    return "Make each edge strip of two layers of plywood or hardboard, %s thick each, the face grain across the strip, so that it bends. It ends %s past the middle of the support at either end%s. Fit it once every piece that it touches is glued down. Bend the first layer round the edge, flush with the underside of the roadbed, and glue and clamp it along its whole length. When it is dry, glue the second layer onto it. Use no screws. The strip stands up beside the track, so the turn below keeps its headroom."
            .formatted(
                figures.given(layer(bridges)),
                figures.given(
                    style.unit().isImperial() ? Bridge.OVERLAP : Length.ofMillimetres(25)),
                meet(bridges) ? "; where two meet, trim both to the middle of the support" : "")
        + onward(bridges);
  }

  /** Of strips whose far end, on the top turn, is beyond the last support. */
  private String onward(List<Bridge> bridges) {
    String names =
        bridges.stream()
            .filter(bridge -> bridge.form() == Bridge.Form.STRIP)
            .filter(
                bridge ->
                    plan.supports().rows().stream().noneMatch(row -> bridge.endsOnTopAt(row.at())))
            .map(bridge -> bridge.between().replaceFirst(".* and ", ""))
            .distinct()
            .collect(Collectors.joining(", "));
    return names.isEmpty()
        ? ""
        : " On the top turn nothing stands at %s: let the strip run on along the exit's lead there."
            .formatted(names);
  }

  private Length layer(List<Bridge> bridges) {
    return bridges.stream()
        .filter(bridge -> bridge.form() == Bridge.Form.STRIP)
        .findFirst()
        .orElseThrow()
        .cut(style)
        .breadth()
        .times(0.5);
  }

  private static boolean meet(List<Bridge> bridges) {
    return bridges.stream()
        .filter(bridge -> bridge.form() == Bridge.Form.STRIP)
        .anyMatch(one -> bridges.stream().anyMatch(other -> other.follows(one)));
  }

  /** Why heights differ by a little more or less than they should; empty if they do not. */
  public Optional<String> rounding() {
    return style.denominator() == 0
        ? Optional.empty()
        : Optional.of(
            "Heights are rounded to the nearest 1/64 in, so the difference between two can be off by that much.");
  }

  /** What the heights of the supports are, and where rails and the top of the plywood lie. */
  public String heights() {
    SupportRow any = plan.supports().rows().get(0);
    return "%sMeasure to the top of the plywood, %s above the underside. The rail top is %s above the top of the plywood (track and underlay). support-table.pdf has the same heights with boxes to check off, and says %s."
        .formatted(
            rounding().map(words -> words + " ").orElse(""),
            figures.sawn(spec.plywood()),
            figures.sawn(any.railTop().minus(any.underside()).minus(spec.plywood())),
            isWood() ? "which block goes where" : "how high each nut sits");
  }

  /** Blocks where the grade changes: their lower end lies on another slope than their upper end. */
  private String uneven(BlockPlan blocks) {
    List<String> cuts =
        blocks.blocks().stream()
            .filter(BlockPlan.Block::isUneven)
            .map(
                block ->
                    "%s at %s"
                        .formatted(
                            block.id(),
                            figures.of(
                                Angle.ofRadians(Math.atan(block.lowerSlope())), Measure.ANGLE)))
            .toList();
    return cuts.isEmpty()
        ? ""
        : ", except where the grade changes: cut the lower end of %s".formatted(Figures.list(cuts));
  }

  /** What to mind when blocks are sawn. */
  public List<String> blockRemarks() {
    if (!(spec.supports().riser() instanceof Riser.WoodBlocks wood)) {
      return List.of();
    }
    BlockPlan blocks = plan.supports().blocks().orElseThrow();
    List<String> lines = new ArrayList<>();
    lines.add(
        "The table of riser blocks has the lengths and angles. Set the saw's stop to the 'cut to' length, measured on the long side. Lay the wood on"
            + " its %s face and swing the mitre saw to the saw angle, or stand it on its %s edge and tilt the blade to that angle. Clamp the wood, swing the stop away before you cut, so that the block cannot jam between stop and blade, and never hold a short block by hand. A block on the base has a square bottom end. Blocks between turns have both ends sloped the same way, so their ends are parallel%s."
                .formatted(
                    figures.given(wood.along()), figures.given(wood.width()), uneven(blocks)));
    for (BlockPlan.Block block : blocks.blocks()) {
      // At least as many are left to saw by the stop once it is right.
      int stack = Math.min(STACK, block.count() / 2);
      if (!block.onBase() && stack >= LEAST_STACK) {
        lines.add(
            "%s, between turns: set the saw's stop to about %s. Cut %s and lay them end to end, all facing the same way. Together they must measure %s along one edge. If they do not, reset the stop before you cut the rest: an error in it is repeated on every turn above."
                .formatted(
                    block.id(),
                    figures.sawn(block.longSide()),
                    stack,
                    figures.sawn(block.longSide().times(stack))));
      }
    }
    lines.add(
        "Set each block with %s across the roadbed and %s along the track, straight above the block below, its top sloping uphill with the track: on the base, the long side is uphill. Blocks under an edge go flush with that edge."
            .formatted(figures.given(wood.width()), figures.given(wood.along())));
    lines.addAll(new BlockTopWords(plan, figures).lines());
    if (wood.stock().isEmpty()) {
      lines.add(
          "All riser blocks come off the sheets as rectangles, at least %s too long. Saw the upper end, or both if the block stands between turns, to the angle and the 'cut to' length in the table."
              .formatted(figures.isImperial() ? "1/16 in" : "1.5 mm"));
    }
    lines.addAll(new BraceWords(plan, wood, figures).all());
    if (wood.stock().isPresent()) {
      lines.add(
          "The cut list shows what is left of each board. If that is too short to replace a block you miscut, buy one more board.");
    }
    blocks
        .withoutRoom()
        .forEach(
            row ->
                lines.add(
                    "No block at %s: the roadbed rests on the wood below."
                        .formatted(BuildTables.place(row))));
    return lines;
  }

  /** What all heights are measured from: the base to cut, or that the builder makes one. */
  public String base() {
    return helix
        .order()
        .base()
        .map(
            base ->
                "Base: %s of %s boards (`%s` on the cut layouts), all alike, %s each; together %s across, %s clear in the middle."
                        .formatted(
                            base.form() == BaseFrame.Form.SQUARE ? "a square" : "an octagon",
                            base.demand().count(),
                            base.demand().piece().id(),
                            figures.weight(new Mass(plan.weightOf(base.demand().piece()))),
                            figures.length(base.acrossFlats()),
                            figures.length(base.clear()))
                    + BaseWords.all(helix.order()))
        .orElseGet(this::ownBase);
  }

  private String ownBase() {
    return "All heights are measured up from the top of the base. The base is not in this packet: make it flat and level, at least %s (leads included), and strong enough to hold the helix (about %s without track) and a person who leans on it. If someone is to work inside, leave the middle open and the base high enough to duck under."
        .formatted(
            HelixWords.room(helix, figures),
            figures.weight((Mass) helix.figures().at(0, "weight")));
  }

  /** A line for each board or rod: what is cut from it and what is left. */
  public List<String> boards() {
    return plan.shopping().riserCutting().map(this::boards).orElse(List.of());
  }

  private List<String> boards(BoardCutting cutting) {
    List<String> lines = new ArrayList<>();
    lines.add(boardsRule(cutting));
    int number = 0;
    for (BoardCutting.Board board : cutting.boards()) {
      number++;
      Map<String, List<BoardCutting.Cut>> alike = new LinkedHashMap<>();
      board
          .cuts()
          .forEach(cut -> alike.computeIfAbsent(cut.part(), p -> new ArrayList<>()).add(cut));
      String left = figures.sawn(board.left());
      lines.add(
          "No. %s: %s; %s"
              .formatted(
                  number,
                  alike.values().stream().map(this::cuts).collect(Collectors.joining(", ")),
                  board.whole()
                      ? "the whole length"
                      : left.startsWith("0 ") ? "nothing left" : left + " left"));
    }
    return lines;
  }

  /** How room on a board is counted, so that all comes out. */
  private String boardsRule(BoardCutting cutting) {
    String kerf = "a %s kerf for each piece".formatted(figures.given(cutting.kerf()));
    return isWood()
        ? "Lengths are for the long side. Trim the end of each board square first. For a block on the base, start from a square end (its bottom) or an end at its angle (its top). For a block between turns, start from an end at its angle. If the end you have is not right for the next block, trim it to that block's angle first. The list allows %s per board for trimming, and %s."
            .formatted(figures.given(cutting.squaring()), kerf)
        : "The list allows " + kerf + "." + (plan.rodsAreJoined() ? " " + FixingWords.COUPLED : "");
  }

  /** What the boards are. */
  public String boardsTitle() {
    BoardCutting cutting = plan.shopping().riserCutting().orElseThrow();
    int count = cutting.boards().size();
    return "Cut list: %s of %s%s"
        .formatted(
            Figures.count(count, isWood() ? "board" : "length"),
            cutting.stock().name(),
            each(cutting.stock()));
  }

  private boolean isWood() {
    return spec.supports().riser() instanceof Riser.WoodBlocks;
  }

  /** Many names have the length in them, perhaps in feet. */
  private String each(StockBoard stock) {
    String length = figures.given(stock.length());
    String feet = Math.round(stock.length().inches() / 12) + " ft";
    String metres = Math.round(stock.length().millimetres() / 1000) + " m";
    boolean named = Stream.of(length, feet, metres).anyMatch(words -> stock.name().endsWith(words));
    return named ? "" : ", " + length + " each";
  }

  private String cuts(List<BoardCutting.Cut> alike) {
    BoardCutting.Cut first = alike.get(0);
    String count = alike.size() == 1 ? "" : alike.size() + " x ";
    return "%s%s (%s)".formatted(count, first.part(), figures.sawn(first.length()));
  }

  private String bearing(double at) {
    Angle angle = plan.line().bearing(at);
    return figures.bearing(angle);
  }
}

package curvestock.answer;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.BaseFrame;
import curvestock.helix.build.BlockPlan;
import curvestock.helix.build.BoardCutting;
import curvestock.helix.build.Bridge;
import curvestock.helix.build.Joint;
import curvestock.helix.build.RodPlan;
import curvestock.helix.build.SplicePlates;
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

/** What is taken to the bench, in sentences: joints, supports, blocks, boards, the base. */
public final class BenchWords {

  /** What is meant where papers and pieces say 'up'. */
  public static final String UP =
      "'Up' is the side that the track goes on: every drawing shows its pieces from above, that"
          + " side towards you.";

  /** A post so many times as tall as it is wide wants a brace: our own choice. */
  private static final double SLENDER = 20;

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
            "turn "
                + turn
                + ": "
                + here.stream()
                    .map(joint -> joint.name() + " at " + bearing(joint.at()))
                    .collect(Collectors.joining(", ")));
      }
    }
    if (spec.construction() instanceof Construction.HalfLap halved) {
      lines.add(
          "each lap is "
              + figures.given(halved.lap())
              + " long: cut away half the thickness above at a piece's upper end and below at its"
              + " lower end, so that each piece lies on the one before");
    }
    if (spec.construction() instanceof Construction.ButtWithPlate butt) {
      plates(lines, butt);
    }
    return lines;
  }

  private void plates(List<String> lines, Construction.ButtWithPlate butt) {
    SplicePlates plates = new SplicePlates(butt, spec.ground(), plan.joints().all().size());
    lines.add(
        "one splice plate under each of the "
            + plates.count()
            + " joints: "
            + figures.given(butt.plate().length())
            + " along the track, "
            + figures.length(plates.width())
            + " across, "
            + figures.given(butt.plate().thickness())
            + " thick, its middle at a radius of "
            + figures.length(plates.middleRadius())
            + " on the arcs");
    lines.add(
        "screws: a row of "
            + butt.plate().screwsEachSide()
            + " on each side, "
            + figures.length(plates.screwsAlong())
            + " from the joint; from the plate's middle line "
            + plates.screwsAcross().stream().map(this::across).collect(Collectors.joining(", "))
            + "; holes of "
            + figures.given(butt.plate().screwHole()));
  }

  private String across(Length offset) {
    double mm = offset.millimetres();
    return Math.abs(mm) < 1e-6
        ? "on it"
        : figures.length(Length.ofMillimetres(Math.abs(mm))) + (mm > 0 ? " outwards" : " inwards");
  }

  /** What holds it up, in short. */
  public List<String> risers() {
    Riser riser = spec.supports().riser();
    if (riser instanceof Riser.WoodBlocks wood) {
      BlockPlan blocks = new BlockPlan(wood, plan.supports());
      return List.of(
          Figures.count(blocks.count(), "riser block")
              + ", "
              + figures.given(wood.width())
              + " across and "
              + figures.given(wood.along())
              + " along the track, in "
              + Figures.count(blocks.blocks().size(), "height"));
    }
    Riser.ThreadedRods rods = (Riser.ThreadedRods) riser;
    RodPlan rodPlan = new RodPlan(spec, rods, plan.supports());
    TreeSet<Length> lengths = new TreeSet<>();
    rodPlan.rods().forEach(each -> lengths.add(each.length()));
    return List.of(
        rodPlan.count()
            + " rods "
            + rods.thread().name()
            + ", "
            + figures.length(lengths.first())
            + " to "
            + figures.length(lengths.last())
            + " long, "
            + rodPlan.nuts()
            + " nuts and "
            + rodPlan.washers()
            + " washers");
  }

  /** How rods are set; there must be some. */
  public String setting() {
    Riser.ThreadedRods rods = (Riser.ThreadedRods) spec.supports().riser();
    RodPlan rodPlan = new RodPlan(spec, rods, plan.supports());
    return "Each rod goes through the base ("
        + figures.length(rods.base())
        + " thick) with a washer and a nut above and below it, and reaches "
        + figures.length(rodPlan.belowBaseTop())
        + " below the base's top. At every turn run the lower nut up until its underside is at the"
        + " height stated; washer, roadbed, washer and the upper nut follow.";
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
              + ", before its turn goes up. It ends just short of the two supports and is straight:"
              + " the roadbed curves away from it in the middle. It hangs over the track below, and"
              + " the checks count that.");
    }
    if (bridges.stream().anyMatch(bridge -> bridge.form() == Bridge.Form.STRIP)) {
      remarks.add(
          "Bend each strip round the edge in two thin layers, glued, flush with the underside: it"
              + " stands up beside the track and takes no height from the turn below.");
    }
    return remarks;
  }

  /** What to mind when blocks are sawn. */
  public List<String> blockRemarks() {
    if (!(spec.supports().riser() instanceof Riser.WoodBlocks wood)) {
      return List.of();
    }
    BlockPlan blocks = new BlockPlan(wood, plan.supports());
    List<String> lines = new ArrayList<>();
    for (BlockPlan.Block block : blocks.blocks()) {
      String exactly = exactly(block.height());
      if (!block.onBase() && !exactly.isEmpty()) {
        lines.add(
            block.id()
                + " is "
                + figures.length(block.height())
                + exactly
                + ": the rounding adds up turn by turn, so set the saw's stop with a stack of them"
                + " and check the heights as you build");
      }
    }
    lines.add("tilt the saw for a sloping end; blocks between turns slope alike at both ends");
    String slender =
        blocks.blocks().stream()
            .filter(block -> block.height().compareTo(wood.width().times(SLENDER)) > 0)
            .map(BlockPlan.Block::id)
            .collect(Collectors.joining(", "));
    if (!slender.isEmpty()) {
      lines.add("tall and thin, brace them sideways: " + slender);
    }
    blocks
        .withoutRoom()
        .forEach(
            row ->
                lines.add(
                    "no block at "
                        + BuildTables.place(row)
                        + ": the roadbed lies on what is below"));
    return lines;
  }

  /** The length in decimals, if the fraction that is printed is not all of it. */
  private String exactly(Length length) {
    double steps = length.in(style.unit()) * style.denominator();
    boolean rounded = style.denominator() > 0 && Math.abs(steps - Math.rint(steps)) > 0.1;
    return rounded ? " (" + new LengthStyle(style.unit(), 0).format(length) + ")" : "";
  }

  /** The base to cut, if there is one. */
  public Optional<String> base() {
    return helix
        .order()
        .base()
        .map(
            base ->
                "Base, "
                    + (base.form() == BaseFrame.Form.SQUARE ? "a square" : "an octagon")
                    + ": "
                    + base.demand().count()
                    + " pieces `"
                    + base.demand().piece().id()
                    + "` ("
                    + base.demand().piece().name()
                    + "), all alike, "
                    + figures.weight(new Mass(plan.weightOf(base.demand().piece())))
                    + " each; together "
                    + figures.length(base.acrossFlats())
                    + " across, "
                    + figures.length(base.innerEdge().minus(base.rim()).times(2))
                    + " clear in the middle. They are on the cut layouts with everything else");
  }

  /** A line for each board or rod: what is cut from it and what is left. */
  public List<String> boards() {
    return plan.shopping().riserCutting().map(this::boards).orElse(List.of());
  }

  private List<String> boards(BoardCutting cutting) {
    List<String> lines = new ArrayList<>();
    int number = 0;
    for (BoardCutting.Board board : cutting.boards()) {
      number++;
      Map<String, List<BoardCutting.Cut>> alike = new LinkedHashMap<>();
      board
          .cuts()
          .forEach(cut -> alike.computeIfAbsent(cut.part(), p -> new ArrayList<>()).add(cut));
      String left = style.formatDown(board.left());
      lines.add(
          number
              + ": "
              + alike.values().stream().map(this::cuts).collect(Collectors.joining(", "))
              + "; "
              + (left.startsWith("0 ") ? "nothing left" : left + " left"));
    }
    return lines;
  }

  /** What the boards are. */
  public String boardsTitle() {
    BoardCutting cutting = plan.shopping().riserCutting().orElseThrow();
    return "Cutting list: "
        + cutting.boards().size()
        + " of "
        + cutting.stock().name()
        + each(cutting.stock())
        + (spec.supports().riser() instanceof Riser.WoodBlocks
            ? "; lengths include what the slope takes"
            : "");
  }

  /** Assumed stock has its length in its name. */
  private String each(StockBoard stock) {
    String length = figures.given(stock.length());
    return stock.name().endsWith(length) ? "" : ", " + length + " each";
  }

  private String cuts(List<BoardCutting.Cut> alike) {
    BoardCutting.Cut first = alike.get(0);
    String count = alike.size() == 1 ? "" : alike.size() + " x ";
    return count + first.part() + " " + figures.length(first.length());
  }

  private String bearing(double at) {
    Angle angle = plan.line().bearing(at);
    return figures.bearing(angle);
  }
}

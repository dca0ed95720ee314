package curvestock.job;

import curvestock.helix.spec.Adjustments;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.StockBoard;
import curvestock.helix.spec.SupportPlan;
import curvestock.helix.standard.RodThread;
import curvestock.helix.standard.SupportSpacing;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads {@code supports:} of a helix: blocks or rods, how many, and from what they are cut. */
final class SupportReader {

  private static final Map<String, RodThread> THREADS =
      RodThread.known().stream()
          .map(sourced -> sourced.value())
          .collect(Collectors.toUnmodifiableMap(RodThread::name, Function.identity()));

  private static final List<String> THREAD_NAMES =
      RodThread.known().stream().map(sourced -> sourced.value().name()).toList();

  private static final Length FOOT = Length.ofInches(2);
  private static final Length BLOCK_WIDTH = Length.ofInches(0.75);
  private static final Length BLOCK_ALONG = Length.ofInches(1.5);
  private static final Length ROD_FIT = Length.ofMillimetres(0.3);
  private static final Length ROD_ENDS = Length.ofMillimetres(20);
  private static final Length HACKSAW = Length.ofMillimetres(1);
  private static final int LEAST_PER_TURN = 3;
  private static final int MOST_PER_TURN = 200;
  private static final int LONGEST_NAME = 60;

  private final Assumed assumed;
  private final Length kerf;
  private final Optional<Length> cutBase;

  /**
   * @param kerf of the saw that cuts the sheets, which cuts the blocks too unless said otherwise
   * @param cutBase thickness of the base, if it is cut from the sheets
   */
  SupportReader(Assumed assumed, Length kerf, Optional<Length> cutBase) {
    this.assumed = assumed;
    this.kerf = kerf;
    this.cutBase = cutBase;
  }

  /**
   * @param run length of a turn along the roadbed's centre line
   * @param plywood all layers
   */
  Optional<SupportPlan> read(Block helix, Length run, Length plywood, Angle segment) {
    Optional<Field> field = helix.find("supports");
    Optional<Block> block =
        field.flatMap(
            given ->
                given.block(
                    "per-turn",
                    "first-at",
                    "skip",
                    "move",
                    "foot-height",
                    "bulge-share",
                    "blocks",
                    "rods"));
    int usual = usualPerTurn(run, plywood, segment);
    int perTurn =
        assumed.value(
            block,
            "per-turn",
            given -> given.whole(LEAST_PER_TURN, MOST_PER_TURN),
            "supports.per-turn",
            usual,
            Integer.toString(usual),
            "by the plywood's thickness, a multiple of the pieces per turn; " + Assumed.PRACTICE);
    Length foot =
        assumed.length(
            block,
            "foot-height",
            Lengths.GAP,
            "supports.foot-height",
            FOOT,
            "from the base up to the plywood");
    Optional<Length> first =
        block.flatMap(given -> given.find("first-at")).flatMap(Lengths.DISTANCE::read);
    double bulge =
        block
            .flatMap(given -> given.find("bulge-share"))
            .flatMap(given -> given.amount(1))
            .orElse(SupportPlan.USUAL_BULGE_SHARE);
    Optional<Riser> riser = riser(block.orElse(helix), block);
    Adjustments adjustments = adjustments(block);
    return block
        .orElse(helix)
        .build(
            () -> new SupportPlan(riser.orElseThrow(), perTurn, first, foot, bulge, adjustments));
  }

  private static Adjustments adjustments(Optional<Block> block) {
    List<String> skipped =
        block
            .flatMap(given -> given.find("skip"))
            .flatMap(field -> field.each("supports", 1, MOST_PER_TURN, SupportReader::skipped))
            .orElse(List.of());
    Map<String, Length> moved =
        block
            .flatMap(given -> given.find("move"))
            .flatMap(
                field -> field.each("supports to move", 1, MOST_PER_TURN, SupportReader::moved))
            .map(
                moves ->
                    moves.stream().collect(Collectors.toMap(Move::name, Move::by, Length::plus)))
            .orElse(Map.of());
    return new Adjustments(skipped, moved);
  }

  private static Optional<String> skipped(Field field) {
    Optional<String> name = field.line(LONGEST_NAME);
    if (name.isPresent() && !name.get().matches("[SEX][0-9]+( (inner|outer))?")) {
      field.note(
          "must be a support such as S12, \"S12 outer\" or \"S12 inner\", but was "
              + field.shown());
      return Optional.empty();
    }
    return name;
  }

  private record Move(String name, Length by) {}

  private static Optional<Move> moved(Field field) {
    return field
        .block("support", "by")
        .flatMap(
            block -> {
              Optional<String> name =
                  block.need("support", "support: S12").flatMap(text -> text.line(LONGEST_NAME));
              Optional<Length> by =
                  block.need("by", "by: -20 mm").flatMap(Lengths.COORDINATE::read);
              return block.build(() -> new Move(name.orElseThrow(), by.orElseThrow()));
            });
  }

  /** Close enough by the careful end of the table, in multiples of the pieces of a turn. */
  private static int usualPerTurn(Length run, Length plywood, Angle segment) {
    Length careful = SupportSpacing.forThickness(plywood).value().careful();
    int least = (int) Math.ceil(run.millimetres() / careful.millimetres() - 1e-9);
    double pieces = 360 / segment.degrees();
    int step = Math.abs(pieces - Math.rint(pieces)) < 1e-6 ? (int) Math.rint(pieces) : 1;
    int perTurn = (least + step - 1) / step * step;
    return Math.max(LEAST_PER_TURN, Math.min(MOST_PER_TURN, perTurn));
  }

  private Optional<Riser> riser(Block place, Optional<Block> block) {
    Optional<Field> blocks = block.flatMap(given -> given.find("blocks"));
    Optional<Field> rods = block.flatMap(given -> given.find("rods"));
    if (blocks.isPresent() && rods.isPresent()) {
      place.note("must have blocks or rods, but both are given");
      return Optional.empty();
    }
    if (rods.isPresent()) {
      return rods.get()
          .block(
              "thread", "inset", "fit", "washer", "end-allowance", "base", "ear", "kerf", "stock")
          .flatMap(this::rods);
    }
    if (blocks.isEmpty()) {
      assumed.note("supports", "wood blocks", "the most common, under the edges of the roadbed");
      return blocks(place, Optional.empty());
    }
    return blocks
        .get()
        .block("width", "along", "cross-piece", "kerf", "board", "from-sheets")
        .flatMap(given -> blocks(given, Optional.of(given)));
  }

  private Optional<Riser> blocks(Block place, Optional<Block> block) {
    String at = "supports.blocks.";
    Length width =
        assumed.length(block, "width", Lengths.SIZE, at + "width", BLOCK_WIDTH, "a board on edge");
    Length along =
        assumed.length(block, "along", Lengths.SIZE, at + "along", BLOCK_ALONG, Assumed.PRACTICE);
    Length cross =
        block
            .flatMap(given -> given.find("cross-piece"))
            .flatMap(Lengths.GAP::read)
            .orElse(Length.ZERO);
    boolean fromSheets =
        block.flatMap(given -> given.find("from-sheets")).flatMap(Field::flag).orElse(false);
    // Sheets are cut by their own kerf, which is given: nothing to assume.
    boolean known = fromSheets && block.flatMap(given -> given.find("kerf")).isEmpty();
    Length saw =
        known
            ? kerf
            : assumed.length(
                block, "kerf", Lengths.KERF, at + "kerf", kerf, "same as for the sheets");
    Optional<Field> board = block.flatMap(given -> given.find("board"));
    if (fromSheets && board.isPresent()) {
      board.get().note("is not needed for blocks that are cut from the sheets; leave one out");
    }
    Optional<StockBoard> stock =
        fromSheets
            ? Optional.empty()
            : board.isPresent() ? stock(board.get()) : Optional.of(usualBoard());
    return place.build(
        () -> new Riser.WoodBlocks(width, along, cross, saw, stock, assumed.imperial()));
  }

  private StockBoard usualBoard() {
    StockBoard board =
        assumed.imperial()
            ? new StockBoard("1x2 board, 8 ft", Length.ofInches(96), Optional.empty())
            : new StockBoard("board, 2.4 m", Length.ofMillimetres(2400), Optional.empty());
    assumed.note("supports.blocks.board", board.name(), "a common length");
    return board;
  }

  private Optional<Riser> rods(Block block) {
    String at = "supports.rods.";
    Optional<Block> given = Optional.of(block);
    String usual = assumed.imperial() ? "1/4-20" : "M8";
    RodThread thread =
        assumed.value(
            given,
            "thread",
            field -> field.choice(THREADS, THREAD_NAMES),
            at + "thread",
            THREADS.get(usual),
            usual,
            Assumed.PRACTICE);
    Optional<Riser.Ear> ear = block.find("ear").flatMap(SupportReader::ear);
    Length inset = Riser.ThreadedRods.usualInset(thread);
    Length hole =
        assumed.length(
            given,
            "inset",
            Lengths.COORDINATE,
            at + "inset",
            ear.isPresent() ? inset.times(-1) : inset,
            ear.isPresent() ? "outside the edge, on the ear" : "keeps the rod inside the edge");
    Length fit = assumed.length(given, "fit", Lengths.GAP, at + "fit", ROD_FIT, Assumed.PRACTICE);
    Length washer =
        assumed.length(
            given,
            "washer",
            Lengths.SIZE,
            at + "washer",
            thread.usualWasher().outer(),
            "outside diameter of the standard plain washer, " + thread.usualWasher().standard());
    Length ends =
        assumed.length(
            given,
            "end-allowance",
            Lengths.GAP,
            at + "end-allowance",
            ROD_ENDS,
            "both ends together");
    Length saw = assumed.length(given, "kerf", Lengths.KERF, at + "kerf", HACKSAW, "hacksaw");
    Length base =
        assumed.length(
            given,
            "base",
            Lengths.GAP,
            at + "base",
            cutBase.orElse(Riser.ThreadedRods.USUAL_BASE),
            cutBase.isPresent()
                ? "that of the sheets, since the base is cut from them"
                : Assumed.PRACTICE);
    StockBoard stock =
        block.find("stock").flatMap(this::stock).orElseGet(() -> usualRod(block, thread));
    return block.build(
        () -> new Riser.ThreadedRods(thread, hole, fit, washer, ends, ear, saw, stock, base));
  }

  private StockBoard usualRod(Block block, RodThread thread) {
    Length length = assumed.imperial() ? Length.ofInches(36) : Length.ofMillimetres(1000);
    StockBoard rod =
        new StockBoard(
            "threaded rod " + thread.name() + ", " + assumed.shown(length),
            length,
            Optional.empty());
    if (block.find("stock").isEmpty()) {
      assumed.note("supports.rods.stock", rod.name(), "a common length");
    }
    return rod;
  }

  private static Optional<Riser.Ear> ear(Field field) {
    return field
        .block("width", "reach")
        .flatMap(
            block -> {
              Optional<Length> width = block.need("width", "width: 30 mm").flatMap(Field::size);
              Optional<Length> reach = block.need("reach", "reach: 25 mm").flatMap(Field::size);
              return block.build(() -> new Riser.Ear(width.orElseThrow(), reach.orElseThrow()));
            });
  }

  private Optional<StockBoard> stock(Field field) {
    return field
        .block("name", "length", "price")
        .flatMap(
            block -> {
              Optional<String> name =
                  block.need("name", "name: 1x2 pine").flatMap(text -> text.line(LONGEST_NAME));
              Optional<Length> length = block.need("length", "length: 8 ft").flatMap(Field::size);
              Optional<Money> price = block.find("price").flatMap(Field::price);
              return block.build(
                  () -> new StockBoard(name.orElseThrow(), length.orElseThrow(), price));
            });
  }
}

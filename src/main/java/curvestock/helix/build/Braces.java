package curvestock.helix.build;

import curvestock.geometry.Point;
import curvestock.helix.build.BlockPlan.Block;
import curvestock.helix.build.EntryWay.Hit;
import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.build.SupportRow.Part;
import curvestock.helix.course.CentreLine;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser.WoodBlocks;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Diagonals for blocks so tall and thin that they would sway: across between the two of a pair, and
 * under a lead, whose posts stand in a row and not round a ring, along the lead as well.
 *
 * <p>One along a lead goes from the foot of a post to the top of the next, at both edges; that of a
 * post without a neighbour goes from its top down to the base, half its height away (common
 * practice, no source). One of the ring that stands without its pair is braced to the next of its
 * edge. None goes through the way of the trains that come in.
 */
public final class Braces {

  /** What a brace leaves of a board for its ends. */
  private static final Length BOARD_END = Length.ofInches(1);

  /** From a post's foot to its brace's, as a share of its height. */
  private static final double FOOT = 0.5;

  private static final int SAMPLES = 12;

  private final WoodBlocks wood;
  private final BlockPlan blocks;
  private final List<Block> slender;
  private final SupportTable table;
  private final CentreLine line;
  private final EntryWay way;
  private final double width;
  private final List<Brace> braces = new ArrayList<>();

  /**
   * One diagonal.
   *
   * @param row the post at its upper end
   * @param block that this post is
   * @param along whether along the track, or across
   * @param other the post at the foot of one along the track; empty if it stands on the base
   * @param length from corner to corner
   */
  public record Brace(
      SupportRow row, String block, boolean along, Optional<SupportRow> other, Length length) {

    /** As on cutting lists. */
    public String part() {
      return (along ? "along-track brace for " : "brace for ") + block;
    }

    /** Whether it holds that post, at its upper end or its foot. */
    public boolean holds(SupportRow post) {
      return row.equals(post) || other.filter(post::equals).isPresent();
    }
  }

  Braces(HelixSpec spec, WoodBlocks wood, SupportTable table) {
    this.wood = wood;
    this.blocks = table.blocks().orElseThrow();
    this.slender = blocks.slender();
    this.table = table;
    this.line = table.line();
    this.way = new EntryWay(spec, line);
    this.width = spec.ground().width().millimetres();
    slender.forEach(this::addAcross);
    addAlong(Part.ENTRY);
    addAlong(Part.EXIT);
    addAlone();
  }

  private void addAcross(Block block) {
    for (SupportRow row : block.rows()) {
      if (row.edges() == Edges.BOTH) {
        add(row, block, false, Optional.empty(), width);
      }
    }
  }

  private void addAlong(Part lead) {
    List<SupportRow> rows = standing(lead);
    for (int i = 0; i < rows.size(); i++) {
      SupportRow row = rows.get(i);
      if (row.part() != lead || !isSlender(row)) {
        continue;
      }
      for (boolean outer : new boolean[] {true, false}) {
        if (isHeld(row, outer)) {
          addAlong(rows, i, blocks.blockUnder(row).orElseThrow(), outer);
        }
      }
    }
  }

  /** One of the ring whose other edge's is left out has the next of its edge to lean on. */
  private void addAlone() {
    List<SupportRow> rows = table.of(Part.RING).stream().filter(SupportRow::standsOnBase).toList();
    for (int i = 0; i < rows.size(); i++) {
      SupportRow row = rows.get(i);
      boolean outer = row.edges() == Edges.OUTER;
      if ((outer || row.edges() == Edges.INNER) && isSlender(row)) {
        int index = i;
        Block block = blocks.blockUnder(row).orElseThrow();
        neighbour(rows, index, -1, outer)
            .or(() -> neighbour(rows, index, 1, outer))
            .ifPresent(next -> addBetween(row, next, block, outer));
      }
    }
  }

  private void addBetween(SupportRow row, SupportRow next, Block block, boolean outer) {
    double away = at(row.at(), outer).distance(at(next.at(), outer));
    add(row, block, true, Optional.of(next), away);
  }

  /**
   * To the next one up the line or, where there is none or trains pass between, down the line,
   * unless that one has its brace to this.
   */
  private void addAlong(List<SupportRow> rows, int index, Block block, boolean outer) {
    SupportRow row = rows.get(index);
    Optional<SupportRow> before = neighbour(rows, index, -1, outer);
    Optional<SupportRow> next = neighbour(rows, index, 1, outer).or(() -> before);
    if (next.isPresent()) {
      boolean has = next.equals(before) && before.filter(this::isSlender).isPresent();
      if (has) {
        return;
      }
      addBetween(row, next.get(), block, outer);
      return;
    }
    double foot = block.height().millimetres() * FOOT;
    double outwards = row.part() == Part.ENTRY ? -foot : foot;
    if (isFree(row.at(), row.at() + outwards, outer)) {
      add(row, block, true, Optional.empty(), foot);
    }
  }

  private boolean isSlender(SupportRow row) {
    return slender.stream().anyMatch(block -> block.rows().contains(row));
  }

  private Optional<SupportRow> neighbour(
      List<SupportRow> rows, int index, int step, boolean outer) {
    int other = index + step;
    return other < 0 || other >= rows.size()
        ? Optional.empty()
        : Optional.of(rows.get(other))
            .filter(row -> isHeld(row, outer))
            .filter(row -> isFree(rows.get(index).at(), row.at(), outer));
  }

  /** On the base under a lead, and next to the entry's the first of the ring. */
  private List<SupportRow> standing(Part lead) {
    List<SupportRow> rows =
        new ArrayList<>(table.of(lead).stream().filter(SupportRow::standsOnBase).toList());
    if (lead == Part.ENTRY) {
      table.of(Part.RING).stream()
          .filter(SupportRow::standsOnBase)
          .findFirst()
          .ifPresent(rows::add);
    }
    return rows;
  }

  private static boolean isHeld(SupportRow row, boolean outer) {
    return outer ? row.edges().atOuter() : row.edges().atInner();
  }

  /** Under the entry's own lead nothing passes; under the exit's trains may. */
  private boolean isFree(double from, double to, boolean outer) {
    for (int i = 0; i <= SAMPLES; i++) {
      double at = from + (to - from) * i / SAMPLES;
      boolean under = at < 0;
      if (!under && from > 0 && way.hit(at, side(outer)) != Hit.NONE) {
        return false;
      }
    }
    return true;
  }

  private double side(boolean outer) {
    return outer ? way.offset() : -way.offset();
  }

  private Point at(double along, boolean outer) {
    return line.at(along).toLeft(-line.inwards() * side(outer));
  }

  private void add(
      SupportRow row, Block block, boolean along, Optional<SupportRow> other, double away) {
    double diagonal = Math.hypot(away, block.height().millimetres());
    double most =
        wood.stock().map(stock -> stock.length().minus(BOARD_END).millimetres()).orElse(diagonal);
    Length length = Length.ofMillimetres(Math.min(diagonal, most));
    braces.add(new Brace(row, block.id(), along, other, length));
  }

  /** Those across by block, then those along the leads. */
  public List<Brace> all() {
    return List.copyOf(braces);
  }

  /** Those whose upper end is there. */
  public List<Brace> of(SupportRow row) {
    return braces.stream().filter(brace -> brace.row().equals(row)).toList();
  }

  /** Lengths to cut from boards. */
  public List<BoardCutting.Cut> cuts() {
    return braces.stream()
        .map(brace -> new BoardCutting.Cut(brace.part(), brace.length()))
        .toList();
  }
}

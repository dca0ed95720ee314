package curvestock.helix.build;

import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.spec.Riser.WoodBlocks;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Riser blocks to cut: those that stand on the base grow with the climb, those between turns are
 * alike wherever the grade is steady.
 */
public final class BlockPlan {

  /** Blocks within a twentieth of a millimetre are cut alike. */
  private static final double ALIKE = 0.05;

  /** Ends that differ by less, rise over run, are sawn with one setting. */
  private static final double SAME_SLOPE = 0.005;

  /** A post so many times as tall as it is wide wants a brace: our own choice. */
  private static final double SLENDER = 20;

  private final WoodBlocks riser;
  private final List<Group> groups = new ArrayList<>();
  private final List<Block> blocks;
  private final List<SupportRow> withoutRoom = new ArrayList<>();

  /**
   * Blocks cut alike.
   *
   * @param id {@code block-1} and so on, by height; as on the cut layouts where they are cut from
   *     the sheets
   * @param height at the middle
   * @param slope of the upper end, rise over run
   * @param lowerSlope of the lower end: none on the base, else that of the turn below
   * @param longSide what the saw's stop is set to: half of what the ends differ in slope above the
   *     height, so where they are parallel the height
   * @param stockLength of a rectangle that it can be cut from: the height and what the sloping ends
   *     need
   * @param between thickness of what lies between the roadbed and the block
   * @param onBase whether it stands on the base
   * @param rows where they stand
   * @param count how many
   */
  public record Block(
      String id,
      Length height,
      double slope,
      double lowerSlope,
      Length longSide,
      Length stockLength,
      Length between,
      boolean onBase,
      List<SupportRow> rows,
      int count) {
    public Block {
      rows = List.copyOf(rows);
    }

    /** Whether its ends slope so differently that two settings of the saw are needed. */
    public boolean isUneven() {
      return !onBase && Math.abs(slope - lowerSlope) > SAME_SLOPE;
    }
  }

  private record Group(
      Length height, double slope, double lowerSlope, Length between, List<SupportRow> rows) {
    boolean onBase() {
      return rows.get(0).standsOnBase();
    }

    boolean takes(Group other, Length along) {
      return onBase() == other.onBase()
          && near(height, other.height)
          && near(along.times(slope), along.times(other.slope))
          && near(along.times(lowerSlope), along.times(other.lowerSlope))
          && near(between, other.between);
    }

    Block block(int number, Length along) {
      return new Block(
          "block-" + number,
          height,
          slope,
          lowerSlope,
          height.plus(along.times(Math.abs(slope - lowerSlope) / 2)),
          height.plus(along.times((slope + lowerSlope) / 2)),
          between,
          onBase(),
          rows,
          rows.stream().mapToInt(row -> row.edges().supports()).sum());
    }
  }

  BlockPlan(WoodBlocks riser, SupportTable table) {
    this.riser = riser;
    Map<Station, Double> slopes = new HashMap<>();
    for (SupportRow row : table.rows()) {
      Double before = slopes.put(row.station(), row.slope());
      Length height = heightUnder(row);
      if (height.millimetres() > ALIKE) {
        double lower = row.standsOnBase() || before == null ? 0 : before;
        add(new Group(height, row.slope(), lower, between(row), new ArrayList<>(List.of(row))));
      } else {
        withoutRoom.add(row);
      }
    }
    groups.sort(
        Comparator.comparing((Group group) -> !group.onBase()).thenComparing(Group::height));
    blocks =
        IntStream.range(0, groups.size())
            .mapToObj(i -> groups.get(i).block(i + 1, riser.along()))
            .toList();
  }

  /** From what a block stands on to what lies on it. */
  public Length heightUnder(SupportRow row) {
    return row.gap().minus(between(row));
  }

  /**
   * Under the plywood a splice plate, if one reaches there, then a cross piece, if the job has
   * them. One block at an edge alone carries no cross piece.
   */
  private Length between(SupportRow row) {
    return takesCrossPiece(row) ? row.plate().plus(riser.crossPiece()) : row.plate();
  }

  private static boolean takesCrossPiece(SupportRow row) {
    return row.edges() == Edges.BOTH || row.edges() == Edges.MIDDLE;
  }

  private void add(Group one) {
    groups.stream()
        .filter(group -> group.takes(one, riser.along()))
        .findFirst()
        .ifPresentOrElse(group -> group.rows().addAll(one.rows()), () -> groups.add(one));
  }

  private static boolean near(Length a, Length b) {
    return Math.abs(a.minus(b).millimetres()) < ALIKE;
  }

  /** Those on the base by height, then those between turns. */
  public List<Block> blocks() {
    return blocks;
  }

  /** The block under the roadbed there, if there is one. */
  public Optional<Block> blockUnder(SupportRow row) {
    return blocks.stream().filter(block -> block.rows().contains(row)).findFirst();
  }

  /** Stations where no block is needed or none has room, because the roadbed lies on the base. */
  public List<SupportRow> withoutRoom() {
    return List.copyOf(withoutRoom);
  }

  /** All blocks. */
  public int count() {
    return blocks.stream().mapToInt(Block::count).sum();
  }

  /** A cross piece at each place, if the job has them, but where one edge alone is held. */
  public int crossPieces() {
    return riser.crossPiece().millimetres() > 0
        ? (int)
            blocks.stream()
                .flatMap(block -> block.rows().stream())
                .filter(BlockPlan::takesCrossPiece)
                .count()
        : 0;
  }

  /** Blocks so tall and thin that they want a brace. */
  public List<Block> slender() {
    return blocks.stream()
        .filter(block -> block.height().compareTo(riser.width().times(SLENDER)) > 0)
        .toList();
  }

  /** Lengths to cut from boards, one for each block. */
  public List<BoardCutting.Cut> cuts() {
    List<BoardCutting.Cut> cuts = new ArrayList<>();
    for (Block block : blocks) {
      for (int i = 0; i < block.count(); i++) {
        cuts.add(new BoardCutting.Cut(block.id(), block.longSide()));
      }
    }
    return cuts;
  }
}

package curvestock.helix.build;

import curvestock.helix.spec.Riser.WoodBlocks;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Riser blocks to cut: those that stand on the base grow with the climb, those between turns are
 * alike wherever the grade is steady.
 */
public final class BlockPlan {

  /** Blocks within a twentieth of a millimetre are cut alike. */
  private static final double ALIKE = 0.05;

  private final List<Block> blocks = new ArrayList<>();
  private final List<SupportRow> withoutRoom = new ArrayList<>();

  /**
   * Blocks cut alike.
   *
   * @param height at the middle
   * @param slopeCut how much the longer side is above the shorter, at an end cut to the incline
   * @param stockLength what it takes of the board: the height and what the sloping ends need
   * @param onBase whether it stands on the base, with a square lower end; else both ends slope
   *     alike
   * @param count how many
   */
  public record Block(
      Length height, Length slopeCut, Length stockLength, boolean onBase, int count) {}

  public BlockPlan(WoodBlocks riser, SupportTable table) {
    for (SupportRow row : table.rows()) {
      Length height = row.gap().minus(riser.crossPiece());
      if (height.millimetres() > ALIKE) {
        add(riser, row, height);
      } else {
        withoutRoom.add(row);
      }
    }
    blocks.sort(
        Comparator.comparing((Block block) -> !block.onBase()).thenComparing(Block::height));
  }

  private void add(WoodBlocks riser, SupportRow row, Length height) {
    Length slopeCut = riser.along().times(row.slope());
    boolean first = row.standsOnBase();
    int more = row.edges().supports();
    for (int i = 0; i < blocks.size(); i++) {
      Block block = blocks.get(i);
      if (block.onBase() == first
          && near(block.height(), height)
          && near(block.slopeCut(), slopeCut)) {
        blocks.set(
            i,
            new Block(
                block.height(),
                block.slopeCut(),
                block.stockLength(),
                first,
                block.count() + more));
        return;
      }
    }
    Length stock = height.plus(slopeCut.times(first ? 0.5 : 1));
    blocks.add(new Block(height, slopeCut, stock, first, more));
  }

  private static boolean near(Length a, Length b) {
    return Math.abs(a.minus(b).millimetres()) < ALIKE;
  }

  /** Those on the base by height, then those between turns. */
  public List<Block> blocks() {
    return List.copyOf(blocks);
  }

  /** Stations where no block is needed or none has room, because the roadbed lies on the base. */
  public List<SupportRow> withoutRoom() {
    return List.copyOf(withoutRoom);
  }

  /** All blocks. */
  public int count() {
    return blocks.stream().mapToInt(Block::count).sum();
  }

  /** Lengths to cut from boards, one for each block. */
  public List<Length> cuts() {
    List<Length> cuts = new ArrayList<>();
    for (Block block : blocks) {
      for (int i = 0; i < block.count(); i++) {
        cuts.add(block.stockLength());
      }
    }
    return cuts;
  }
}

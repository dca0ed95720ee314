package curvestock.packing;

import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Packings as texts for a {@link PackedStore}, and the keys to them. Numbers are written so that
 * they come back to the last bit: a packing found in the store is the one that was put there.
 */
final class PackedText {

  private PackedText() {}

  /**
   * All that a packing follows from: sheet, cutting, settings, pieces. Names and prices are not
   * part of it.
   *
   * @param task what is asked, in a word
   * @param beside what else the answer follows from
   */
  static String key(
      SheetStock sheet,
      Cutting cutting,
      SearchSettings settings,
      String task,
      List<Demand> wanted,
      String beside) {
    StringBuilder key = new StringBuilder(task).append('\n');
    outline(key, sheet.outline());
    sheet.defects().forEach(defect -> outline(key.append("defect "), defect));
    key.append("grain ").append(sheet.grain().radians()).append('\n');
    key.append("spacing ").append(cutting.spacing().millimetres()).append('\n');
    key.append("margin ").append(cutting.margin().millimetres()).append('\n');
    key.append("seed ").append(settings.seed()).append(' ').append(settings.effort()).append('\n');
    for (Demand demand : wanted) {
      Piece piece = demand.piece();
      key.append(demand.count()).append(' ');
      key.append(piece.shape().blank().getClass().getSimpleName()).append(' ');
      key.append(piece.grain().direction().radians()).append(' ');
      key.append(piece.grain().within().radians()).append(' ');
      // Pieces are laid largest first, by the wood that is left of them once they are drilled.
      key.append(piece.shape().area()).append(' ');
      outline(key, piece.shape().blank().outline());
    }
    return key.append(beside).toString();
  }

  private static void outline(StringBuilder key, Outline outline) {
    // Edges print their doubles so that they can be read back exactly.
    key.append(outline.edges()).append('\n');
  }

  /**
   * The packing as a text.
   *
   * @param pieces all kinds that may lie in it
   */
  static String of(Packed packed, List<Piece> pieces) {
    StringBuilder text = new StringBuilder(packed.how()).append('\n');
    text.append(poses(packed.layout(), pieces));
    return text.toString();
  }

  /** Where the pieces lie, a line each. */
  static String poses(Layout layout, List<Piece> pieces) {
    StringBuilder text = new StringBuilder();
    for (Placement placement : layout.placements()) {
      Pose pose = placement.pose();
      text.append(pieces.indexOf(placement.piece())).append(' ');
      text.append(pose.x()).append(' ').append(pose.y()).append(' ');
      text.append(pose.rotation()).append('\n');
    }
    return text.toString();
  }

  /** The packing that a text tells of; nothing if it is none of these pieces, or broken. */
  static Optional<Packed> read(String text, SheetStock sheet, Cutting cutting, List<Piece> pieces) {
    List<String> lines = text.lines().toList();
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    List<Placement> placements = new ArrayList<>();
    try {
      for (String line : lines.subList(1, lines.size())) {
        String[] parts = line.split(" ", -1);
        Piece piece = pieces.get(Integer.parseInt(parts[0]));
        Pose pose =
            new Pose(
                Double.parseDouble(parts[1]),
                Double.parseDouble(parts[2]),
                Double.parseDouble(parts[3]));
        placements.add(new Placement(piece, pose));
      }
    } catch (NumberFormatException | IndexOutOfBoundsException broken) {
      return Optional.empty();
    }
    return Optional.of(new Packed(new Layout(sheet, cutting, placements), lines.get(0)));
  }
}

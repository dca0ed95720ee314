package curvestock.check;

import curvestock.geometry.Point;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a DXF file holds that can be judged, in millimetres.
 *
 * @param form how its outlines differ from the finished size, if it says so
 * @param unitSaid whether it says its unit; else the one given to the reader was taken
 * @param sheet the lines of the layer of the sheet, in the order of the file
 * @param cuts the lines of the layer of cuts
 * @param marks the lines and texts of all other layers
 * @param drilled the circles of the layers of holes
 * @param pockets the lines of the layers of areas to be cleared
 * @param notes the pieces that the file lists at its head; empty if it lists none
 * @param oddities what makes the geometry uncertain
 */
record DxfFile(
    Optional<CutForm> form,
    boolean unitSaid,
    List<Chain> sheet,
    List<Chain> cuts,
    List<Mark> marks,
    List<Hole> drilled,
    List<Cleared> pockets,
    List<Note> notes,
    List<Finding> oddities) {

  DxfFile {
    sheet = List.copyOf(sheet);
    cuts = List.copyOf(cuts);
    marks = List.copyOf(marks);
    drilled = List.copyOf(drilled);
    pockets = List.copyOf(pockets);
    notes = List.copyOf(notes);
    oddities = List.copyOf(oddities);
  }

  /** A hole, and its diameter in millimetres as the layer's name says it. */
  record Hole(Chain rim, OptionalDouble diameter) {}

  /** An area, and its depth in millimetres as the layer's name says it. */
  record Cleared(boolean fromAbove, OptionalDouble depth, Chain edge) {}

  /**
   * A piece as the file lists it.
   *
   * @param number of the piece
   * @param id of its kind
   * @param at a point of its outline
   */
  record Note(int number, String id, Point at) {

    String name() {
      return "piece-" + number;
    }
  }
}

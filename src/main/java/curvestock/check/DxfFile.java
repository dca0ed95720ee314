package curvestock.check;

import curvestock.geometry.Point;
import java.util.List;
import java.util.Optional;

/**
 * What a DXF file holds that can be judged, in millimetres.
 *
 * @param form how its outlines differ from the finished size, if it says so
 * @param unitSaid whether it says its unit; else the one given to the reader was taken
 * @param sheet the lines of the layer of the sheet, in the order of the file
 * @param cuts the lines of the layer of cuts
 * @param marks the lines and texts of all other layers
 * @param notes the pieces that the file lists at its head; empty if it lists none
 * @param oddities what makes the geometry uncertain
 */
record DxfFile(
    Optional<CutForm> form,
    boolean unitSaid,
    List<Chain> sheet,
    List<Chain> cuts,
    List<Mark> marks,
    List<Note> notes,
    List<Finding> oddities) {

  DxfFile {
    sheet = List.copyOf(sheet);
    cuts = List.copyOf(cuts);
    marks = List.copyOf(marks);
    notes = List.copyOf(notes);
    oddities = List.copyOf(oddities);
  }

  /**
   * A piece as the file lists it.
   *
   * @param number of the piece
   * @param id of its kind
   * @param at a point of its outline
   */
  record Note(int number, String id, Point at) {

    String name() {
      return "piece " + number;
    }
  }
}

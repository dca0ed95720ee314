package curvestock.printing;

import curvestock.drawing.Paper;
import java.util.List;

/**
 * A piece at full size, to be glued on the wood or pricked through.
 *
 * @param id of the piece
 * @param title names the piece
 * @param count of pieces cut by it
 * @param notes what a person must know, a paragraph each
 * @param drawing in millimetres
 */
record PaperTemplate(String id, String title, int count, List<String> notes, Paper drawing) {
  PaperTemplate {
    notes = List.copyOf(notes);
  }
}

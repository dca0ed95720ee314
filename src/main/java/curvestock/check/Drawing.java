package curvestock.check;

import curvestock.sheet.SheetStock;
import java.util.List;
import java.util.Optional;

/** A drawing that has been read, SVG or DXF, in the frame of the sheet. */
interface Drawing {

  /**
   * Reads the text of a file.
   *
   * @param sheet what it is expected to show, by which a file that says no unit is understood
   * @throws CheckException if it is not a drawing that can be judged
   */
  static Drawing read(String text, SheetStock sheet) throws CheckException {
    return text.stripLeading().startsWith("<") || text.startsWith("\uFEFF")
        ? SvgSheet.read(text, sheet)
        : DxfSheet.read(text, sheet);
  }

  DrawingKind kind();

  /** How outlines differ from the finished size, if the drawing says so. */
  Optional<CutForm> form();

  /** What is odd about the file as a whole. */
  List<Finding> oddities();

  /** What may be the sheet's edge; one of them must be. */
  List<Lines> sheetEdges();

  /** The outlines to be cut; what cannot be one is noted, and what the file lists but has not. */
  List<Cut> cuts(CutForm form, Findings findings);

  /** All lines that are cut, as they are drawn; those that cannot be read are left out. */
  List<Chain> cutLines();

  /** What is not cut. */
  List<Mark> marks();

  /** The areas to be cleared. */
  List<DrawnPocket> pockets();

  /** All holes to be drilled. */
  List<Chain> drilled();

  /** Whether it shows the underside of a sheet, mirrored, and no outlines. */
  boolean isUnderside();

  /** Lines as drawn. */
  interface Lines {
    List<Chain> chains() throws CheckException;
  }

  /**
   * One piece as drawn.
   *
   * @param name what it is called in messages
   * @param piece the id of its kind, if the drawing says it
   * @param drilled its holes that are drilled, which have the finished size
   * @param doubled whether a line of it is drawn more than once
   */
  record Cut(
      String name, Optional<String> piece, Lines lines, List<Chain> drilled, boolean doubled) {

    /** Copies the holes. */
    public Cut {
      drilled = List.copyOf(drilled);
    }
  }
}

package curvestock.check;

import java.util.List;
import java.util.Optional;

/**
 * What a drawing's XML holds, before its geometry is read.
 *
 * @param width the {@code width} attribute, as written
 * @param height the {@code height} attribute, as written
 * @param viewBox the {@code viewBox} attribute, as written
 * @param sheetEdge the path data of the sheet's edge, if drawn
 * @param form how the outlines differ from the finished size, as the group {@code cut} says in
 *     {@code data-form}; empty if it says nothing
 * @param outlines the outlines of the group {@code cut}
 * @param others all other paths
 * @param texts the texts of the group {@code label}
 * @param drilled the holes of the group {@code drill}
 * @param pockets the areas of the groups {@code pocket-top} and {@code pocket-bottom}
 * @param isUnderside whether it shows a sheet from below: it has areas there, and no outlines
 * @param remnant what is kept of the sheet, if drawn
 * @param oddities things that make the geometry uncertain
 */
record DrawingFile(
    String width,
    String height,
    String viewBox,
    Optional<String> sheetEdge,
    String form,
    List<OutlinePath> outlines,
    List<OtherPath> others,
    List<Written> texts,
    List<HolePath> drilled,
    List<PocketPath> pockets,
    boolean isUnderside,
    Optional<Rectangle> remnant,
    List<Finding> oddities) {

  DrawingFile {
    outlines = List.copyOf(outlines);
    others = List.copyOf(others);
    texts = List.copyOf(texts);
    drilled = List.copyOf(drilled);
    pockets = List.copyOf(pockets);
    oddities = List.copyOf(oddities);
  }

  /**
   * A piece of the group {@code cut}.
   *
   * @param name the id of its path, or its line in the file if it has none
   * @param piece the id of its piece, from {@code data-piece}
   * @param data the path data, and that of the paths of its holes ({@code data-hole-of})
   */
  record OutlinePath(String name, String piece, List<String> data) {

    OutlinePath {
      data = List.copyOf(data);
    }
  }

  /**
   * A hole to be drilled.
   *
   * @param owner the id of its piece's outline, from {@code data-hole-of}; empty if it is in none
   * @param diameter from {@code data-diameter}, as written
   */
  record HolePath(String owner, String diameter, String data) {}

  /**
   * An area to be cleared.
   *
   * @param depth from {@code data-depth}, as written
   */
  record PocketPath(String name, boolean fromAbove, String depth, String data) {}

  /**
   * A path that is not cut.
   *
   * @param group the operation whose group it is in; empty if it is in none
   */
  record OtherPath(String group, String data) {}

  /**
   * A text, in the file's own axes (y down).
   *
   * @param size of the font; 0 if it is not given as an attribute
   * @param centred whether x is its middle
   * @param bold whether it is in bold letters, as the numbers of pieces are on drawings for people
   */
  record Written(double x, double y, double size, boolean centred, boolean bold) {}

  /** A rectangle in the file's own axes. */
  record Rectangle(double x, double y, double width, double height) {}
}

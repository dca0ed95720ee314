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
 * @param outlines the paths of the group {@code cut}
 * @param oddities things that make the geometry uncertain
 */
record DrawingFile(
    String width,
    String height,
    String viewBox,
    Optional<String> sheetEdge,
    List<OutlinePath> outlines,
    List<Finding> oddities) {

  DrawingFile {
    outlines = List.copyOf(outlines);
    oddities = List.copyOf(oddities);
  }

  /**
   * A path of the group {@code cut}.
   *
   * @param name its id, or its line in the file if it has none
   * @param piece the id of its piece, from {@code data-piece}
   * @param data the path data
   */
  record OutlinePath(String name, String piece, String data) {}
}

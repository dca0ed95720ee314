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
 * @param oddities things that make the geometry uncertain
 */
record DrawingFile(
    String width,
    String height,
    String viewBox,
    Optional<String> sheetEdge,
    String form,
    List<OutlinePath> outlines,
    List<Finding> oddities) {

  DrawingFile {
    outlines = List.copyOf(outlines);
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
}

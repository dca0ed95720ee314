package curvestock.drawing;

import curvestock.geometry.Box;
import curvestock.helix.build.RoadbedMark;
import curvestock.units.LengthStyle;
import java.util.List;
import java.util.Optional;

/**
 * What the title block of a sheet says beyond the layout itself.
 *
 * @param job title of the job
 * @param sheet number of this sheet, from 1
 * @param sheets how many sheets the job has
 * @param style how lengths are printed
 * @param material what the sheet is made of, for example {@code birch plywood}; may be empty
 * @param invented whether the job's figures are invented, which is then said on the drawing
 * @param labels what is written in each piece, in the layout's order; empty for 1, 2, 3 ...
 * @param remnant the rectangle left over, in the sheet's frame; empty if there is none to keep
 * @param machine a sentence on the size of the outlines in the files for machines; may be empty
 * @param notes what is written below each piece's number instead of its name, in the layout's
 *     order; empty for the names
 * @param marks what is drawn on each piece beside its centre line, in the layout's order and the
 *     pieces' own frames; empty for nothing
 */
public record SheetTitle(
    String job,
    int sheet,
    int sheets,
    LengthStyle style,
    String material,
    boolean invented,
    List<String> labels,
    Optional<Box> remnant,
    String machine,
    List<String> notes,
    List<List<RoadbedMark>> marks) {

  /** What every paper of a job with made-up data says of it. */
  public static final String INVENTED_NOTE =
      "Example job: its sizes and prices are invented, for demonstration only.";

  /** A sheet of which nothing worth keeping is left, without a word on files for machines. */
  public SheetTitle(
      String job,
      int sheet,
      int sheets,
      LengthStyle style,
      String material,
      boolean invented,
      List<String> labels) {
    this(
        job,
        sheet,
        sheets,
        style,
        material,
        invented,
        labels,
        Optional.empty(),
        "",
        List.of(),
        List.of());
  }

  /**
   * @throws IllegalArgumentException if the sheet's number is not within 1 to {@code sheets}
   */
  public SheetTitle {
    labels = List.copyOf(labels);
    notes = List.copyOf(notes);
    marks = marks.stream().map(List::copyOf).toList();
    if (sheet < 1 || sheet > sheets) {
      throw new IllegalArgumentException(
          "sheet number must be within 1 to " + sheets + ", but was " + sheet);
    }
  }

  /** The same title for a sheet of which that rectangle is left. */
  public SheetTitle with(Optional<Box> left) {
    return new SheetTitle(
        job, sheet, sheets, style, material, invented, labels, left, machine, notes, marks);
  }
}

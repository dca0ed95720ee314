package curvestock.machine;

import curvestock.geometry.Box;
import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A small file to cut first from an offcut: a square of 100 mm, a square of 4 in, and one joint:
 * two short ends of the roadbed, and the splice plate if the job has one.
 *
 * @param layout the pieces in a row
 * @param names what is engraved on each
 */
public record TestCut(Layout layout, List<String> names) {

  /** Between pieces, and to the offcut's edge, beyond what the job asks for. */
  private static final double AIR = 8;

  /** Length of a roadbed end along its centre line, in millimetres. */
  private static final double END = 120;

  private static final double LARGEST_SWEEP = Math.PI / 2;

  /** Copies the names. */
  public TestCut {
    names = List.copyOf(names);
  }

  /**
   * The test cut of a job.
   *
   * @param wood whose thickness the offcut has
   * @param roadbed a piece of it, whose radius and width the ends get; empty for no joint
   * @param plate cut as it is, if joints have one
   */
  public static TestCut of(
      SheetStock wood, Cutting cutting, Optional<AnnularSector> roadbed, Optional<Piece> plate) {
    List<Piece> pieces = new ArrayList<>();
    List<String> names = new ArrayList<>();
    pieces.add(square("MM100", "square of 100 mm", Length.ofMillimetres(100)));
    names.add("100 MM");
    pieces.add(square("IN4", "square of 4 in", Length.ofInches(4)));
    names.add("4 IN");
    if (roadbed.isPresent()) {
      Piece end = Piece.of("END", "end of the roadbed", shortened(roadbed.get()));
      pieces.add(end);
      pieces.add(end);
      names.addAll(List.of("END 1", "END 2"));
      plate.ifPresent(
          piece -> {
            pieces.add(piece);
            names.add("PLATE");
          });
    }
    return new TestCut(row(wood, cutting, pieces), names);
  }

  private static Piece square(String id, String name, Length side) {
    return Piece.of(id, name, new Strip(side, side));
  }

  private static AnnularSector shortened(AnnularSector roadbed) {
    double sweep = Math.min(LARGEST_SWEEP, END / roadbed.radius().millimetres());
    return new AnnularSector(roadbed.radius(), roadbed.width(), Angle.ofRadians(sweep));
  }

  private static Layout row(SheetStock wood, Cutting cutting, List<Piece> pieces) {
    double margin = cutting.margin().millimetres() + AIR;
    double gap = cutting.spacing().millimetres() + AIR;
    List<Placement> placements = new ArrayList<>();
    double x = margin;
    double height = 0;
    for (Piece piece : pieces) {
      Box box = piece.shape().outline().box();
      placements.add(new Placement(piece, new Pose(x - box.minX(), margin - box.minY(), 0)));
      x += box.width() + gap;
      height = Math.max(height, box.height());
    }
    SheetStock offcut =
        SheetStock.rectangle(
            "offcut for the test cut",
            Length.ofMillimetres(Math.ceil(x - gap + margin)),
            Length.ofMillimetres(Math.ceil(height + 2 * margin)),
            wood.thickness(),
            Money.ZERO);
    return new Layout(offcut, cutting, placements);
  }

  /** What there is to do with it, a sentence or two each. */
  public List<String> words(String lengthByWidth) {
    List<String> words = new ArrayList<>();
    words.add(
        "Cut it from an offcut of " + lengthByWidth + " or more, with the settings of the job.");
    words.add(
        "Before cutting: in the machine's program the squares must measure 100 mm and 4 in"
            + " (101.6 mm). If not, the unit was misread: mend the import, not the file.");
    words.add(
        "After cutting, measure both squares with a caliper, both ways. Both too small or too large"
            + " by the same amount: the kerf is set wrong; a piece too small by 0.2 mm was cut with a"
            + " kerf 0.2 mm wider than set. Too small in proportion, or in one direction only: the"
            + " machine's axis is off.");
    words.add(
        "Measure the diagonals: 141.4 mm (5.568 in) and 143.7 mm (5.657 in). Unlike diagonals: the"
            + " machine is out of square.");
    words.add("The numbers must read the right way round: mirrored letters mean a mirrored file.");
    if (layout.placements().size() > 2) {
      words.add(
          "Lay END 1 and END 2 face to face: the edges must run on without a step, the faces meet"
              + " without a gap at either side. Try the joint as it will be built.");
    }
    return words;
  }
}

package curvestock.machine;

import curvestock.geometry.Box;
import curvestock.geometry.Pose;
import curvestock.helix.build.HalfLaps;
import curvestock.helix.build.Lap;
import curvestock.helix.build.LapEnd;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup.Bed;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A small file to cut first from a scrap: a square of 100 mm, a square of 4 in, and one joint at
 * full size: two short ends of the roadbed with their half-laps, or with the splice plate if the
 * job has one. It fits the machine's bed; if the bed is too small for all of it, the plate is left
 * out first, then the joint.
 *
 * @param layout the pieces in rows
 * @param names what is engraved on each
 * @param laps of each piece, in its own frame
 */
public record TestCut(Layout layout, List<String> names, List<List<Lap>> laps) {

  /** Between pieces, and to the offcut's edge, beyond what the job asks for. */
  private static final double AIR = 8;

  /** Length of a roadbed end along its centre line without its lap, in millimetres. */
  private static final double END = 120;

  private static final double LARGEST_SWEEP = Math.PI / 2;

  /** Copies the names. */
  public TestCut {
    names = List.copyOf(names);
    laps = laps.stream().map(List::copyOf).toList();
  }

  /**
   * A joint to try.
   *
   * @param roadbed a piece of it, whose radius and width the ends get; empty for no joint
   * @param plate cut as it is, if joints have one
   * @param lap length of a half-lap, if joints have one
   */
  public record Joint(
      Optional<AnnularSector> roadbed, Optional<Piece> plate, Optional<Length> lap) {}

  /** A piece of the test cut. */
  private record Part(Piece piece, String name, List<Lap> laps) {}

  /**
   * The test cut of a job.
   *
   * @param wood whose thickness the offcut has
   */
  public static TestCut of(SheetStock wood, Cutting cutting, Joint joint, MachineSetup setup) {
    List<Part> squares =
        List.of(
            new Part(
                square("MM100", "square of 100 mm", Length.ofMillimetres(100)),
                "100 MM",
                List.of()),
            new Part(square("IN4", "square of 4 in", Length.ofInches(4)), "4 IN", List.of()));
    List<Part> withEnds = new ArrayList<>(squares);
    joint.roadbed().ifPresent(roadbed -> withEnds.addAll(ends(roadbed, joint.lap())));
    List<Part> all = new ArrayList<>(withEnds);
    joint
        .plate()
        .filter(plate -> joint.roadbed().isPresent())
        .ifPresent(plate -> all.add(new Part(plate, "PLATE", List.of())));
    Layout layout = laid(wood, cutting, all, setup.bed());
    List<Part> parts = all;
    for (List<Part> fewer : List.of(withEnds, squares, squares.subList(0, 1))) {
      if (setup.bed().isEmpty() || fits(layout.sheet(), setup.bed().get())) {
        break;
      }
      parts = fewer;
      layout = laid(wood, cutting, parts, setup.bed());
    }
    return new TestCut(
        layout, parts.stream().map(Part::name).toList(), parts.stream().map(Part::laps).toList());
  }

  private static Piece square(String id, String name, Length side) {
    return Piece.of(id, name, new Strip(side, side));
  }

  private static List<Part> ends(AnnularSector roadbed, Optional<Length> lap) {
    // The number stands in the middle, and must not be cleared away with the lap.
    double length = END + lap.map(Length::millimetres).orElse(0.0);
    double sweep = Math.min(LARGEST_SWEEP, length / roadbed.radius().millimetres());
    AnnularSector end =
        new AnnularSector(roadbed.radius(), roadbed.width(), Angle.ofRadians(sweep));
    if (lap.isEmpty()) {
      Piece plain = Piece.of("END", "end of the roadbed", end);
      return List.of(new Part(plain, "END 1", List.of()), new Part(plain, "END 2", List.of()));
    }
    List<Part> parts = new ArrayList<>();
    for (LapEnd side : List.of(LapEnd.UPPER, LapEnd.LOWER)) {
      String number = Integer.toString(parts.size() + 1);
      Piece piece = Piece.of("END" + number, "end of the roadbed", end);
      parts.add(new Part(piece, "END " + number, List.of(HalfLaps.of(end, side, lap.get()))));
    }
    return parts;
  }

  private static boolean fits(SheetStock offcut, Bed bed) {
    double[] sides = {offcut.length().millimetres(), offcut.width().millimetres()};
    return Math.max(sides[0], sides[1]) <= bed.longer()
        && Math.min(sides[0], sides[1]) <= bed.shorter();
  }

  /** In one row, or in as many as the bed asks for. */
  private static Layout laid(
      SheetStock wood, Cutting cutting, List<Part> parts, Optional<Bed> bed) {
    Layout oneRow = rows(wood, cutting, parts, Double.POSITIVE_INFINITY);
    if (bed.isEmpty() || fits(oneRow.sheet(), bed.get())) {
      return oneRow;
    }
    Layout along = rows(wood, cutting, parts, bed.get().longer());
    Layout across = rows(wood, cutting, parts, bed.get().shorter());
    return fits(along.sheet(), bed.get()) ? along : across;
  }

  private static Layout rows(SheetStock wood, Cutting cutting, List<Part> parts, double longest) {
    double margin = cutting.margin().millimetres() + AIR;
    double gap = cutting.spacing().millimetres() + AIR;
    List<Placement> placements = new ArrayList<>();
    double x = margin;
    double y = margin;
    double height = 0;
    double length = 0;
    for (Part part : parts) {
      Box box = part.piece().shape().outline().box();
      if (x > margin && Math.ceil(x + box.width() + margin) > longest) {
        x = margin;
        y += height + gap;
        height = 0;
      }
      placements.add(new Placement(part.piece(), new Pose(x - box.minX(), y - box.minY(), 0)));
      x += box.width() + gap;
      length = Math.max(length, x - gap + margin);
      height = Math.max(height, box.height());
    }
    SheetStock offcut =
        SheetStock.rectangle(
            "offcut for the test cut",
            Length.ofMillimetres(Math.ceil(length)),
            Length.ofMillimetres(Math.ceil(y + height + margin)),
            wood.thickness(),
            Money.ZERO);
    return new Layout(offcut, cutting, placements);
  }

  /** Whether it is turned over for laps from below. */
  public boolean hasLaps() {
    return laps.stream().anyMatch(each -> !each.isEmpty());
  }

  /** As it goes to the machine. */
  public MachineSheet sheet(Caption caption, MachineSetup setup) {
    return MachineSheet.of(
        layout, names, new SheetWork(List.of(), laps, Optional.empty(), caption), setup);
  }

  /**
   * What there is to do with it, in the order of doing it, a sentence or two each.
   *
   * @param style in whose unit everything is told; what is engraved on the squares stays
   * @param turning how it is turned over, where it has laps from below
   */
  public List<String> words(LengthStyle style, Optional<Turning> turning) {
    List<String> words = new ArrayList<>();
    SheetStock offcut = layout.sheet();
    words.add(
        "Before cutting, check the drawing on screen: "
            + squares(style)
            + " If not, the program has misread the unit: fix the import settings, not the file.");
    words.add(
        "Cut it from scrap of the same plywood, "
            + atLeast(style, offcut.length())
            + " x "
            + atLeast(style, offcut.width())
            + " or bigger, with the settings that you will use on the sheets"
            + turning
                .map(
                    each ->
                        ". Read 'Half-laps' below, then run test-flip: it drills two holes for dowels and clears the lap that is cut from below. Flip the scrap %s, set it on dowels in those two holes, trim the dowels flush, and run test-cut."
                            .formatted(each.flip()))
                .orElse("."));
    words.add(
        "On the cut test piece the lettering must read the right way round. If it is mirrored, your"
            + " program has flipped the drawing: fix that before you cut a sheet.");
    words.add(
        "After cutting, measure both squares with a caliper, length and width. If every side is off by the"
            + " same amount, the kerf setting is wrong: "
            + (style.unit().isImperial()
                ? "if the squares are 0.01 in small, the real kerf is 0.01 in"
                : "if the squares are 0.2 mm small, the real kerf is 0.2 mm")
            + " wider than your machine's program assumes. Correct it there and in the job file. If only one direction is off, that axis of"
            + " the machine needs calibrating.");
    words.add(
        "Measure the diagonals: "
            + diagonals(style)
            + " If the two diagonals of a square differ, the machine is out of square.");
    if (hasLaps()) {
      words.add(
          "Lay the lap of END 2 on that of END 1: the shoulders must close and the faces must be flush. If a"
              + " shoulder stays open, check steps 4 and 5 first, then that the dowels fit tight and that the zero"
              + " has not moved."
              + " If END 2 stands proud, cut both laps deeper by half the step; if it sits low, shallower by"
              + " half the step. Then cut the test again.");
    } else if (layout.placements().size() > 2) {
      words.add(
          "Butt END 1 against END 2: the edges must line up and the ends meet without a gap. Then try"
              + " the joint as you will build it, with its plates and screws if it has any.");
    }
    return words;
  }

  /** 100 mm are 3.937 in, 4 in are 101.6 mm. */
  private static String squares(LengthStyle style) {
    return style.unit().isImperial()
        ? "the square marked 4 IN must measure 4 in, and the square marked 100 MM must measure 3.937 in."
        : "the square marked 100 MM must measure 100 mm, and the square marked 4 IN must measure 101.6 mm.";
  }

  private static String diagonals(LengthStyle style) {
    return style.unit().isImperial()
        ? "5.657 in on the square marked 4 IN and 5.568 in on the other."
        : "141.4 mm on the square marked 100 MM and 143.7 mm on the other.";
  }

  /** What a carpenter measures: the next half inch or 10 mm. */
  private static String atLeast(LengthStyle style, Length length) {
    return style.unit().isImperial()
        ? LengthStyle.INCH_FRACTIONS.format(length.up(Length.ofInches(0.5)))
        : LengthStyle.METRIC.format(length.up(Length.ofMillimetres(10)));
  }
}

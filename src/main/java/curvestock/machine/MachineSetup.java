package curvestock.machine;

import curvestock.check.CutForm;
import curvestock.geometry.Outline;
import curvestock.geometry.OutlineOffset;
import curvestock.layout.Placement;
import curvestock.piece.Demand;
import curvestock.sheet.Cutting;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the files for machines are written.
 *
 * @param outlines whether they have the finished size or are grown by half the kerf
 * @param linesWithin write straight lines instead of arcs, straying at most this far; empty: arcs
 * @param letters how the pieces' numbers are written
 * @param colours of each operation, as {@code #rrggbb}, all different
 * @param lineWidth how thick lines are drawn; nothing else depends on it
 * @param tabs bridges that hold a piece in the sheet, if any
 * @param bit diameter of the tool, for judging inside corners; empty: the kerf
 * @param bed what the machine can reach; empty: any sheet
 * @param dxfUnit the unit of the DXF's numbers: millimetres or inches
 * @param dxfJoined whether the DXF has a polyline for each outline, or a line or arc for each edge
 */
public record MachineSetup(
    Outlines outlines,
    Optional<Length> linesWithin,
    Letters letters,
    Map<Operation, String> colours,
    Length lineWidth,
    Optional<Tabs> tabs,
    Optional<Length> bit,
    Optional<Bed> bed,
    LengthUnit dxfUnit,
    boolean dxfJoined) {

  /** What is meant by a line to be cut. */
  public enum Outlines {
    /** The edge of the finished piece: the machine's program moves its tool aside. */
    FINISHED,
    /** The path of the tool's middle, half a kerf outside the finished piece. */
    OFFSET
  }

  /** How numbers are written. */
  public enum Letters {
    /** Single strokes, which every importer keeps. */
    STROKES,
    /** Text, in a font of the importer's choice; many drop it. */
    TEXT,
    /** Not at all. */
    NONE
  }

  /**
   * What a machine reaches, either way round.
   *
   * @param length the longer side
   */
  public record Bed(Length length, Length width) {

    /**
     * Checks the sides.
     *
     * @throws IllegalArgumentException if a side is not above zero
     */
    public Bed {
      length.requirePositive("bed length");
      width.requirePositive("bed width");
    }

    /** The longer side, in millimetres. */
    public double longer() {
      return Math.max(length.millimetres(), width.millimetres());
    }

    /** The shorter side, in millimetres. */
    public double shorter() {
      return Math.min(length.millimetres(), width.millimetres());
    }
  }

  /**
   * Bridges of wood that hold a piece.
   *
   * @param width of the wood that stays
   * @param count to each piece
   * @param form whether the line has gaps there, or only marks beside it
   */
  public record Tabs(Length width, int count, Form form) {

    /** How tabs are told to the machine. */
    public enum Form {
      /** The cut is interrupted: for lasers, and for programs that follow the line. */
      GAPS,
      /** Marks beside a whole outline: for programs that make tabs themselves. */
      MARKS
    }

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the width is not above zero or the count not 1 to 20
     */
    public Tabs {
      width.requirePositive("tab width");
      if (count < 1 || count > 20) {
        throw new IllegalArgumentException("tab count must be from 1 to 20, but was " + count);
      }
    }
  }

  /** Finished size, true arcs, engraved letters, own colours, hairlines, no tabs, any bed, mm. */
  public static final MachineSetup DEFAULT =
      new MachineSetup(
          Outlines.FINISHED,
          Optional.empty(),
          Letters.STROKES,
          Map.of(),
          Length.ofMillimetres(0.1),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          LengthUnit.MILLIMETRE,
          true);

  /**
   * Colours that are left out are our own.
   *
   * @throws IllegalArgumentException if a length is not above zero, two operations have one colour,
   *     or the DXF's unit is neither millimetre nor inch
   */
  public MachineSetup {
    linesWithin.ifPresent(length -> length.requirePositive("lines-within"));
    lineWidth.requirePositive("line-width");
    bit.ifPresent(length -> length.requirePositive("bit"));
    Map<Operation, String> all = new EnumMap<>(Operation.class);
    Map<String, Operation> owner = new HashMap<>();
    for (Operation operation : Operation.values()) {
      String colour = colours.getOrDefault(operation, operation.colour());
      all.put(operation, colour);
      Operation other = owner.put(colour, operation);
      if (other != null) {
        throw new IllegalArgumentException(
            "colours must all differ, but "
                + other.id()
                + " and "
                + operation.id()
                + " are both "
                + colour);
      }
    }
    colours = Map.copyOf(all);
    if (dxfUnit != LengthUnit.MILLIMETRE && dxfUnit != LengthUnit.INCH) {
      throw new IllegalArgumentException("the DXF's unit must be mm or in");
    }
  }

  /** Whether outlines are grown. */
  public boolean isOffset() {
    return outlines == Outlines.OFFSET;
  }

  /** By how much outlines are grown, in millimetres. */
  public double grown(Cutting cutting) {
    return isOffset() ? cutting.kerf().millimetres() / 2 : 0;
  }

  /** The tabs, if the cut is interrupted for them. */
  Optional<Tabs> gaps() {
    return tabs.filter(t -> t.form() == Tabs.Form.GAPS);
  }

  /**
   * Length of the interruption for a tab: the tool takes half its width on either side, so the gap
   * is longer than the wood that stays by the kerf.
   */
  static double gap(Tabs tabs, Cutting cutting) {
    return tabs.width().millimetres() + cutting.kerf().millimetres();
  }

  /** How the outlines in files differ from the finished size. */
  public CutForm form(Cutting cutting) {
    return new CutForm(
        grown(cutting),
        gaps().map(Tabs::count).orElse(0),
        gaps().map(t -> gap(t, cutting)).orElse(0.0),
        linesWithin.map(Length::millimetres).orElse(0.0));
  }

  /** What is wrong with pieces whose outlines cannot be grown, a sentence each. */
  public List<String> tooNarrow(List<Demand> demands, Cutting cutting) {
    double grown = form(cutting).grown();
    Length bit = bitOrKerf(cutting);
    return demands.stream()
        .map(Demand::piece)
        .filter(piece -> OutlineOffset.outwards(Drilling.cut(piece.shape(), bit), grown).isEmpty())
        .map(piece -> new ToolTooWide(piece.id(), cutting.kerf()).getMessage())
        .toList();
  }

  /** What is cut of a piece where it lies: all but the holes that are drilled. */
  Outline cutOutline(Placement placement, Cutting cutting) {
    return Drilling.cut(placement.piece().shape(), bitOrKerf(cutting)).at(placement.pose());
  }

  /** The tool's diameter. */
  public Length bitOrKerf(Cutting cutting) {
    return bit.orElse(cutting.kerf());
  }
}

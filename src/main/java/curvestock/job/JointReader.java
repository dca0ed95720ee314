package curvestock.job;

import curvestock.helix.spec.Construction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.SplicePlate;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads {@code joint:} of a helix: {@code half-lap} and its like as a word takes the usual sizes,
 * as a block of one key the user's.
 */
final class JointReader {

  private static final List<String> WORDS =
      List.of("plate", "half-lap", "two-layers", "side-plates");

  private static final Map<String, SplicePlate.Form> FORMS =
      Map.of("rectangle", SplicePlate.Form.RECTANGLE, "curved", SplicePlate.Form.CURVED);

  private static final Length PLATE = Length.ofInches(5);
  private static final Length LONGEST_PLATE = Length.ofMillimetres(250);
  private static final Length LAP = Length.ofInches(2);
  private static final Length INSET = Length.ofInches(0.5);
  private static final int SCREWS = 3;
  private static final int MOST_SCREWS = 20;

  private final Assumed assumed;
  private final Length plywood;
  private final List<SheetStock> sheets;
  private final double toScale;
  private final LengthStyle style;
  private final Optional<GroundPlan> ground;

  /**
   * @param plywood thickness of the roadbed
   * @param sheets that plates of another thickness must find one among; empty if unreadable
   * @param toScale how much larger than HO the trains are
   * @param style of lengths in messages
   * @param ground that plates must stay within; empty if unreadable
   */
  JointReader(
      Assumed assumed,
      Length plywood,
      List<SheetStock> sheets,
      double toScale,
      LengthStyle style,
      Optional<GroundPlan> ground) {
    this.assumed = assumed;
    this.plywood = plywood;
    this.sheets = List.copyOf(sheets);
    this.toScale = toScale;
    this.style = style;
    this.ground = ground;
  }

  Optional<Construction> read(Block helix) {
    Optional<Field> field = helix.find("joint");
    if (field.isEmpty()) {
      assumed.note(
          "joint", "splice plates", "butt joints with a splice plate below, the most common");
      return plate(helix, Optional.empty());
    }
    if (field.get().isText()) {
      Map<String, String> words =
          Map.of(
              "plate", "plate",
              "half-lap", "half-lap",
              "two-layers", "two-layers",
              "side-plates", "side-plates");
      return field.get().choice(words, WORDS).flatMap(word -> usual(helix, word));
    }
    return field
        .get()
        .block("plate", "half-lap", "two-layers", "side-plates")
        .flatMap(block -> block.needOneOf("plate", "half-lap", "two-layers", "side-plates"))
        .flatMap(given -> stated(helix, given));
  }

  private Optional<Construction> usual(Block helix, String word) {
    return switch (word) {
      case "half-lap" -> {
        assumed.note("joint.half-lap", assumed.shown(LAP), Assumed.PRACTICE);
        yield Optional.of(new Construction.HalfLap(LAP));
      }
      case "two-layers" -> Optional.of(new Construction.TwoLayers());
      case "side-plates" -> sidePlates(helix, Optional.empty());
      default -> plate(helix, Optional.empty());
    };
  }

  private Optional<Construction> stated(Block helix, Field given) {
    return switch (given.key()) {
      case "half-lap" -> given.size().map(Construction.HalfLap::new);
      case "two-layers" -> given.flag().map(yes -> new Construction.TwoLayers());
      case "side-plates" ->
          given
              .block("length", "height", "thickness", "from-sheets")
              .flatMap(block -> sidePlates(block, Optional.of(block)));
      default ->
          given
              .block(
                  "form",
                  "length",
                  "inset",
                  "thickness",
                  "screws-each-side",
                  "screw-hole",
                  "from-sheets")
              .flatMap(block -> plate(helix, Optional.of(block)));
    };
  }

  private Optional<Construction> plate(Block helix, Optional<Block> block) {
    String at = "joint.plate.";
    SplicePlate.Form form =
        assumed.value(
            block,
            "form",
            field -> field.choice(FORMS, List.of("rectangle", "curved")),
            at + "form",
            SplicePlate.Form.RECTANGLE,
            "rectangle",
            "easiest to cut");
    Length length =
        assumed.length(
            block,
            "length",
            Lengths.SIZE,
            at + "length",
            usualPlate(),
            "%s to %s in HO, other scales in proportion, %s at most; %s"
                .formatted(
                    assumed.shown(Length.ofInches(4)),
                    assumed.shown(Length.ofInches(6)),
                    style.formatDown(LONGEST_PLATE),
                    Assumed.PRACTICE));
    Length inset =
        assumed.length(
            block, "inset", Lengths.GAP, at + "inset", usualInset(form, length), Assumed.PRACTICE);
    boolean fromSheets = fromSheets(block, at);
    Length thickness = thickness(block, at);
    int screws =
        assumed.value(
            block,
            "screws-each-side",
            field -> field.whole(1, MOST_SCREWS),
            at + "screws-each-side",
            SCREWS,
            Integer.toString(SCREWS),
            "4 to 8 screws a joint; " + Assumed.PRACTICE);
    Length hole =
        assumed.length(
            block,
            "screw-hole",
            Lengths.SIZE,
            at + "screw-hole",
            assumed.imperial() ? Length.ofInches(5.0 / 32) : Length.ofMillimetres(4),
            "for thin wood screws; " + Assumed.PRACTICE);
    requireSheetThickness(block, fromSheets, thickness);
    return block
        .orElse(helix)
        .build(
            () ->
                new Construction.ButtWithPlate(
                    new SplicePlate(form, length, inset, thickness, screws, hole, fromSheets)));
  }

  private Length usualPlate() {
    Length toScaleOf = PLATE.times(toScale);
    return toScaleOf.compareTo(LONGEST_PLATE) > 0 ? LONGEST_PLATE : toScaleOf;
  }

  /** Half an inch, or as much more as a square plate needs to stay within the curve. */
  private Length usualInset(SplicePlate.Form form, Length length) {
    if (ground.isEmpty() || form == SplicePlate.Form.CURVED) {
      return INSET;
    }
    double outer = ground.get().outerEdge().millimetres();
    double half = length.millimetres() / 2;
    double lost = outer - Math.sqrt(Math.max(0, outer * outer - half * half));
    Length needed = style.roundUp(Length.ofMillimetres(lost * (1 + 1e-6)));
    return needed.compareTo(INSET) > 0 ? needed : INSET;
  }

  private Optional<Construction> sidePlates(Block place, Optional<Block> block) {
    String at = "joint.side-plates.";
    Length length =
        assumed.length(
            block,
            "length",
            Lengths.SIZE,
            at + "length",
            usualPlate(),
            "as long as a plate below; " + Assumed.PRACTICE);
    Length height =
        assumed.length(
            block, "height", Lengths.SIZE, at + "height", plywood.times(2), "twice the plywood");
    boolean fromSheets = fromSheets(block, at);
    Length thickness = thickness(block, at);
    requireSheetThickness(block, fromSheets, thickness);
    return place.build(() -> new Construction.PlatesBeside(length, height, thickness, fromSheets));
  }

  private boolean fromSheets(Optional<Block> block, String at) {
    return assumed.value(
        block,
        "from-sheets",
        Field::flag,
        at + "from-sheets",
        true,
        "yes",
        "a sheet of their thickness is on your list");
  }

  private Length thickness(Optional<Block> block, String at) {
    return assumed.length(
        block, "thickness", Lengths.THICKNESS, at + "thickness", plywood, "same as the sheets");
  }

  /** A plate cut from the job's sheets is as thick as the roadbed, or as some other of them. */
  private void requireSheetThickness(Optional<Block> block, boolean fromSheets, Length thickness) {
    boolean other = Math.abs(thickness.minus(plywood).millimetres()) > 0.01;
    if (fromSheets && other && !sheets.isEmpty()) {
      block
          .flatMap(given -> given.find("thickness"))
          .ifPresent(
              field ->
                  Thicknesses.noteIfNone(
                      field,
                      thickness,
                      sheets,
                      style,
                      "leave it out for the roadbed's, or write `from-sheets: false`"));
    }
  }
}

package curvestock.job;

import curvestock.geometry.Box;
import curvestock.machine.MachineSetup;
import curvestock.machine.MachineSetup.Bed;
import curvestock.machine.MachineSetup.Letters;
import curvestock.machine.MachineSetup.Outlines;
import curvestock.machine.MachineSetup.Tabs;
import curvestock.machine.Operation;
import curvestock.sheet.Cutting;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads {@code machine:}: how the files for machines are written; every key may be left out. */
final class MachineReader {

  private static final int MOST_TABS = 20;

  private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");

  private static final Map<String, Outlines> OUTLINES =
      Map.of("finished", Outlines.FINISHED, "offset", Outlines.OFFSET);

  private static final Map<String, Letters> LETTERS =
      Map.of("strokes", Letters.STROKES, "text", Letters.TEXT, "none", Letters.NONE);

  private static final Map<String, Tabs.Form> FORMS =
      Map.of("gaps", Tabs.Form.GAPS, "marks", Tabs.Form.MARKS);

  private MachineReader() {}

  /**
   * @param cutting the job's, whose kerf the bit must not exceed
   */
  static Optional<MachineSetup> read(Field field, Optional<Cutting> cutting) {
    return field
        .block(
            "outlines",
            "lines-within",
            "letters",
            "colours",
            "line-width",
            "tabs",
            "bit",
            "bed",
            "dxf")
        .flatMap(block -> setup(block, cutting));
  }

  private static Optional<MachineSetup> setup(Block block, Optional<Cutting> cutting) {
    Optional<Outlines> outlines =
        block
            .find("outlines")
            .flatMap(field -> field.choice(OUTLINES, List.of("finished", "offset")));
    Optional<Length> lines = block.find("lines-within").flatMap(Lengths.FINENESS::read);
    Optional<Letters> letters =
        block
            .find("letters")
            .flatMap(field -> field.choice(LETTERS, List.of("strokes", "text", "none")));
    Optional<Map<Operation, String>> colours =
        block.find("colours").flatMap(MachineReader::colours);
    Optional<Length> width = block.find("line-width").flatMap(Lengths.LINE_WIDTH::read);
    Optional<Tabs> tabs =
        block
            .find("tabs")
            .flatMap(field -> field.block("width", "count", "as"))
            .flatMap(inner -> tabs(inner, outlines.orElse(Outlines.FINISHED)));
    Optional<Length> bit = block.find("bit").flatMap(field -> bit(field, cutting));
    Optional<Bed> bed =
        block.find("bed").flatMap(SheetSize::read).map(outline -> bed(outline.box()));
    Optional<Block> dxf = block.find("dxf").flatMap(field -> field.block("unit", "edges"));
    Optional<LengthUnit> unit =
        dxf.flatMap(inner -> inner.find("unit"))
            .flatMap(field -> PrintReader.unit(field, List.of("mm", "in")));
    Optional<Boolean> joined =
        dxf.flatMap(inner -> inner.find("edges"))
            .flatMap(
                field ->
                    field.choice(
                        Map.of("joined", true, "separate", false), List.of("joined", "separate")));
    return block.build(
        () ->
            new MachineSetup(
                outlines.orElse(MachineSetup.DEFAULT.outlines()),
                lines,
                letters.orElse(MachineSetup.DEFAULT.letters()),
                colours.orElse(Map.of()),
                width.orElse(MachineSetup.DEFAULT.lineWidth()),
                tabs,
                bit,
                bed,
                unit.orElse(MachineSetup.DEFAULT.dxfUnit()),
                joined.orElse(MachineSetup.DEFAULT.dxfJoined())));
  }

  /** A bit wider than the kerf would cut into every piece by half the difference. */
  private static Optional<Length> bit(Field field, Optional<Cutting> cutting) {
    Optional<Length> bit = Lengths.BIT.read(field);
    Optional<Length> kerf = cutting.map(Cutting::kerf);
    if (bit.isPresent() && kerf.filter(width -> width.compareTo(bit.get()) < 0).isPresent()) {
      boolean inches = field.written("a bit").filter(text -> text.contains("in")).isPresent();
      LengthStyle style = inches ? LengthStyle.INCH_FRACTIONS : field.reading().style();
      field.note(
          "must be at most the kerf, "
              + style.formatGiven(kerf.get())
              + ", but was "
              + style.formatGiven(bit.get())
              + ", which would cut "
              + style.formatGiven(bit.get().minus(kerf.get()).times(0.5))
              + " into every piece; write `kerf: "
              + style.formatGiven(bit.get())
              + "` in `cutting:`, or fit a narrower bit");
    }
    return bit;
  }

  private static Bed bed(Box box) {
    return new Bed(Length.ofMillimetres(box.width()), Length.ofMillimetres(box.height()));
  }

  /** Gaps suit a machine that follows the line; who offsets it needs it whole. */
  private static Optional<Tabs> tabs(Block block, Outlines outlines) {
    Optional<Length> width = block.need("width", "width: 1/4 in").flatMap(Lengths.TAB::read);
    Optional<Integer> count =
        block.need("count", "count: 4").flatMap(field -> field.whole(1, MOST_TABS));
    Optional<Tabs.Form> form =
        block.find("as").flatMap(field -> field.choice(FORMS, List.of("gaps", "marks")));
    Tabs.Form usual = outlines == Outlines.OFFSET ? Tabs.Form.GAPS : Tabs.Form.MARKS;
    return block.build(
        () -> new Tabs(width.orElseThrow(), count.orElseThrow(), form.orElse(usual)));
  }

  private static Optional<Map<Operation, String>> colours(Field field) {
    String[] ids = Arrays.stream(Operation.values()).map(Operation::id).toArray(String[]::new);
    Optional<Block> block = field.block(ids);
    if (block.isEmpty()) {
      return Optional.empty();
    }
    Map<Operation, String> colours = new EnumMap<>(Operation.class);
    for (Operation operation : Operation.values()) {
      block
          .get()
          .find(operation.id())
          .flatMap(MachineReader::colour)
          .ifPresent(colour -> colours.put(operation, colour));
    }
    return Optional.of(colours);
  }

  private static Optional<String> colour(Field field) {
    String rule = "a colour in quotes such as \"#ff0000\"";
    Optional<String> text = field.written(rule);
    if (text.isPresent() && !COLOUR.matcher(text.get()).matches()) {
      field.note("must be " + rule + ", but was " + Words.quoted(text.get()));
      return Optional.empty();
    }
    return text.map(colour -> colour.toLowerCase(Locale.ROOT));
  }
}

package curvestock.answer;

import curvestock.compare.Dimension;
import curvestock.compare.Sensitivity;
import curvestock.compare.SheetFill;
import curvestock.job.Job;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far an answer holds, a sentence for each step that was found. */
final class SensitivityWords {

  /** Less than a rule shows. */
  private static final String NOTHING = "nothing";

  private static final String TIGHT = "just fits, with nothing to spare";

  private final Job job;
  private final Sensitivity found;
  private final int base;

  SensitivityWords(Job job, Sensitivity found) {
    this.job = job;
    this.found = found;
    this.base = found.option().perSheet();
  }

  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add(spare());
    List<String> minor = new ArrayList<>();
    for (Sensitivity.Step step : found.steps()) {
      if (step.perSheet() == 0 || step.sheets() != found.baseSheets()) {
        sentences.add(sentence(step));
      } else {
        minor.add("%s (%s)".formatted(briefly(step), step.perSheet()));
      }
    }
    if (!minor.isEmpty()) {
      sentences.add(
          "These changes alter the pieces per sheet (now %s) but not the number of sheets: %s."
              .formatted(base, String.join("; ", minor)));
    }
    sentences.add(
        found.steps().isEmpty()
            ? "Small changes of radius, width, kerf, margin or sheet size make no difference."
            : found.byPattern()
                ? "Each change was tried with a quick count only; a search may fit more."
                : "Each change was tried with a quick search only; a longer one may fit more.");
    return sentences;
  }

  /** What a saw can take from the layout before it loses a piece. */
  private String spare() {
    SheetFill fill = found.option().fill().orElseThrow();
    String room = room(spare(fill.spareAlong()), spare(fill.spareAcross()));
    return "The layout of %s, %s to a sheet, %s%s."
        .formatted(
            SegmentName.plural(found.option().division()),
            base,
            room,
            firstCut()
                .map(words -> ": " + words)
                .orElse(room.equals(TIGHT) ? "; an undersize sheet may hold fewer" : ""));
  }

  /** The smallest cut that loses a piece. */
  private Optional<String> firstCut() {
    return found.steps().stream()
        .filter(step -> step.change().millimetres() < 0 && step.perSheet() < base)
        .filter(
            step ->
                step.dimension() == Dimension.SHEET_LENGTH
                    || step.dimension() == Dimension.SHEET_WIDTH)
        .min((a, b) -> b.change().compareTo(a.change()))
        .map(
            step ->
                "a "
                    + briefly(step)
                    + " loses "
                    + (base - step.perSheet() == 1
                        ? "a piece"
                        : base - step.perSheet() + " pieces"));
  }

  private String sentence(Sensitivity.Step step) {
    return advice(step) + effect(step) + ".";
  }

  /** How to make the change, as advice where it helps. */
  private String advice(Sensitivity.Step step) {
    boolean helps = step.sheets() < found.baseSheets();
    return advice(step.dimension(), step.change(), helps, job.style());
  }

  /** A change that helps, as advice: the beginning of a sentence. */
  static String advice(Dimension dimension, Length change, LengthStyle style) {
    return advice(dimension, change, true, style);
  }

  private static String advice(
      Dimension dimension, Length change, boolean helps, LengthStyle style) {
    boolean less = change.millimetres() < 0;
    String by = style.formatGiven(change.times(less ? -1 : 1));
    return switch (dimension) {
      case RADIUS -> "With the radius " + by + (less ? " smaller " : " larger ");
      case WIDTH ->
          helps
              ? "Make the roadbed " + by + (less ? " narrower and " : " wider and ")
              : "With the roadbed " + by + (less ? " narrower " : " wider ");
      case KERF -> "With a kerf " + by + (less ? " finer " : " wider ");
      case MARGIN -> "With an edge margin " + by + (less ? " smaller " : " larger ");
      case SHEET_LENGTH -> "From a sheet " + by + (less ? " shorter " : " longer ");
      case SHEET_WIDTH -> "From a sheet " + by + (less ? " narrower " : " wider ");
    };
  }

  private String effect(Sensitivity.Step step) {
    if (step.perSheet() == 0) {
      return "no piece fits";
    }
    String count =
        step.perSheet() >= base
            ? step.perSheet() + " fit a sheet instead of " + base
            : "only " + step.perSheet() + " fit a sheet instead of " + base;
    if (step.sheets() == Sensitivity.Step.NONE) {
      return "the job can no longer be cut from its sheets (" + count + ")";
    }
    int saved = found.baseSheets() - step.sheets();
    String amount = Math.abs(saved) == 1 ? "a sheet" : Math.abs(saved) + " sheets";
    return "%s: %s instead of %s; %s"
        .formatted(
            saved > 0 ? "you save " + amount : "you need " + amount + " more",
            step.sheets(),
            found.baseSheets(),
            count);
  }

  private String briefly(Sensitivity.Step step) {
    boolean less = step.change().millimetres() < 0;
    String by = by(step);
    return switch (step.dimension()) {
      case RADIUS -> "radius " + by + (less ? " smaller" : " larger");
      case WIDTH -> "roadbed " + by + (less ? " narrower" : " wider");
      case KERF -> "kerf " + by + (less ? " finer" : " wider");
      case MARGIN -> "edge margin " + by + (less ? " smaller" : " larger");
      case SHEET_LENGTH -> "sheet " + by + (less ? " shorter" : " longer");
      case SHEET_WIDTH -> "sheet " + by + (less ? " narrower" : " wider");
    };
  }

  private String by(Sensitivity.Step step) {
    return job.style().formatGiven(step.change().times(step.change().millimetres() < 0 ? -1 : 1));
  }

  private static String room(String along, String across) {
    return along.equals(NOTHING) && across.equals(NOTHING)
        ? TIGHT
        : "has %s to spare along the sheet and %s across it".formatted(along, across);
  }

  /** Rounded down, so that no more is promised than there is. */
  private String spare(Length length) {
    boolean imperial = job.style().unit().isImperial();
    LengthStyle style = imperial ? LengthStyle.INCH_FRACTIONS : LengthStyle.METRIC;
    double steps = imperial ? 64 : 10;
    double down = Math.floor(length.in(style.unit()) * steps + 1e-6) / steps;
    return down <= 0 ? NOTHING : style.format(Length.of(down, style.unit()));
  }
}

package curvestock.check;

import curvestock.check.JobReport.Judged;
import curvestock.check.JobReport.Judged.Shows;
import curvestock.piece.Demand;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Judges the drawings of a job together: each by itself, and whether all of one kind hold exactly
 * the pieces wanted. The test cut is judged by itself alone.
 */
public final class JobCheck {

  private final List<Expectation> sheets;
  private final Expectation testCut;
  private final List<Demand> wanted;
  private final Optional<String> warning;
  private final Map<String, Judged> texts = new HashMap<>();
  private final List<Judged> judged = new ArrayList<>();
  private final Map<String, String> undersides = new LinkedHashMap<>();
  private final List<Upper> uppers = new ArrayList<>();

  /** A drawing of a sheet's upper side, and what it was judged by. */
  private record Upper(int index, String text, Expectation expectation, CheckReport report) {}

  /**
   * A check for one job.
   *
   * @param sheets what a drawing of any of the job's sheets may be
   * @param testCut what its test cut is
   * @param wanted the pieces of all sheets together
   * @param warning what every drawing must tell whoever opens it
   */
  public JobCheck(
      List<Expectation> sheets,
      Expectation testCut,
      List<Demand> wanted,
      Optional<String> warning) {
    this.sheets = List.copyOf(sheets);
    this.testCut = testCut;
    this.wanted = List.copyOf(wanted);
    this.warning = warning;
  }

  /**
   * Judges a drawing.
   *
   * @param name what to call it
   * @param exact what exactly is to be on it, if that is known
   */
  public void add(String name, String text, Optional<Expectation> exact) {
    if (UndersideCheck.isUnderside(text, sheets.get(0))) {
      undersides.put(name, text);
      return;
    }
    Judged drawing = warned(judge(name, text, exact), text);
    Judged same = texts.putIfAbsent(text, drawing);
    boolean isCopy = same != null && drawing.report().filter(CheckReport::numbered).isPresent();
    judged.add(
        isCopy && drawing.isSheet()
            ? drawing.with(
                Finding.of(
                    Finding.Kind.COUNT,
                    "is the same drawing as " + same.name() + ", numbers and all: give it once"))
            : drawing);
  }

  /** With a finding if the drawing keeps silent about what it must say. */
  private Judged warned(Judged drawing, String text) {
    return warning
        .filter(words -> !text.replaceAll("\\s+", " ").contains(words))
        .map(
            words ->
                drawing.with(
                    Finding.of(
                        Finding.Kind.MARK,
                        "does not say '"
                            + words
                            + "': plan the job again and use the new drawing")))
        .orElse(drawing);
  }

  /** Notes a file that could not even be read. */
  public void addUnreadable(String name, String why) {
    judged.add(Judged.unreadable(name, why));
  }

  private Judged judge(String name, String text, Optional<Expectation> exact) {
    List<Expectation> tries = new ArrayList<>(exact.map(List::of).orElse(sheets));
    if (exact.isEmpty()) {
      tries.add(testCut);
    }
    Optional<Judged> best = Optional.empty();
    Optional<Upper> upper = Optional.empty();
    String why = "";
    for (Expectation expectation : tries) {
      try {
        CheckReport report = LayoutCheck.check(text, expectation);
        if (best.isEmpty() || report.findings().size() < best.get().findings()) {
          best =
              Optional.of(
                  Judged.of(
                      name, report, expectation.equals(testCut) ? Shows.TEST_CUT : Shows.SHEET));
          upper = Optional.of(new Upper(judged.size(), text, expectation, report));
        }
      } catch (CheckException e) {
        why = e.getMessage();
      }
    }
    upper.ifPresent(uppers::add);
    String reason = why;
    return best.orElseGet(() -> Judged.unreadable(name, reason));
  }

  /**
   * What was found.
   *
   * @param partial whether only some of the sheets are given, so that pieces may be missing
   */
  public JobReport report(boolean partial) {
    judgeUndersides(partial);
    Map<DrawingKind, Map<String, Integer>> found = new EnumMap<>(DrawingKind.class);
    Map<DrawingKind, Integer> files = new EnumMap<>(DrawingKind.class);
    for (Judged drawing : judged) {
      if (drawing.report().isPresent() && drawing.isSheet()) {
        CheckReport report = drawing.report().get();
        files.merge(report.kind(), 1, Integer::sum);
        Map<String, Integer> counts = found.computeIfAbsent(report.kind(), kind -> new TreeMap<>());
        report.counts().forEach((id, count) -> counts.merge(id, count, Integer::sum));
      }
    }
    List<Tally> tallies = new ArrayList<>();
    found.forEach(
        (kind, counts) -> tallies.add(Tally.of(kind, files.getOrDefault(kind, 0), wanted, counts)));
    return new JobReport(judged, tallies, partial);
  }

  /** Each underside with the upper side that it fits; each upper side once in each format. */
  private void judgeUndersides(boolean partial) {
    List<Upper> left = new ArrayList<>(uppers);
    undersides.forEach(
        (name, text) -> {
          Optional<Upper> mate = Optional.empty();
          Optional<CheckReport> best = Optional.empty();
          String why =
              "it shows an underside alone: give the drawing of the sheet's upper side too";
          for (Upper upper : left) {
            try {
              CheckReport report = UndersideCheck.check(text, upper.text(), upper.expectation());
              boolean better =
                  report.kind() == upper.report().kind()
                      && (best.isEmpty()
                          || report.findings().size() < best.get().findings().size());
              if (better) {
                best = Optional.of(report);
                mate = Optional.of(upper);
              }
            } catch (CheckException e) {
              why = e.getMessage();
            }
            if (best.filter(CheckReport::passed).isPresent()) {
              break;
            }
          }
          mate.ifPresent(left::remove);
          String reason = why;
          judged.add(
              best.map(report -> Judged.of(name, report, Shows.UNDERSIDE))
                  .orElseGet(() -> Judged.unreadable(name, reason)));
        });
    if (!partial) {
      left.forEach(this::requireUnderside);
    }
  }

  /** Notes an upper side whose laps below are in no file. */
  private void requireUnderside(Upper upper) {
    boolean needed =
        upper.report().kind() != DrawingKind.ANNOTATED
            && upper.report().counts().keySet().stream()
                .anyMatch(id -> !upper.expectation().recesses(id, false).isEmpty());
    if (needed) {
      Judged without = judged.get(upper.index());
      judged.set(
          upper.index(),
          without.with(
              Finding.of(
                  Finding.Kind.POCKET,
                  "its pieces have laps below, but no file of the underside was given")));
    }
  }
}

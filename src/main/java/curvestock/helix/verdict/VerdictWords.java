package curvestock.helix.verdict;

import curvestock.helix.verdict.Verdict.State;
import curvestock.units.LengthStyle;
import java.util.stream.Collectors;

/** The sentences that tell verdicts, lengths in the user's style. Nobody else words a verdict. */
public final class VerdictWords {

  private final Figures figures;
  private final FindingWords findings;
  private final FixWords fixes;

  public VerdictWords(LengthStyle style) {
    figures = new Figures(style);
    findings = new FindingWords(figures);
    fixes = new FixWords(figures);
  }

  /** The rule and the place, for example {@code free height at the entry}. */
  public static String title(Verdict verdict) {
    return verdict.rule().title() + verdict.place().map(place -> " " + place.words()).orElse("");
  }

  /** The numbers, without a full stop. */
  public String finding(Verdict verdict) {
    return findings.of(verdict);
  }

  /** What to do about it; empty if nothing. */
  public String fix(Verdict verdict) {
    return verdict.state() == State.OK ? "" : fixes.of(verdict);
  }

  /** One line for a terminal. */
  public String line(Verdict verdict) {
    String fix = fix(verdict);
    String line = "%s: %s: %s".formatted(title(verdict), verdict.state().word(), finding(verdict));
    return fix.isEmpty() ? line : line + "; fix: " + fix;
  }

  /** The changes as an instruction: {@code make the radius at least 25 in (now 24 in)}. */
  public String changes(Remedy remedy) {
    return fixes.all(remedy);
  }

  /** The changes as lines of a job file: {@code radius: 25 in}. */
  public String keys(Remedy remedy) {
    return remedy.changes().stream()
        .map(change -> change.key() + ": " + figures.value(change.setting(), change.then()))
        .collect(Collectors.joining(", "));
  }
}

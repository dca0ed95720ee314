package curvestock.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a check of several drawings of one job found.
 *
 * @param drawings each by itself, in the order given
 * @param tallies the pieces on all drawings of a kind, against those wanted
 * @param partial whether pieces may be missing, because only some sheets were given
 */
public record JobReport(List<Judged> drawings, List<Tally> tallies, boolean partial) {

  /** Copies the lists. */
  public JobReport {
    drawings = List.copyOf(drawings);
    tallies = List.copyOf(tallies);
  }

  /** Whether every drawing is right and their pieces are those wanted. */
  public boolean passed() {
    return drawings.stream().allMatch(Judged::passed)
        && tallies.stream()
            .allMatch(tally -> tally.surplus().isEmpty() && (partial || tally.missing().isEmpty()));
  }

  /** Names of the files that are no drawings or could not be read. */
  public List<String> unreadable() {
    return drawings.stream()
        .filter(drawing -> drawing.report().isEmpty())
        .map(Judged::name)
        .toList();
  }

  /**
   * One drawing.
   *
   * @param report what was found in it; empty if it cannot be judged
   * @param unreadable why it cannot be judged
   * @param shows what part of the job
   */
  public record Judged(String name, Optional<CheckReport> report, String unreadable, Shows shows) {

    /** What a drawing shows; the pieces of sheets alone are counted. */
    public enum Shows {
      SHEET(""),
      UNDERSIDE(" (underside)"),
      TEST_CUT(" (test cut)");

      private final String remark;

      Shows(String remark) {
        this.remark = remark;
      }

      /** What is said of it behind its name. */
      public String remark() {
        return remark;
      }
    }

    static Judged of(String name, CheckReport report, Shows shows) {
      return new Judged(name, Optional.of(report), "", shows);
    }

    static Judged unreadable(String name, String why) {
      return new Judged(name, Optional.empty(), Shown.line(why), Shows.SHEET);
    }

    boolean isSheet() {
      return shows == Shows.SHEET;
    }

    /** The same with one more finding. */
    Judged with(Finding finding) {
      return new Judged(name, report.map(r -> r.with(finding)), unreadable, shows);
    }

    /** Whether it can be judged and is right. */
    public boolean passed() {
      return report.filter(CheckReport::passed).isPresent();
    }

    int findings() {
      return report.map(r -> r.findings().size()).orElse(Integer.MAX_VALUE);
    }
  }

  /** The first words of what is wrong with the pieces, a line for each tally that is not right. */
  public List<String> counts() {
    List<String> lines = new ArrayList<>();
    for (Tally tally : tallies) {
      lines.addAll(tally.words(partial));
    }
    return lines;
  }
}

package curvestock.helix.verdict;

/**
 * What a rule says of the helix.
 *
 * @param rule name of the rule
 * @param result how it came out
 * @param finding the numbers
 * @param mend how to mend it; empty if there is nothing to mend
 */
public record Verdict(String rule, Result result, String finding, String mend) {

  /** How a rule came out. */
  public enum Result {
    OK("ok"),
    /** It can be built, with less room than the rule asks. */
    TIGHT("tight"),
    /** It cannot work as stated. */
    FAILS("fails");

    private final String word;

    Result(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  static Verdict ok(String rule, String finding) {
    return new Verdict(rule, Result.OK, finding, "");
  }

  /** One line for a terminal. */
  public String line() {
    return rule + ": " + result.word() + ": " + finding + (mend.isEmpty() ? "" : "; " + mend);
  }
}

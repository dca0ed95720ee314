package curvestock.plan;

import java.util.List;

/**
 * Says that a job cannot be cut from the sheets on offer, why, and what would help. The message is
 * made for the user: one sentence a line.
 */
public final class Infeasible extends Exception {
  private static final long serialVersionUID = 1L;

  private final String onPage;

  public Infeasible(List<String> sentences) {
    this(sentences, sentences);
  }

  /**
   * The same for the page, which has fields where a job file has keys.
   *
   * @param onPage the sentences with the names of the page's fields
   */
  Infeasible(List<String> sentences, List<String> onPage) {
    super(String.join(System.lineSeparator(), sentences));
    this.onPage = String.join("\n", onPage);
  }

  static Infeasible of(List<Told> told) {
    return new Infeasible(
        told.stream().map(Told::inFile).toList(), told.stream().map(Told::onPage).toList());
  }

  /** The message, with the names of the page's fields instead of a job file's keys. */
  public String onPage() {
    return onPage;
  }
}

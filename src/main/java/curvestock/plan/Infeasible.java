package curvestock.plan;

import java.util.List;

/**
 * Says that a job cannot be cut from the sheets on offer, why, and what would help. The message is
 * made for the user: one sentence a line.
 */
public final class Infeasible extends Exception {
  private static final long serialVersionUID = 1L;

  public Infeasible(List<String> sentences) {
    super(String.join(System.lineSeparator(), sentences));
  }
}

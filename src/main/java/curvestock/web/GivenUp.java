package curvestock.web;

/** Thrown through a computation that nobody waits for any more, so that it ends at once. */
final class GivenUp extends RuntimeException {

  private static final long serialVersionUID = 1;

  GivenUp() {
    super("nobody waits for this any more");
  }
}

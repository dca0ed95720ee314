package curvestock.app;

/** A drawing failed its independent check: a fault of this program. Nothing was written. */
public final class WrongLayoutException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  WrongLayoutException(String drawing, String findings) {
    super(
        "the drawing "
            + drawing
            + " failed its independent check, so nothing was written. Curvestock has a bug: please report"
            + " it with the job file.\n"
            + findings);
  }
}

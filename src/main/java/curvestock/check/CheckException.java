package curvestock.check;

/** The text cannot be judged as a drawing of a sheet; the message says why and where. */
public final class CheckException extends Exception {

  private static final long serialVersionUID = 1L;

  public CheckException(String message) {
    super(Shown.line(message));
  }

  public CheckException(String message, Throwable cause) {
    super(Shown.line(message), cause);
  }
}

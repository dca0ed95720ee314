package curvestock.check;

/** The text cannot be judged as a drawing of a sheet; the message says why and where. */
public final class CheckException extends Exception {

  private static final long serialVersionUID = 1L;

  /**
   * @param message what cannot be judged, why and where; it is shown on one line
   */
  public CheckException(String message) {
    super(Shown.line(message));
  }

  /**
   * @param message what cannot be judged, why and where; it is shown on one line
   * @param cause what a reader of the text threw
   */
  public CheckException(String message, Throwable cause) {
    super(Shown.line(message), cause);
  }
}

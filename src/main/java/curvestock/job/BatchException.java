package curvestock.job;

/** Says why jobs cannot share sheets, and what would help. */
public final class BatchException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BatchException(String message) {
    super(message);
  }
}

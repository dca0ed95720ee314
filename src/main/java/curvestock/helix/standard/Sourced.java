package curvestock.helix.standard;

/** A figure with where it comes from and how sure it is. */
public record Sourced<T>(T value, String source, Certainty certainty) {

  /**
   * @throws IllegalArgumentException if the source is blank
   */
  public Sourced {
    if (source.isBlank()) {
      throw new IllegalArgumentException("a figure must name its source");
    }
  }

  /** A figure of the trade for which nobody can name a source. */
  public static <T> Sourced<T> practice(T value) {
    return new Sourced<>(value, "rule of thumb", Certainty.PRACTICE);
  }

  /** The source as it is printed beside the figure: {@code NEM 112, as quoted elsewhere}. */
  public String citation() {
    return switch (certainty) {
      case READ, DERIVED -> source;
      case PRACTICE -> "rule of thumb";
      case AS_QUOTED_ELSEWHERE -> source + ", as quoted elsewhere";
      case MEMORY -> source + ", unverified";
    };
  }
}

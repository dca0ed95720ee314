package curvestock.units;

/** So many whole things. */
public record Count(long number) implements Quantity {}

package curvestock.units;

/** A name or a remark among figures. */
public record Text(String words) implements Quantity {

  /** Where there is no figure. */
  public static final Text NONE = new Text("");
}

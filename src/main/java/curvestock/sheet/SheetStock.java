package curvestock.sheet;

import curvestock.geometry.Clearance;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.OptionalInt;

/**
 * A kind of sheet or a remnant: its form, thickness, price and how many can be had.
 *
 * <p>Frame: origin at the lower left corner, +x to the right, y up, millimetres.
 *
 * @param name as the user calls it
 * @param outline the edge of the wood; a rectangle for bought sheets, any polygon for remnants
 * @param defects areas inside to keep clear of (knots, voids, a torn corner); may be empty
 * @param thickness as measured; what heights are planned with
 * @param nominalThickness as sold; what is printed on the purchase
 * @param price of one, zero for wood on hand
 * @param available how many can be had; empty means any number
 * @param grain direction of the face grain, counter-clockwise from +x
 */
public record SheetStock(
    String name,
    Outline outline,
    List<Outline> defects,
    Length thickness,
    Length nominalThickness,
    Money price,
    OptionalInt available,
    Angle grain) {

  /**
   * @throws IllegalArgumentException if the name is blank, a thickness is not above zero, the price
   *     or the number available is below zero, or the outline has holes
   */
  public SheetStock {
    defects = List.copyOf(defects);
    if (name.isBlank()) {
      throw new IllegalArgumentException("a sheet must have a name");
    }
    thickness.requirePositive("thickness");
    nominalThickness.requirePositive("nominal thickness");
    if (price.minorUnits() < 0) {
      throw new IllegalArgumentException("price must not be negative, but was " + price.plain());
    }
    if (available.isPresent() && available.getAsInt() < 0) {
      throw new IllegalArgumentException(
          "available must not be negative, but was " + available.getAsInt());
    }
    if (!outline.holes().isEmpty()) {
      throw new IllegalArgumentException(
          "a sheet's outline must have no holes: give them as defects");
    }
  }

  /**
   * How far measured thicknesses may lie apart and still count as one: 1/32 in, half the width of
   * the band that PS 1-19 allows a panel of 1/4 to 3/4 in.
   */
  public static final Length SAME_THICKNESS = Length.ofMillimetres(25.4 / 32);

  /** Nominal thicknesses are words: they are the same or not, but for rounding. */
  private static final double SAME_NOMINAL = 0.05;

  /** A whole rectangular sheet, in any number, its grain along x. */
  public static SheetStock rectangle(
      String name, Length length, Length width, Length thickness, Money price) {
    return new SheetStock(
        name,
        rectangleOutline(length, width),
        List.of(),
        thickness,
        thickness,
        price,
        OptionalInt.empty(),
        Angle.ofDegrees(0));
  }

  /**
   * A rectangle sawn from this sheet: of its wood, any number of it, its longer side along x.
   *
   * @param alongX extent along this sheet's x, and so for y
   */
  public SheetStock part(String partName, Length alongX, Length alongY, Money partPrice) {
    boolean turned = alongX.compareTo(alongY) < 0;
    return new SheetStock(
        partName,
        turned ? rectangleOutline(alongY, alongX) : rectangleOutline(alongX, alongY),
        List.of(),
        thickness,
        nominalThickness,
        partPrice,
        OptionalInt.empty(),
        Angle.ofDegrees((grain.degrees() + (turned ? 90 : 0)) % 180));
  }

  /** The same sheet under another name. */
  public SheetStock named(String other) {
    return new SheetStock(
        other, outline, defects, thickness, nominalThickness, price, available, grain);
  }

  /** The outline of a rectangular sheet, {@code length} along x and {@code width} along y. */
  public static Outline rectangleOutline(Length length, Length width) {
    return Outline.rectangle(
        length.requirePositive("sheet length").millimetres(),
        width.requirePositive("sheet width").millimetres());
  }

  /** The outline of a remnant through the given corners, in either direction round. */
  public static Outline polygonOutline(List<Point> corners) {
    Loop loop = Loop.polygon(corners);
    return Outline.of(loop.signedArea() > 0 ? loop : loop.reversed());
  }

  /** Size along x of the sheet's bounding box. */
  public Length length() {
    return Length.ofMillimetres(outline.box().width());
  }

  /** Size along y of the sheet's bounding box. */
  public Length width() {
    return Length.ofMillimetres(outline.box().height());
  }

  /** Whether the outline is its own bounding box. */
  public boolean isRectangle() {
    double box = outline.box().width() * outline.box().height();
    return outline.edges().size() == 4 && Math.abs(outline.area() - box) <= 1e-9 * box;
  }

  /**
   * Whether the sheet counts as of that thickness: as measured, within {@link #SAME_THICKNESS}, or
   * as sold.
   */
  public boolean isAsThickAs(Length wanted) {
    double measured = thickness.minus(wanted).millimetres();
    double nominal = nominalThickness.minus(wanted).millimetres();
    return Math.abs(measured) <= SAME_THICKNESS.millimetres() || Math.abs(nominal) <= SAME_NOMINAL;
  }

  /** Area of the wood in square millimetres, defects included. */
  public double area() {
    return outline.area();
  }

  /**
   * True distance in millimetres of an outline from the sheet's edge: exact; below 0 where it
   * reaches over the edge, by how far or less (see {@link Clearance#within}).
   */
  public double inside(Outline piece) {
    return Clearance.within(piece, outline);
  }
}

package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.check.CheckException;
import curvestock.check.CheckReport;
import curvestock.check.Expectation;
import curvestock.check.LayoutCheck;
import curvestock.drawing.SheetDrawing;
import curvestock.layout.Layout;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;

/** Plain sheets and pieces in inches, and the independent check as an assertion. */
final class Sheets {

  /** 1/8 in spacing, 1/4 in margin: those of the check values. */
  static final Cutting USUAL = cutting(0.125, 0.25);

  private Sheets() {}

  static SheetStock inches(double length, double width) {
    return SheetStock.rectangle(
        "sheet",
        Length.ofInches(length),
        Length.ofInches(width),
        Length.ofInches(0.5),
        new Money(5000));
  }

  static Cutting cutting(double spacing, double margin) {
    return Cutting.leaving(Length.ofInches(spacing), Length.ZERO, Length.ofInches(margin));
  }

  static Piece sector(double inner, double outer, double degrees) {
    return Piece.of(
        "S",
        "segment",
        new AnnularSector(
            Length.ofInches((inner + outer) / 2),
            Length.ofInches(outer - inner),
            Angle.ofDegrees(degrees)));
  }

  static Piece strip(String id, double length, double width) {
    return Piece.of(id, "strip", new Strip(Length.ofInches(length), Length.ofInches(width)));
  }

  static int most(Piece piece, SheetStock sheet, Cutting cutting, Effort effort, int atMost) {
    Layout layout = pack(piece, sheet, cutting, effort, atMost);
    requireRight(layout);
    return layout.placements().size();
  }

  static Layout pack(Piece piece, SheetStock sheet, Cutting cutting, Effort effort, int atMost) {
    return new Packer(sheet, cutting, new SearchSettings(1, effort))
        .most(piece, atMost, Control.NONE)
        .layout();
  }

  static CheckReport check(Layout layout) {
    try {
      return LayoutCheck.check(SheetDrawing.clean(layout), Expectation.of(layout));
    } catch (CheckException e) {
      throw new AssertionError("the drawing cannot be read back", e);
    }
  }

  /** The layout, drawn and read back, passes the check that shares no geometry with the packer. */
  static void requireRight(Layout layout) {
    assertThat(check(layout).findings()).isEmpty();
  }
}

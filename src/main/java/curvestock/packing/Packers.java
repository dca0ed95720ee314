package curvestock.packing;

import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;

/** Makes packers that share one store of what was packed before. */
public record Packers(PackedStore store) {

  /** Without a store: everything is packed anew. */
  public static final Packers FORGETFUL = new Packers(PackedStore.NONE);

  /** A packer for a kind of sheet. */
  public Packer of(SheetStock sheet, Cutting cutting, SearchSettings settings) {
    return new Packer(sheet, cutting, settings, store);
  }
}

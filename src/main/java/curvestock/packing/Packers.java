package curvestock.packing;

import curvestock.packing.atlas.Atlas;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;

/** Makes packers that share one store of what was packed before, and one atlas. */
public record Packers(PackedStore store, Atlas atlas) {

  /** Without a store: everything is packed anew. */
  public static final Packers FORGETFUL = new Packers(PackedStore.NONE);

  /** With the atlas that is part of the program. */
  public Packers(PackedStore store) {
    this(store, Atlas.SHIPPED);
  }

  /** A packer for a kind of sheet. */
  public Packer of(SheetStock sheet, Cutting cutting, SearchSettings settings) {
    return new Packer(sheet, cutting, settings, this);
  }
}

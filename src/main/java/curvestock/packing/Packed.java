package curvestock.packing;

import curvestock.layout.Layout;

/** A valid layout and how it was found, in plain words (for example "stack" or "search"). */
public record Packed(Layout layout, String how) {}

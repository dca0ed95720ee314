package curvestock.packing;

import curvestock.layout.Layout;

/**
 * The strings by which a caller holds a running search: whether to stop, and how far it has come.
 */
public interface Control {

  /** Never stops, hears nothing. */
  Control NONE = () -> false;

  /** Whether to stop now and keep the best so far. Asked a few times a second. */
  boolean stopped();

  /** Told now and then how much of the present budget is used. */
  default void worked(long done, long budget) {}

  /** Told of each layout that a search found and that holds more than the one before. */
  default void found(Layout fuller) {}

  /** Stops when this one does, and hears nothing of the work: for small packings within a step. */
  default Control silent() {
    return () -> stopped();
  }
}

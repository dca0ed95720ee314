package curvestock.check;

import java.util.ArrayList;
import java.util.List;

/** From what is drawn to the finished size: tabs closed, arcs found again, growth taken back. */
final class FinishedSize {

  private final CutForm form;

  FinishedSize(CutForm form) {
    this.form = form;
  }

  /**
   * The finished shape of a piece.
   *
   * @param chains of one piece: closed lines, and the parts of at most one that tabs interrupt
   * @throws CheckException if they are not of the stated form
   */
  TraceShape of(List<Chain> chains) throws CheckException {
    List<TraceLoop> loops = new ArrayList<>();
    List<Chain> open = new ArrayList<>();
    for (Chain chain : chains) {
      if (chain.closed()) {
        loops.add(new TraceLoop(chain.edges()));
      } else {
        open.add(chain);
      }
    }
    if (!open.isEmpty()) {
      loops.add(new TraceLoop(new Bridges(form).closed(open).edges()));
    }
    if (form.linesWithin() > 0) {
      double gap = form.tabs() > 0 ? form.tabGap() : 0;
      loops.replaceAll(loop -> ArcsFromLines.of(loop, form.linesWithin(), gap));
    }
    if (form.grown() == 0) {
      return TraceShape.of(loops);
    }
    loops.replaceAll(Joined::of);
    return new Shrunk(form).of(TraceShape.of(loops));
  }
}

package curvestock.check;

import java.util.ArrayList;
import java.util.List;

/** From what is drawn to the finished size: tabs closed, arcs found again, growth taken back. */
final class FinishedSize {

  private final CutForm form;
  private final SharedLines shared;

  /** Of outlines that share no cut. */
  FinishedSize(CutForm form) {
    this(form, SharedLines.NONE);
  }

  /**
   * @param shared what is cut on the sheet, for outlines that share cuts
   */
  FinishedSize(CutForm form, SharedLines shared) {
    this.form = form;
    this.shared = shared;
  }

  /**
   * The finished shape of a piece.
   *
   * @param chains of one piece: closed lines, and the parts of those that tabs or shared cuts
   *     interrupt, each in its order
   * @throws CheckException if they are not of the stated form
   */
  TraceShape of(List<Chain> chains) throws CheckException {
    List<TraceLoop> loops = new ArrayList<>();
    List<Chain> open = new ArrayList<>();
    Bridges bridges = new Bridges(form, shared.without(chains));
    for (Chain chain : chains) {
      if (chain.closed()) {
        loops.add(new TraceLoop(chain.edges()));
      } else {
        open.add(chain);
        if (bridges.join(chain, open.get(0))) {
          loops.add(new TraceLoop(bridges.closed(open).edges()));
          open.clear();
        }
      }
    }
    if (!open.isEmpty()) {
      loops.add(new TraceLoop(bridges.closed(open).edges()));
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

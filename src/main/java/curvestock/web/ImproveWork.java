package curvestock.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.app.LaidByHand;
import curvestock.app.Workshop;
import curvestock.layout.LaidSheet;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.PinnedConflictException;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import java.util.List;

/** Goes on from pieces that the user has pinned: quickly first, then at the job's own effort. */
final class ImproveWork extends Work {

  private final Plan basis;
  private final List<LaidSheet> sheets;

  /**
   * @param former whose plan and answers the new ones build on
   * @param basis its plan
   */
  ImproveWork(String id, Work former, Plan basis, List<LaidSheet> sheets) {
    super(id, former.asked(), former.shared());
    this.basis = basis;
    this.sheets = sheets;
    former.comparison().ifPresent(this::keep);
    keep(basis);
  }

  @Override
  void atOnce() {
    // Nothing can be said before the pieces are laid.
  }

  @Override
  void answer() {
    progress().stage("Rearranging around the pinned pieces");
    int best = improve(Effort.QUICK, Integer.MAX_VALUE);
    if (best > 1 && job().search().effort() != Effort.QUICK && !progress().stopped()) {
      improve(job().search().effort(), best);
    }
  }

  /** Improves, and tells what takes fewer sheets than {@code atMost}; gives the fewest so far. */
  private int improve(Effort effort, int atMost) {
    try {
      List<LaidByHand> improved = Workshop.improve(at(effort), HandWork.parted(sheets), progress());
      if (improved.size() < atMost) {
        told(improved);
      }
      return Math.min(atMost, improved.size());
    } catch (Infeasible | PinnedConflictException e) {
      String message =
          e instanceof PinnedConflictException conflict
              ? conflict.words(job().style())
              : e.getMessage();
      events().tell("stuck", Json.text(Json.object().put("message", message)));
      return 1;
    }
  }

  private void told(List<LaidByHand> improved) {
    List<Layout> layouts =
        improved.stream()
            .map(sheet -> new Layout(sheet.sheet(), job().cutting(), sheet.all()))
            .toList();
    Plan found = Workshop.byHand(basis, layouts).numbered(Renumbering.of(sheets, layouts));
    keep(found);
    ObjectNode view = PlanView.of(found, "improved", Gain.words(basis, found, job().currency()));
    for (int i = 0; i < improved.size(); i++) {
      int pinned = improved.get(i).pinned().size();
      int k = 0;
      for (JsonNode placement : view.get("sheets").get(i).get("placements")) {
        ((ObjectNode) placement).put("pinned", k++ < pinned);
      }
    }
    view.put("fingerprint", asked().fingerprint()).put("open", false);
    events().tell("improved", Json.text(view));
  }
}

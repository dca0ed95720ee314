package curvestock.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Layouts that a search finds while it goes on, as far as they hold more than any before. */
final class Fuller {

  /** A kind of piece on a kind of sheet. */
  private record Place(Piece piece, SheetStock sheet) {}

  private final Job job;
  private final Map<Place, Integer> most = new HashMap<>();

  Fuller(Job job) {
    this.job = job;
  }

  /** Remembers how many the layout of one kind holds; gives how many were known before. */
  synchronized int known(Layout layout) {
    int count = layout.placements().size();
    Place place = new Place(layout.placements().get(0).piece(), layout.sheet());
    int before = most.getOrDefault(place, 0);
    most.put(place, Math.max(before, count));
    return before;
  }

  /**
   * The layout as the page draws it; nothing if as many were known to fit, or if it lies on no
   * sheet of the job but on the end of one.
   */
  Optional<ObjectNode> view(Layout layout) {
    if (!job.sheets().contains(layout.sheet())) {
      return Optional.empty();
    }
    int count = layout.placements().size();
    int before = known(layout);
    if (count <= before) {
      return Optional.empty();
    }
    String words =
        "Found: %d pieces (%s) on one sheet of %s%s."
            .formatted(
                count,
                layout.placements().get(0).piece().name(),
                layout.sheet().name(),
                before > 0 ? ", " + (count - before) + " more than before" : "");
    return Optional.of(PlanView.of(job, layout).put("words", words));
  }
}

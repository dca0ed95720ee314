package curvestock.printing;

import curvestock.handwork.MarkingOut;
import curvestock.layout.Layout;
import java.util.List;
import java.util.Optional;

/** A sheet's pieces with their numbers, as a picture of a report. */
record SheetPicture(Layout layout, List<String> labels) implements Illustration {

  SheetPicture {
    labels = List.copyOf(labels);
  }

  @Override
  public void place(PageFlow flow, String caption) {
    flow.flexible(
        SheetMap.height(layout, 1, Double.POSITIVE_INFINITY),
        caption,
        (page, room) ->
            new SheetMap(layout, labels, page, room)
                .drawPieces(MarkingOut.of(layout, Optional.empty())));
  }
}

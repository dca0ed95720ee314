package curvestock.printing;

/** A picture of a report, drawn on its page at the size that it has there. */
public sealed interface Illustration
    permits ReportPictures.Drawn, ReportPictures.Chart, SheetPicture, ToolpathPicture {

  /** Draws it where the flow has room, with its caption below. */
  void place(PageFlow flow, String caption);
}

package curvestock.compare;

import curvestock.job.Job;
import curvestock.sheet.SheetStock;
import java.util.List;
import java.util.Optional;

/**
 * The answer to a {@link Question}.
 *
 * @param mainSheet the sheet that pieces per sheet and turns per sheet are counted on
 * @param options one for each angle that can be cut, in the order asked, those of the scan after
 *     them, mixed plans last
 * @param refused angles that cannot be cut
 * @param recommendation the best of the options; nothing if there are none
 * @param sensitivity how far the recommended option holds
 * @param oneMoreTurn what one more turn of the recommended option adds
 * @param alone a piece of the recommended option that has a sheet to itself
 * @param ears what ears for the rods cost in sheets; nothing if the job has no rods
 * @param reach turns that the sheets asked about give, most turns first; empty if none was asked
 * @param scan turns per sheet against angle, if asked for
 * @param stopped whether it was stopped before its end
 */
public record Comparison(
    Job job,
    Question question,
    SheetStock mainSheet,
    List<SegmentOption> options,
    List<Refusal> refused,
    Optional<Recommendation> recommendation,
    Optional<Sensitivity> sensitivity,
    Optional<MoreTurn> oneMoreTurn,
    Optional<LonePiece> alone,
    Optional<Ears> ears,
    List<Reach> reach,
    Optional<AngleScan> scan,
    boolean stopped) {

  public Comparison {
    options = List.copyOf(options);
    refused = List.copyOf(refused);
    reach = List.copyOf(reach);
  }

  /** The option that divides the helix as the job does, if it was compared. */
  public Optional<SegmentOption> own() {
    Division own = Designs.of(job).own();
    return options.stream().filter(option -> option.division().isLike(own)).findFirst();
  }

  /** The option recommended. */
  public Optional<SegmentOption> best() {
    return recommendation.flatMap(
        choice ->
            options.stream().filter(option -> option.division().equals(choice.best())).findFirst());
  }
}

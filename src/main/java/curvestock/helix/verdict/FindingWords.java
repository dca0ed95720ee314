package curvestock.helix.verdict;

import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;

/** What was found, one sentence for each rule. */
final class FindingWords {

  private final Figures figures;

  FindingWords(Figures figures) {
    this.figures = figures;
  }

  String of(Verdict v) {
    return switch (v.rule()) {
      case GRADE -> grade(v);
      case FREE_HEIGHT -> height(v);
      case RADIUS_BY_STANDARD ->
          measured(v) + "; the standard allows " + needed(v) + " and more (" + source(v) + ")";
      case RADIUS_BY_VEHICLE ->
          measured(v)
              + "; three times the longest vehicle is "
              + needed(v)
              + " (rule of thumb for reliable running)";
      case EASEMENT -> easement(v);
      case LONGEST_VEHICLE ->
          "its trucks are " + measured(v) + " apart, but the radius is only " + needed(v);
      case SUPPORT_ROOM -> supportRoom(v);
      case TRACK_ROOM -> trackRoom(v);
      case SIDE_PLATES -> sidePlates(v);
      case OPENING -> measured(v) + " across for a person inside (wanted " + needed(v) + ")";
      case CLIMB -> measured(v) + " up: more than a person reaches from the floor";
      case TRAIN -> train(v);
      case VERTICAL_CURVE -> verticalCurve(v);
      case LEAD -> lead(v);
      case APPROACH ->
          measured(v)
              + " long: at up to "
              + figures.percent(v.facts().get(Fact.LIMIT))
              + " it can take up an error in height of about "
              + fact(v, Fact.SLACK);
      case FLAT_PATTERN -> pattern(v);
      case SUPPORT_SPACING ->
          measured(v)
              + " apart (rule of thumb for plywood this thick: "
              + fact(v, Fact.CAREFUL)
              + " to "
              + needed(v)
              + ")";
      case SUPPORT_EDGES -> edges(v);
      case ROD_HOLES ->
          fact(v, Fact.HOLE)
              + " holes (of which "
              + fact(v, Fact.SLOPE_SHARE)
              + " allows for the slope); the nearest joint or end is "
              + measured(v)
              + " from a hole's centre, needed "
              + needed(v);
      case HOLE_PATTERNS ->
          Figures.count(v.measured().orElseThrow())
              + " supports per turn on "
              + Figures.count(v.facts().get(Fact.ALL))
              + " pieces: the pieces need different holes";
      case EARS -> ears(v);
      case JOINTS_ON_RISERS -> onRisers(v);
      case JOINT_STAGGER -> stagger(v);
      case SPLICE_PLATE -> plate(v);
      case LEAD_SUPPORTS -> leadSupports(v);
      case APPROACH_SUPPORTS -> approach(v);
    };
  }

  private String grade(Verdict v) {
    String limit =
        switch (v.state()) {
          case OK -> "";
          case MARGINAL -> "; the usual limit is " + ceiling(v) + " (rule of thumb)";
          case FAIL -> "; your limit is " + ceiling(v);
        };
    return figures.percent(v.measured().orElseThrow())
        + ": "
        + fact(v, Fact.RISE)
        + " up over "
        + fact(v, Fact.RUN)
        + " of track"
        + limit
        + "; with the drag of the curve it pulls like "
        + figures.percent(v.facts().get(Fact.WITH_DRAG))
        + " on straight track (an estimate: 0.04 % per degree of curve, as on the prototype)";
  }

  private String ceiling(Verdict v) {
    return figures.percent(v.needed().orElseThrow());
  }

  private String height(Verdict v) {
    String needs = "needed " + needed(v) + ", comfortable " + fact(v, Fact.COMFORTABLE);
    if (!v.facts().containsKey(Fact.OVERLAP)) {
      return measured(v) + " (" + needs + ": " + source(v) + ")";
    }
    boolean under = v.place().orElseThrow() == Place.ENTRY;
    return measured(v)
        + " where the straight track runs "
        + (under ? "under" : "over")
        + " the ring for "
        + fact(v, Fact.OVERLAP)
        + " ("
        + needs
        + ")";
  }

  private String easement(Verdict v) {
    if (v.state() == State.OK) {
      return v.measured().isPresent()
          ? measured(v) + " at the shorter end"
          : "not needed: the track has straights, or the radius is more than 60 gauges";
    }
    return v.facts().containsKey(Fact.SOURCE)
        ? "none, with a radius below 60 gauges; " + source(v) + " gives " + needed(v)
        : "none, with a radius below 60 gauges";
  }

  private String supportRoom(Verdict v) {
    if (v.facts().containsKey(Fact.SOURCE)) {
      return measured(v)
          + " from the middle of the track (wanted "
          + needed(v)
          + ": "
          + source(v)
          + ")";
    }
    return measured(v)
        + " from the middle of the track; the longest vehicle reaches "
        + fact(v, Fact.REACH)
        + ", of which "
        + fact(v, Fact.OVERHANG)
        + " is overhang";
  }

  private String trackRoom(Verdict v) {
    String published =
        v.facts().containsKey(Fact.PUBLISHED)
            ? " (" + source(v) + ": " + fact(v, Fact.PUBLISHED) + ")"
            : "";
    return "tracks "
        + measured(v)
        + " apart; two of the longest vehicles side by side need "
        + fact(v, Fact.REACH)
        + published;
  }

  private String sidePlates(Verdict v) {
    boolean above = v.length(Fact.UP).millimetres() > 0;
    return "they stand out "
        + fact(v, Fact.THICKNESS)
        + " from the edges and "
        + (above ? "stand up " + fact(v, Fact.UP) + " beside the track" : "no higher than the wood")
        + "; the edges are "
        + measured(v)
        + " from the middle of the track, the longest vehicle reaches "
        + fact(v, Fact.REACH);
  }

  private String train(Verdict v) {
    return "it is "
        + figures.turns(v.measured().orElseThrow())
        + " turns of the inner track long"
        + (v.state() == State.OK
            ? ""
            : "; above "
                + figures.turns(v.needed().orElseThrow())
                + " it can pull itself off to the inside (rule of thumb)");
  }

  private String verticalCurve(Verdict v) {
    return measured(v)
        + " long for a change of "
        + figures.percent(v.facts().get(Fact.CHANGE))
        + ", "
        + fact(v, Fact.OFFSET)
        + " off the break (usual length "
        + needed(v)
        + ": a foot in HO, or the longest car, for each 1 %; rule of thumb)";
  }

  private String lead(Verdict v) {
    boolean top = v.place().orElseThrow() == Place.EXIT;
    return measured(v)
        + " of straight in one with the end piece; the slope "
        + (top ? "ends " : "begins ")
        + needed(v)
        + (top ? " beyond the ring" : " before the ring");
  }

  private String pattern(Verdict v) {
    return "flat radius "
        + figures.small((Length) v.measured().orElseThrow())
        + " larger than drawn, "
        + v.facts().get(Fact.MISSING)
        + " less in a turn"
        + (v.state() == State.OK ? "; negligible" : "");
  }

  private String edges(Verdict v) {
    return "the centre line bulges "
        + measured(v)
        + " between supports: "
        + (Figures.count(v.facts().get(Fact.EDGES)) == 2
            ? "support both edges at every station"
            : "one support in the middle will do where no turn stands above, two at the edges"
                + " elsewhere");
  }

  private String ears(Verdict v) {
    return "ears and side plates need "
        + needed(v)
        + " from joint to rod"
        + v.measured().map(has -> "; the nearest are " + measured(v) + " apart").orElse("");
  }

  private static String onRisers(Verdict v) {
    long on = Figures.count(v.measured().orElseThrow());
    long all = Figures.count(v.facts().get(Fact.ALL));
    return on
        + " of "
        + all
        + " joints stand on a riser"
        + (on < all ? " (all do if the supports are a multiple of the pieces per turn)" : "");
  }

  private String stagger(Verdict v) {
    if (v.measured().isEmpty()) {
      return "no joint lies over another";
    }
    return v.length().millimetres() == 0
        ? "the joints of a layer stand one above the other"
        : "the joints of a layer move on by at least " + measured(v) + " from turn to turn";
  }

  private String plate(Verdict v) {
    return measured(v)
        + " wide, the roadbed has room for "
        + needed(v)
        + "; "
        + fact(v, Fact.WOOD)
        + " of wood beside each screw hole"
        + (v.facts().containsKey(Fact.OUT) ? "; it sticks out by " + fact(v, Fact.OUT) : "");
  }

  private String leadSupports(Verdict v) {
    String names = Figures.text(v.facts().get(Fact.SUPPORTS));
    boolean between = v.length(Fact.SPAN).millimetres() >= 2 * v.length(Fact.BEYOND).millimetres();
    return (names.isEmpty() ? "carried by the ring's supports" : "carried by " + names)
        + ", "
        + (between
            ? "longest span " + fact(v, Fact.SPAN)
            : "its end reaches " + fact(v, Fact.BEYOND) + " beyond the last")
        + " (rule of thumb for plywood this thick: up to "
        + needed(v)
        + ")";
  }

  private static String approach(Verdict v) {
    String blocking = Figures.text(v.facts().get(Fact.BLOCKING));
    String touching = Figures.text(v.facts().get(Fact.TOUCHING));
    String leftOut = Figures.text(v.facts().get(Fact.LEFT_OUT));
    String bridged = Figures.text(v.facts().get(Fact.BRIDGED));
    if (v.state() == State.OK) {
      return "none stands in the way of trains or of the lead-in"
          + (leftOut.isEmpty() ? "" : "; left out: " + leftOut)
          + (bridged.isEmpty() ? "" : "; the roadbed is carried by " + bridged);
    }
    String trains = blocking.isEmpty() ? "" : "in the way of trains: " + blocking;
    String wood = touching.isEmpty() ? "" : "through the wood of the lead-in: " + touching;
    return trains + (trains.isEmpty() || wood.isEmpty() ? "" : "; ") + wood;
  }

  private String measured(Verdict v) {
    return figures.length((Length) v.measured().orElseThrow());
  }

  private String needed(Verdict v) {
    return figures.length((Length) v.needed().orElseThrow());
  }

  private String fact(Verdict v, Fact fact) {
    return figures.length(v.length(fact));
  }

  private static String source(Verdict v) {
    return Figures.text(v.facts().get(Fact.SOURCE));
  }
}

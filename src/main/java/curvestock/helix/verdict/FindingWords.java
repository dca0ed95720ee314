package curvestock.helix.verdict;

import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was found, one sentence for each rule. */
final class FindingWords {

  private final Figures figures;

  FindingWords(Figures figures) {
    this.figures = figures;
  }

  /** The sentence, its numbers as fine as it takes not to contradict the verdict. */
  String of(Verdict v) {
    return new FindingWords(figures.telling(v)).words(v);
  }

  private String words(Verdict v) {
    return switch (v.rule()) {
      case GRADE -> grade(v);
      case FREE_HEIGHT -> height(v);
      case RADIUS_BY_STANDARD ->
          "%s; the standard requires %s or more (%s)".formatted(measured(v), needed(v), source(v));
      case RADIUS_BY_VEHICLE ->
          "%s; three times the longest vehicle is %s (rule of thumb for reliable running)"
              .formatted(measured(v), needed(v));
      case EASEMENT -> easement(v);
      case LONGEST_VEHICLE ->
          "trucks %s apart on a radius of only %s".formatted(measured(v), needed(v));
      case SUPPORT_ROOM -> supportRoom(v);
      case TRACK_ROOM -> trackRoom(v);
      case SIDE_PLATES -> sidePlates(v);
      case OPENING ->
          "%s across above the base%s"
              .formatted(
                  measured(v),
                  v.needed().filter(Length.ZERO::equals).isPresent()
                      ? ""
                      : " (%s wanted for a person)".formatted(needed(v)));
      case CLIMB -> measured(v) + " up: higher than a person can reach from the floor";
      case TRAIN -> train(v);
      case VERTICAL_CURVE -> verticalCurve(v);
      case LEAD -> lead(v);
      case APPROACH ->
          "%s of approach track, sloped at up to %s, can take up about %s if the helix comes out too high or too low"
              .formatted(
                  measured(v), figures.percent(v.facts().get(Fact.LIMIT)), fact(v, Fact.SLACK));
      case FLAT_PATTERN -> pattern(v);
      case SUPPORT_SPACING -> measured(v) + " apart along the centre line " + usualSpan(v, 1);
      case SUPPORT_EDGES -> edges(v);
      case ROD_HOLES ->
          "%s holes (%s of it for the slope); the nearest joint or end is %s from the centre of a hole, %s is needed"
              .formatted(
                  figures.style().formatGiven(v.length(Fact.HOLE)),
                  figures.style().formatGiven(v.length(Fact.SLOPE_SHARE)),
                  measured(v),
                  needed(v));
      case HOLE_PATTERNS ->
          "%s supports per turn on %s pieces per turn: the pieces need different holes"
              .formatted(
                  Figures.count(v.measured().orElseThrow()),
                  Figures.count(v.facts().get(Fact.ALL)));
      case EARS -> ears(v);
      case RODS_IN_PLATES -> rodsInPlates(v);
      case JOINTS_ON_RISERS -> onRisers(v);
      case JOINT_STAGGER -> stagger(v);
      case SPLICE_PLATE -> plate(v);
      case LEAD_SUPPORTS -> leadSupports(v);
      case APPROACH_SUPPORTS -> approach(v);
      case BASE -> base(v);
    };
  }

  private String grade(Verdict v) {
    String limit =
        switch (v.state()) {
          case OK -> "";
          case MARGINAL -> "; the typical limit is %s (rule of thumb)".formatted(ceiling(v));
          case FAIL -> "; your limit is " + ceiling(v);
        };
    // Only what is judged may need more decimals.
    Figures usual = new Figures(figures.style());
    return "%s, %s of rise in %s of track%s; with the drag of the curve it pulls like %s on straight track (estimate: 0.04 %% per degree of curve, as on the prototype)"
        .formatted(
            figures.percent(v.measured().orElseThrow()),
            usual.length(v.length(Fact.RISE)),
            usual.length(v.length(Fact.RUN)),
            limit,
            usual.percent(v.facts().get(Fact.WITH_DRAG)));
  }

  private String ceiling(Verdict v) {
    return figures.percent(v.needed().orElseThrow());
  }

  private String height(Verdict v) {
    String needs =
        needed(v).equals(fact(v, Fact.COMFORTABLE))
            ? needed(v) + " is needed"
            : "%s is needed, %s is comfortable".formatted(needed(v), fact(v, Fact.COMFORTABLE));
    String between =
        v.facts().containsKey(Fact.NEAR_END)
            ? "%s, and %s just over the entry or under the exit"
                .formatted(measured(v), fact(v, Fact.NEAR_END))
            : measured(v);
    if (v.facts().containsKey(Fact.COMFORT_SOURCE)) {
      return "%s (%s is needed: %s; %s is comfortable: %s)"
          .formatted(
              between,
              needed(v),
              source(v),
              fact(v, Fact.COMFORTABLE),
              Figures.text(v.facts().get(Fact.COMFORT_SOURCE)));
    }
    if (!v.facts().containsKey(Fact.OVERLAP)) {
      return "%s (%s: %s)".formatted(between, needs, source(v));
    }
    boolean under = v.place().orElseThrow() == Place.ENTRY;
    return "%s where the straight track%s runs %s the ring for %s (%s)"
        .formatted(
            measured(v),
            v.facts().containsKey(Fact.LEAD) ? " (the lead and what follows it)" : "",
            under ? "under" : "over",
            fact(v, Fact.OVERLAP),
            needs);
  }

  private String easement(Verdict v) {
    if (v.state() == State.OK) {
      return v.measured().isPresent()
          ? measured(v) + " long (the shorter of the two)"
          : "not needed: the track has straights or a radius of more than 60 times the gauge";
    }
    return v.facts().containsKey(Fact.SOURCE)
        ? "none, and the radius is less than 60 times the gauge; %s requires one %s long"
            .formatted(source(v), needed(v))
        : "none, and the radius is less than 60 times the gauge";
  }

  private String supportRoom(Verdict v) {
    if (v.facts().containsKey(Fact.SOURCE)) {
      return "%s from the centre line of the track (%s wanted: %s)"
          .formatted(measured(v), needed(v), source(v));
    }
    return "%s from the centre line of the track; the longest vehicle reaches %s, of which %s is overhang%s"
        .formatted(
            measured(v),
            fact(v, Fact.REACH),
            fact(v, Fact.OVERHANG),
            v.state() == State.OK
                ? ""
                : "; with your spare room, %s is needed".formatted(needed(v)));
  }

  private String trackRoom(Verdict v) {
    String published =
        v.facts().containsKey(Fact.PUBLISHED)
            ? " (%s: %s)".formatted(source(v), fact(v, Fact.PUBLISHED))
            : "";
    return "tracks %s apart; two of the longest vehicles side by side need %s%s"
        .formatted(measured(v), fact(v, Fact.REACH), published);
  }

  private String sidePlates(Verdict v) {
    boolean above = v.length(Fact.UP).millimetres() > 0;
    return "they stick out %s from the edges and %s; the edges are %s from the centre line of the track, the longest vehicle reaches %s"
        .formatted(
            fact(v, Fact.THICKNESS),
            above
                ? "stand up %s beside the track".formatted(fact(v, Fact.UP))
                : "are no higher than the plywood",
            measured(v),
            fact(v, Fact.REACH));
  }

  private String train(Verdict v) {
    String turns = figures.turns(v.measured().orElseThrow());
    return v.state() == State.OK
        ? "fills %s of a turn; up to %s is typical (rule of thumb)"
            .formatted(turns, figures.turns(v.needed().orElseThrow()))
        : "fills %s turns; above %s a train can pull itself off the rails to the inside (rule of thumb)"
            .formatted(turns, figures.turns(v.needed().orElseThrow()));
  }

  private String verticalCurve(Verdict v) {
    return "%s long for a %s change of grade; rule of thumb: %s (for each 1 %% of change, %s or the length of your longest car if that is more)"
        .formatted(
            measured(v),
            figures.percent(v.facts().get(Fact.CHANGE)),
            needed(v),
            figures.about(v.length(Fact.LEAST_CAR)));
  }

  private String lead(Verdict v) {
    boolean top = v.place().orElseThrow() == Place.EXIT;
    return (top
            ? "%s of straight roadbed; the slope ends %s beyond the ring"
            : "%s of straight roadbed; the slope begins %s before the ring")
        .formatted(measured(v), needed(v));
  }

  private String pattern(Verdict v) {
    String small = figures.small((Length) v.measured().orElseThrow());
    return v.state() == State.OK
        ? "pieces are cut flat but lie on a slope, which changes their radius by %s: negligible"
            .formatted(small)
        : "pieces cut flat, as drawn, do not fit the slope: their radius should be %s larger, and a turn falls %s short"
            .formatted(small, v.facts().get(Fact.MISSING));
  }

  private String edges(Verdict v) {
    return (Figures.count(v.facts().get(Fact.EDGES)) == 2
            ? "between two supports the curve bows out %s, so support both edges"
            : "the curve bulges %s past the straight line from one support to the next: too little to tip the roadbed")
        .formatted(measured(v));
  }

  private static String rodsInPlates(Verdict v) {
    String names = Figures.text(v.facts().get(Fact.SUPPORTS));
    return v.state() == State.OK
        ? "no washer sits half on a splice plate"
        : "at %s the washers of the rods sit half on the edge of a splice plate and would tilt"
            .formatted(names);
  }

  private String ears(Verdict v) {
    return "ears and side plates need %s from joint to rod%s"
        .formatted(
            needed(v),
            v.measured().map(has -> "; the nearest are " + measured(v) + " apart").orElse(""));
  }

  private static String onRisers(Verdict v) {
    long on = Figures.count(v.measured().orElseThrow());
    long all = Figures.count(v.facts().get(Fact.ALL));
    return (on < all
            ? "%s of %s joints sit on a support (all do if the supports per turn are a multiple of the"
                + " pieces per turn, of both layers where there are two, and the first stands at a joint)"
            : "%s of %s joints sit on a support")
        .formatted(on, all);
  }

  private String stagger(Verdict v) {
    if (v.measured().isEmpty()) {
      return "no joint sits above another";
    }
    return v.length().millimetres() == 0
        ? "joints line up from turn to turn; no harm, since "
            + (v.facts().containsKey(Fact.ALL)
                ? "each sits on a support"
                : "every turn has supports of its own")
        : "joints shift by at least %s from turn to turn".formatted(measured(v));
  }

  private String plate(Verdict v) {
    return "%s wide, and the roadbed has room for %s; %s of wood beside each screw hole%s"
        .formatted(
            measured(v),
            needed(v),
            fact(v, Fact.WOOD),
            v.facts().containsKey(Fact.OUT) ? "; it sticks out by " + fact(v, Fact.OUT) : "");
  }

  private String leadSupports(Verdict v) {
    String names = Figures.text(v.facts().get(Fact.SUPPORTS));
    boolean between = FixWords.isBetween(v);
    return "the lead rests on %s, %s %s"
        .formatted(
            names.isEmpty() ? "the ring's supports" : names,
            between
                ? "and the longest span is %s, from %s"
                    .formatted(fact(v, Fact.SPAN), Figures.text(v.facts().get(Fact.BETWEEN)))
                : "and its end reaches " + fact(v, Fact.BEYOND) + " beyond the last",
            usualSpan(v, between ? 1 : 0.5));
  }

  /** The same words for a span of the ring and of a lead. */
  private String usualSpan(Verdict v, double share) {
    return "(rule of thumb for %splywood this thick: %s to %s, or a little more)"
        .formatted(
            share < 1 ? "an overhang of " : "",
            figures.rough(v.length(Fact.CAREFUL).times(share)),
            figures.rough(v.length(Fact.WIDEST).times(share)));
  }

  private static String base(Verdict v) {
    String names = Figures.text(v.facts().get(Fact.SUPPORTS));
    return names.isEmpty()
        ? "the base reaches under every support"
        : "%s %s beside the base or over its edge"
            .formatted(names, names.contains(",") ? "stand" : "stands");
  }

  private String approach(Verdict v) {
    String close = Figures.text(v.facts().get(Fact.CLOSE));
    List<String> found = new ArrayList<>();
    addNamed(found, "trains would hit ", v, Fact.BLOCKING);
    addNamed(found, "the lead's plywood is in the way of ", v, Fact.TOUCHING);
    addNamed(found, "in one place: ", v, Fact.MEETING);
    if (v.state() != State.FAIL) {
      addLeftOut(found, v, close.isEmpty());
    }
    if (FixWords.isHalfOut(v, close) && !close.contains(", ")) {
      String from = " is less than " + fact(v, Fact.CLEAR) + " from ";
      found.add("what is left of " + close.replaceFirst(" and ", from));
    } else {
      addNamed(found, "less than " + fact(v, Fact.CLEAR) + " apart: ", v, Fact.CLOSE);
    }
    return String.join("; ", found);
  }

  private static void addNamed(List<String> found, String words, Verdict v, Fact fact) {
    String names = Figures.text(v.facts().get(fact));
    if (!names.isEmpty()) {
      found.add(words + names);
    }
  }

  /** Supports of the ring, which are left out on every turn, and those of the leads. */
  private static void addLeftOut(List<String> found, Verdict v, boolean clear) {
    String all = Figures.text(v.facts().get(Fact.LEFT_OUT));
    String bridged = Figures.text(v.facts().get(Fact.BRIDGED));
    String ring = leftOut(all, true);
    String leads = leftOut(all, false);
    if (!ring.isEmpty()) {
      found.add(isOrAre(ring) + " left out on every turn, to clear trains and the lead");
    }
    if (!bridged.isEmpty()) {
      found.add("instead: " + bridged);
    }
    if (!leads.isEmpty()) {
      found.add(isOrAre(leads) + " left out under the lead, to clear trains and other supports");
    }
    if (all.isEmpty() && clear) {
      found.add("no support is in the way of trains or the lead");
    }
  }

  private static String isOrAre(String names) {
    return names + (names.contains(", ") ? " are" : " is");
  }

  private static String leftOut(String names, boolean ring) {
    return Stream.of(names.split(", "))
        .filter(name -> !name.isEmpty() && name.startsWith("S") == ring)
        .map(name -> name.replaceAll(" (inner|outer)", " at the $1 edge"))
        .collect(Collectors.joining(", "));
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

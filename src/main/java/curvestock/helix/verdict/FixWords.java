package curvestock.helix.verdict;

import curvestock.helix.build.Bridging;
import curvestock.helix.spec.Setting;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.Quantity;
import curvestock.units.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What to do where a rule is not met. */
final class FixWords {

  private final Figures figures;

  FixWords(Figures figures) {
    this.figures = figures;
  }

  String of(Verdict v) {
    return v.remedy().map(this::all).orElseGet(() -> advice(v));
  }

  /** All changes of a remedy in one instruction. */
  String all(Remedy remedy) {
    List<Change> all = remedy.changes();
    List<Change> left = new ArrayList<>(all);
    List<String> told = new ArrayList<>();
    while (!left.isEmpty()) {
      Change first = left.remove(0);
      Optional<Change> twin = left.stream().filter(other -> isTwin(first, other)).findFirst();
      twin.ifPresent(left::remove);
      told.add(twin.map(other -> both(first, other)).orElseGet(() -> among(all, first)));
    }
    return (isOfClimb(all) ? "do all of this: " : "") + String.join(", and ", told);
  }

  private static boolean isOfClimb(List<Change> changes) {
    return changes.size() > 1 && changes.get(0).setting().isOfClimb();
  }

  /** One change of several: each of them gives some of the others their sense. */
  private String among(List<Change> all, Change change) {
    boolean wider =
        all.stream()
            .anyMatch(
                each -> each.setting() == Setting.RADIUS && size(each.then()) > size(each.now()));
    if (wider && change.setting() == Setting.SUPPORTS_PER_TURN) {
      return "use %s supports per turn on that wider curve (now %s)"
          .formatted(words(change.setting(), change.then()), words(change.setting(), change.now()));
    }
    // More rise would ask for a still wider curve, so of the climb there is no "at least".
    return change(change, isOfClimb(all) && change.setting().isOfClimb() ? "" : bound(change));
  }

  /**
   * Whether two changes are told in one: new easements at both ends, a lead and the climb on it.
   */
  private static boolean isTwin(Change a, Change b) {
    boolean easements =
        a.setting().isEasement() && b.setting().isEasement() && isNone(a.now()) && isNone(b.now());
    boolean leads =
        (a.setting() == Setting.ENTRY_CLIMB_LEAD && b.setting() == Setting.ENTRY_LEAD_IN)
            || (a.setting() == Setting.EXIT_CLIMB_LEAD && b.setting() == Setting.EXIT_LEAD_IN);
    return a.then().equals(b.then()) && (easements || leads);
  }

  private String both(Change a, Change b) {
    String then = words(a.setting(), a.then());
    if (a.setting().isEasement()) {
      return "add an easement at least %s long at the entry and at the exit".formatted(then);
    }
    String climb = words(a.setting(), a.now());
    String lead = words(b.setting(), b.now());
    return "make the lead and the climb lead at the %s both %s%s (now %s)"
        .formatted(
            a.setting() == Setting.ENTRY_CLIMB_LEAD ? "entry" : "exit",
            bound(a),
            then,
            climb.equals(lead) ? lead : lead + " and " + climb);
  }

  /** What no figure of the job can fix. */
  private String advice(Verdict v) {
    return switch (v.rule()) {
      case GRADE -> "try a wider curve: less rise would leave your trains less height";
      case FREE_HEIGHT -> height(v);
      case RADIUS_BY_STANDARD, RADIUS_BY_VEHICLE ->
          "run your longest vehicles around a mock-up of this curve before you cut";
      case CLIMB ->
          "check the units of climb, rise and turns; if you do mean that height, tie the tower to the"
              + " building and plan safe access, as local codes ask";
      case TRAIN ->
          "run trains up to "
              + figures.atMost(v.length(Fact.LIMIT))
              + ", or put the heavy cars in front";
      case EASEMENT ->
          "at each end, add an easement at least as long as your longest car (rule of thumb; `easement:` under `bottom:` and `top:`)";
      case VERTICAL_CURVE ->
          "run your longest cars, coupled, slowly over a mock-up of this bend before you cut";
      case FLAT_PATTERN ->
          "write a radius %s larger into the job; the turns are then %s too long in all: cut the last piece that much shorter, or let the exit stand that much further on"
              .formatted(
                  figures.small((Length) v.measured().orElseThrow()),
                  v.facts().get(Fact.MISSING_IN_ALL));
      case SUPPORT_SPACING ->
          "add a support of your own in the widest gap, or use more supports per turn";
      case ROD_HOLES ->
          "leave out `first-at` so that Curvestock places the supports, or use another number of"
              + " supports per turn";
      case RODS_IN_PLATES ->
          "move the supports clear of the joints (`first-at`), or give the plates another width (`inset`) or length, so that each washer lies wholly on its plate or clear of it";
      case EARS -> "use shorter side plates, narrower ears, or supports further from the joints";
      case SPLICE_PLATE ->
          "use fewer screws or a longer plate: less than "
              + figures.length(v.length(Fact.WOOD_NEEDED))
              + " of wood can split";
      case LEAD_SUPPORTS ->
          v.place().orElseThrow() == Place.ENTRY
              ? "add a support of your own in the gap, or use more supports per turn"
              : exitLead(v);
      case APPROACH_SUPPORTS -> approach(v);
      case BASE ->
          "set a pad under %s, %s across the track and %s along it, of plywood as thick as the base and level with it, sawn to fit where it meets the base, and screwed to the frame under the base or to a leg down to the floor"
              .formatted(
                  Figures.text(v.facts().get(Fact.SUPPORTS)).contains(",") ? "each" : "it",
                  pad(v.length(Fact.PAD_ACROSS)),
                  pad(v.length(Fact.PAD_ALONG)));
      default -> "";
    };
  }

  /** What holds up the exit's lead, or stiffens it where nothing does. */
  private String exitLead(Verdict v) {
    boolean between = isBetween(v);
    return "%s, or glue a strip on edge along each side of the roadbed%s, at least %s deep (%s, rule of thumb), its lower edge flush with the roadbed's underside, built up from thin layers where the roadbed curves (not on the shopping list)"
        .formatted(
            between
                ? "add a support of your own in the gap"
                : "rest its end on the benchwork, its underside %s above the base"
                    .formatted(figures.length(v.length(Fact.UNDERSIDE))),
            between ? ", from " + Figures.text(v.facts().get(Fact.BETWEEN)) : "",
            pad(Bridging.stripDepth((Length) v.measured().orElseThrow())),
            between ? "a sixteenth of the span" : "an eighth of the overhang");
  }

  /** Whether the lead spans too far between its supports, not beyond the last. */
  static boolean isBetween(Verdict v) {
    return v.length(Fact.SPAN).millimetres() >= 2 * v.length(Fact.BEYOND).millimetres();
  }

  /** Rough work: in eighths of an inch or every 5 mm, not smaller. */
  private String pad(Length side) {
    boolean inches = figures.style().unit().isImperial();
    return figures.length(side.up(inches ? Length.ofInches(0.125) : Length.ofMillimetres(5)));
  }

  private String height(Verdict v) {
    if (!v.facts().containsKey(Fact.BEST)) {
      return "";
    }
    String way =
        v.place().orElseThrow() == Place.ENTRY
            ? "an earlier start of the climb"
            : "climbing on beyond the ring";
    String best = figures.atMost(v.length(Fact.BEST));
    return (isEnough(v)
            ? "climb more per turn: %s would give up to %s, but fail another check"
            : "climb more per turn: %s gives at most %s")
        .formatted(way, best);
  }

  /** What was not proposed, though it would do here, breaks another rule. */
  private static boolean isEnough(Verdict v) {
    Length wanted =
        v.state() == Verdict.State.FAIL
            ? (Length) v.needed().orElseThrow()
            : v.length(Fact.COMFORTABLE);
    return v.length(Fact.BEST).compareTo(wanted) >= 0;
  }

  private static String approach(Verdict v) {
    String entry = named(v, Fact.BLOCKING, Fact.TOUCHING);
    String crowded = named(v, Fact.MEETING, Fact.CLOSE);
    return entry.isEmpty()
        ? "move the support along the track until it stands clear (`supports.move`), or leave %s (`supports.skip`)"
            .formatted(isHalfOut(v, crowded) ? "out the rest of it too" : "it out")
        : "move %s along the track, clear of the entry (`supports.move`), or leave it out and support the edge another way (`supports.skip`)%s"
            .formatted(entry, crowded.isEmpty() ? "" : "; also move apart " + crowded);
  }

  /** Whether the plan has left out one edge of the support that is named first. */
  static boolean isHalfOut(Verdict v, String crowded) {
    String station = crowded.replaceFirst(" .*", "");
    return Stream.of(Figures.text(v.facts().get(Fact.LEFT_OUT)).split(", "))
        .anyMatch(name -> name.startsWith(station + " "));
  }

  private static String named(Verdict v, Fact... facts) {
    return Stream.of(facts)
        .map(fact -> Figures.text(v.facts().get(fact)))
        .filter(names -> !names.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** One change as an instruction, with what stands there now. */
  String change(Change change) {
    return change(change, bound(change));
  }

  private String change(Change change, String bound) {
    String then = words(change.setting(), change.then());
    String now = isNone(change.now()) ? "none" : words(change.setting(), change.now());
    return switch (change.setting()) {
      case TURNS -> "climb in %s%s turns (now %s)".formatted(bound, then, now);
      case SUPPORTS_PER_TURN -> "use %s supports per turn (now %s)".formatted(then, now);
      case PLATE_SCREWS -> "use %s screws each side of a joint (now %s)".formatted(then, now);
      case JOINT -> "join the pieces with half-laps, which hang nothing below the roadbed";
      case FIRST_SUPPORT -> "put the first support %s from the ring's entry".formatted(then);
      default ->
          change.now().equals(change.then())
              ? "keep the %s at %s (write it into the job)"
                  .formatted(change.setting().title(), then)
              : "make the %s %s%s (now %s)".formatted(change.setting().title(), bound, then, now);
    };
  }

  private String words(Setting setting, Quantity value) {
    return setting == Setting.STEEPEST_GRADE
        ? figures.percent(value)
        : value instanceof Length length ? figures.length(length) : figures.value(setting, value);
  }

  private static boolean isNone(Quantity now) {
    return now instanceof Length length && length.millimetres() == 0;
  }

  private static String bound(Change change) {
    return size(change.then()) >= size(change.now()) ? "at least " : "at most ";
  }

  private static double size(Quantity quantity) {
    if (quantity instanceof Length length) {
      return length.millimetres();
    }
    if (quantity instanceof Angle angle) {
      return angle.degrees();
    }
    return quantity instanceof Count count ? count.number() : ((Share) quantity).part();
  }
}

package curvestock.helix.spec;

import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of the climb. Any two of turns, climb and rise per turn determine the third; a
 * steepest grade stands in for the rise per turn where that is not given, and is a ceiling to be
 * judged where it is.
 *
 * @param turns how many times the track goes round; fractions allowed
 * @param climb from the foot of the lower vertical curve to the end of the upper one
 * @param risePerTurn from lap to lap, on the steady grade
 * @param steepest greatest grade allowed on the inner track
 * @param exit direction from the centre to the place where the track leaves, if that is fixed
 */
public record Ascent(
    OptionalDouble turns,
    Optional<Length> climb,
    Optional<Length> risePerTurn,
    Optional<Grade> steepest,
    Optional<Angle> exit) {

  private static final double MOST_TURNS = 100;

  /**
   * Checks each value by itself; whether they agree is worked out later, with the radius.
   *
   * @throws IllegalArgumentException if a value given is not above zero, or too few are given
   */
  public Ascent {
    if (turns.isPresent() && !(turns.getAsDouble() > 0 && turns.getAsDouble() <= MOST_TURNS)) {
      throw new IllegalArgumentException(
          "turns must be above 0 and at most 100, but was " + turns.getAsDouble());
    }
    climb.ifPresent(length -> length.requirePositive("climb"));
    risePerTurn.ifPresent(length -> length.requirePositive("rise per turn"));
    steepest.ifPresent(Ascent::requireUphill);
    int known = (turns.isPresent() ? 1 : 0) + (climb.isPresent() ? 1 : 0);
    known += risePerTurn.isPresent() || steepest.isPresent() ? 1 : 0;
    if (known < 2) {
      throw new IllegalArgumentException(
          "the climb must be stated by two of: turns, climb, and rise per turn or steepest grade");
    }
  }

  private static void requireUphill(Grade grade) {
    if (!(grade.ratio() > 0)) {
      throw new IllegalArgumentException("steepest grade must be above 0 %, but was " + grade);
    }
  }

  public static Ascent ofTurnsAndClimb(double turns, Length climb) {
    return new Ascent(
        OptionalDouble.of(turns),
        Optional.of(climb),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  public static Ascent ofTurnsAndRise(double turns, Length risePerTurn) {
    return new Ascent(
        OptionalDouble.of(turns),
        Optional.empty(),
        Optional.of(risePerTurn),
        Optional.empty(),
        Optional.empty());
  }

  public static Ascent ofClimbAndRise(Length climb, Length risePerTurn) {
    return new Ascent(
        OptionalDouble.empty(),
        Optional.of(climb),
        Optional.of(risePerTurn),
        Optional.empty(),
        Optional.empty());
  }

  public static Ascent ofClimbAndSteepest(Length climb, Grade steepest) {
    return new Ascent(
        OptionalDouble.empty(),
        Optional.of(climb),
        Optional.empty(),
        Optional.of(steepest),
        Optional.empty());
  }

  /** The same, with a ceiling for the grade. */
  public Ascent atMost(Grade ceiling) {
    return new Ascent(turns, climb, risePerTurn, Optional.of(ceiling), exit);
  }

  /** The same, leaving in the given direction from the centre. */
  public Ascent leavingAt(Angle direction) {
    return new Ascent(turns, climb, risePerTurn, steepest, Optional.of(direction));
  }
}

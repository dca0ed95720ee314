package curvestock.answer;

import curvestock.plan.Remnant;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.Money;
import curvestock.units.Quantity;
import curvestock.units.Text;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/**
 * A column with how its figure is read from what a row stands for.
 *
 * @param <R> what a row stands for
 */
record Field<R>(Column column, Function<R, Quantity> figure) {

  static <R> Field<R> of(String key, String title, Measure measure, Function<R, Quantity> figure) {
    return new Field<>(new Column(key, title, measure), figure);
  }

  static <R> Field<R> text(String key, String title, Function<R, String> words) {
    return of(key, title, Measure.TEXT, row -> new Text(words.apply(row)));
  }

  static <R> Field<R> count(String key, String title, ToIntFunction<R> number) {
    return of(key, title, Measure.COUNT, row -> new Count(number.applyAsInt(row)));
  }

  static <R> Field<R> length(String key, String title, Function<R, Length> length) {
    return of(key, title, Measure.LENGTH, length::apply);
  }

  static <R> Field<R> sawn(String key, String title, Function<R, Length> length) {
    return of(key, title, Measure.SAWN, length::apply);
  }

  static <R> Field<R> given(String key, String title, Function<R, Length> length) {
    return of(key, title, Measure.GIVEN_LENGTH, length::apply);
  }

  static <R> Field<R> angle(String key, String title, Function<R, Angle> angle) {
    return of(key, title, Measure.ANGLE, angle::apply);
  }

  static <R> Field<R> turns(String key, String title, Function<R, Double> turns) {
    return of(key, title, Measure.TURNS, row -> turned(turns.apply(row)));
  }

  static <R> Field<R> money(String key, String title, Function<R, Money> money) {
    return of(key, title, Measure.MONEY, money::apply);
  }

  /** The longer or the shorter side of what is kept for the next job, if anything is. */
  static <R> Field<R> offcut(
      String key, String title, Function<R, Optional<Remnant>> kept, DoubleBinaryOperator side) {
    return of(
        key,
        title,
        Measure.OFFCUT,
        row ->
            orNone(
                kept.apply(row)
                    .map(Remnant::where)
                    .map(box -> side.applyAsDouble(box.width(), box.height()))
                    .map(Length::ofMillimetres)));
  }

  /** So many turns. */
  static Angle turned(double turns) {
    return Angle.ofDegrees(turns * Angle.FULL_TURN.degrees());
  }

  /** The figure, or an empty cell. */
  static Quantity orNone(Optional<? extends Quantity> figure) {
    return figure.isPresent() ? figure.get() : Text.NONE;
  }
}

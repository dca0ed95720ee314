package curvestock.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthStyleTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "698.5 | INCH | 64 | 27 1/2 in",
        "711.2 | INCH | 64 | 28 in",
        "12.7 | INCH | 16 | 1/2 in",
        "0 | INCH | 16 | 0 in",
        "-12.7 | INCH | 16 | -1/2 in",
        "-38.1 | INCH | 2 | -1 1/2 in",
        "0.1 | INCH | 64 | 0 in",
        "-0.1 | INCH | 64 | 0 in",
        "25.3 | INCH | 16 | 1 in",
        "30.1625 | INCH | 16 | 1 3/16 in",
        "30.1625 | INCH | 8 | 1 1/4 in",
        "30.1625 | INCH | 1 | 1 in",
        "698.5 | INCH | 0 | 27.5 in",
        "8.4666666 | INCH | 0 | 0.333 in",
        "1220 | METRE | 0 | 1.22 m",
        "1220 | CENTIMETRE | 0 | 122 cm",
        "304.8 | FOOT | 0 | 1 ft",
        "1.005 | MILLIMETRE | 0 | 1.01 mm",
        "100 | MILLIMETRE | 0 | 100 mm",
        "-0.004 | MILLIMETRE | 0 | 0 mm",
        "1e6 | MILLIMETRE | 0 | 1000000 mm",
      })
  void format_ofEachStyle_roundsToItsStep(
      double millimetres, LengthUnit unit, int denominator, String expected) {
    assertThat(new LengthStyle(unit, denominator).format(Length.ofMillimetres(millimetres)))
        .isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.236 in | 16 | 0.236 in",
        "3/32 in | 16 | 3/32 in",
        "15/32 in | 2 | 15/32 in",
        "12.1 mm | 16 | 0.476 in",
        "1/8 in | 16 | 1/8 in",
        "1/3 in | 64 | 0.333 in",
        "0 in | 16 | 0 in",
        "0.25 in | 0 | 0.25 in",
      })
  void formatGiven_ofMeasuredLength_neverRoundsToACoarseFraction(
      String given, int denominator, String expected) {
    assertThat(new LengthStyle(LengthUnit.INCH, denominator).formatGiven(Length.parse(given)))
        .isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "166.69 | INCH | 32 | 6 9/16 in | 6 19/32 in",
        "166.6875 | INCH | 32 | 6 9/16 in | 6 9/16 in",
        "0.001 | INCH | 16 | 0 in | 1/16 in",
        "25.5 | INCH | 0 | 1.004 in | 1.01 in",
        "34.65 | MILLIMETRE | 0 | 34.7 mm | 34.7 mm",
        "34.61 | MILLIMETRE | 0 | 34.6 mm | 34.7 mm",
        "0.02 | MILLIMETRE | 0 | 0 mm | 0.1 mm",
        "1790.706 | MILLIMETRE | 0 | 1790.7 mm | 1790.8 mm",
      })
  void formatMadeAndUp_ofWorkedOutLengths_areAsFineAsATool(
      double millimetres, LengthUnit unit, int denominator, String made, String up) {
    LengthStyle style = new LengthStyle(unit, denominator);
    assertThat(style.formatMade(Length.ofMillimetres(millimetres))).isEqualTo(made);
    assertThat(style.formatUp(Length.ofMillimetres(millimetres))).isEqualTo(up);
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 3, 10, 65, 128, Integer.MIN_VALUE})
  void style_withOddFraction_isRefused(int denominator) {
    assertThatThrownBy(() -> new LengthStyle(LengthUnit.INCH, denominator))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("but was 1/" + denominator);
  }

  @Test
  void style_withFractionsOfAMillimetre_isRefused() {
    assertThatThrownBy(() -> new LengthStyle(LengthUnit.MILLIMETRE, 8))
        .hasMessageContaining("inches only");
  }

  /** What is printed reads back to within half a step, and prints the same again. */
  @Test
  void parse_ofWhatWasPrinted_roundTrips() {
    long seed = 20260101;
    SplittableRandom random = new SplittableRandom(seed);
    List<LengthStyle> styles =
        List.of(
            LengthStyle.METRIC,
            LengthStyle.INCH_FRACTIONS,
            LengthStyle.INCH_DECIMALS,
            new LengthStyle(LengthUnit.INCH, 16),
            new LengthStyle(LengthUnit.INCH, 1),
            new LengthStyle(LengthUnit.CENTIMETRE, 0),
            new LengthStyle(LengthUnit.METRE, 0),
            new LengthStyle(LengthUnit.FOOT, 0));
    double[] halfStep = {
      0.005, 25.4 / 128, 0.0127, 25.4 / 32, 12.7, 0.005, 0.05, 304.8 * 0.0005,
    };
    for (int i = 0; i < 20_000; i++) {
      double size = Math.pow(10, random.nextDouble(-3, 6));
      Length length = Length.ofMillimetres(random.nextBoolean() ? size : -size);
      int which = random.nextInt(styles.size());
      String printed = styles.get(which).format(length);
      Length read = Length.parse(printed);
      String context = "seed " + seed + ", step " + i + ": " + length.millimetres() + " mm";

      assertThat(read.millimetres())
          .as(context)
          .isCloseTo(length.millimetres(), within(halfStep[which] * (1 + 1e-9) + 1e-9));
      assertThat(styles.get(which).format(read)).as(context).isEqualTo(printed);
    }
  }

  /** Any text whatever is a finite length or is refused as a length, and never anything else. */
  @Test
  void parse_ofRandomText_isALengthOrRefused() {
    long seed = 20260102;
    SplittableRandom random = new SplittableRandom(seed);
    String[] parts = {
      "1", "0", "27", "9999999", "/", ".", ",", "-", " ", "in", "\"", "'", "ft", "mm", "m", "½",
      "e", "\u00a0", "−", "x", "inch", "NaN", "²", "\uD83D", "0.",
    };
    int lengths = 0;
    for (int i = 0; i < 50_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(8); n >= 0; n--) {
        text.append(parts[random.nextInt(parts.length)]);
      }
      try {
        assertThat(Length.parse(text.toString()).millimetres())
            .as("seed %d: %s", seed, text)
            .isBetween(-1e7, 1e7);
        lengths++;
      } catch (LengthFormatException e) {
        assertThat(e).as("seed %d: %s", seed, text).hasMessageContaining("is not a length");
      }
    }
    assertThat(lengths).as("seed %d: texts that are lengths", seed).isGreaterThan(500);
  }
}

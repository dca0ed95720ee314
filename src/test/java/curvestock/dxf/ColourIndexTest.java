package curvestock.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourIndexTest {

  /**
   * Source: the default colours of the open-source library ezdxf 1.4.4 (MIT), module colors; its
   * values differ from ours by rounding, one step of 255 at most.
   */
  @ParameterizedTest
  @CsvSource({
    "1, ff0000",
    "2, ffff00",
    "3, 00ff00",
    "4, 00ffff",
    "5, 0000ff",
    "6, ff00ff",
    "7, ffffff",
    "8, 808080",
    "9, c0c0c0",
    "10, ff0000",
    "11, ff7f7f",
    "12, a50000",
    "13, a55252",
    "14, 7f0000",
    "15, 7f3f3f",
    "16, 4c0000",
    "17, 4c2626",
    "18, 260000",
    "20, ff3f00",
    "21, ff9f7f",
    "22, a52900",
    "23, a56752",
    "33, a57c52",
    "42, a57c00",
    "63, 91a552",
    "113, 52a57c",
    "140, 00bfff",
    "141, 7fdfff",
    "142, 007ca5",
    "144, 005f7f"
  })
  void colours_areThoseOfTheFormatsList(int index, String published) {
    int wanted = Integer.parseInt(published, 16);
    int ours = ColourIndex.colour(index);
    for (int shift = 0; shift <= 16; shift += 8) {
      assertThat(Math.abs((ours >> shift & 0xff) - (wanted >> shift & 0xff)))
          .isLessThanOrEqualTo(1);
    }
  }

  @ParameterizedTest
  @CsvSource({"#ff0000, 1", "#0000fe, 5", "#000000, 7", "#ffffff, 7", "#7f7f7f, 8", "#ff7f80, 11"})
  void nearest_isTaken(String colour, int index) {
    assertThat(new ColourIndex().take(colour)).isEqualTo(index);
  }

  @Test
  void coloursThatAreNearlyAlike_getIndicesOfTheirOwn() {
    ColourIndex colours = new ColourIndex();

    assertThat(colours.take("#ff0000")).isEqualTo(1);
    assertThat(colours.take("#fe0000")).isEqualTo(10);
    assertThat(colours.take("#fd0000")).isNotIn(1, 10);
  }
}

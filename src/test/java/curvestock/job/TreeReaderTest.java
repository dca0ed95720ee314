package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TreeReaderTest {

  private static List<Problem> problems(String text) {
    JobException e =
        catchThrowableOfType(JobException.class, () -> JobReader.read(text, "job.yaml"));
    assertThat(e).isNotNull();
    return e.problems();
  }

  /** In the texts, ¶ is a line break and ⇥ a tab. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "~~ | 1:1 | the file is empty",
        "# nothing | 1:1 | the file is empty",
        "--- | 1:4 | must be a block of keys",
        "hello | 1:1 | must be a block of keys",
        "- a | 1:1 | but this is a list",
        "curvestock: 1¶title: a: b | 2:9 | put a text that holds a colon in quotes",
        "curvestock: 1¶cutting:¶⇥kerf: 1 | 3:1 | indent with spaces",
        "curvestock: 1¶title: 'open | 2:8 | the closing quote is missing",
        "curvestock: 1¶sheets: [1, 2 | 2:14 | closing ] is missing",
        "curvestock: 1¶print: {unit: in | 2:17 | closing } is missing",
        "curvestock: 1¶title: @home | 2:8 | put the text in quotes",
        "curvestock: 1¶title: \"a\" b | 2:12 | follows a closing quote",
        "cutting:¶  kerf: 1¶   margin: 2 | 3:10 | line up the keys",
        "curvestock: 1¶title | 2:6 | a key without a colon",
        "? [a]: b | 1:3 | a key must be a single word",
        "curvestock: 1¶---¶title: b | 3:1 | a second document begins here",
        "curvestock: 1¶...¶title | 3:1 | one job per file",
        "curvestock: 1¶title: &t x | 2:8 | anchors and aliases",
        "curvestock: 1¶title: &t x¶note: *t | 3:7 | anchors and aliases",
        "curvestock: 1¶title: &t [x] | 2:8 | anchors and aliases",
        "curvestock: 1¶&t title: x | 2:1 | anchors and aliases",
        "curvestock: 1¶title: !!binary aGk= | 2:8 | tags (!)",
        "curvestock: 1¶title: !me x | 2:8 | tags (!)",
        "curvestock: 1¶<<: {title: x} | 2:1 | unknown key \"<<\"",
        "curvestock: 1¶title: a¶title: b | 3:1 | \"title\" is given twice",
        "curvestock: 1¶cutting: {kerf: 1 in, kerf: 2 in} | 2:23 | \"kerf\" is given twice",
      })
  void read_ofTextThatIsNoJob_saysWhereAndWhatInPlainWords(String text, String place, String says) {
    assertThat(problems(text.replace('¶', '\n').replace('⇥', '\t')))
        .extracting(Problem::toString)
        .anySatisfy(line -> assertThat(line).startsWith("job.yaml:" + place + ": ").contains(says));
  }

  @ParameterizedTest
  @CsvSource({"0, 0000", "7, 0007", "65533, none", "55357, D83D", "65534, FFFE", "127, 007F"})
  void read_ofCharacterThatTextHasNot_saysWhichAndWhere(int character, String code) {
    List<Problem> problems = problems("curvestock: 1\nxx: " + (char) character + "\n");

    if (code.equals("none")) {
      assertThat(problems).noneMatch(problem -> problem.message().contains("U+"));
    } else {
      assertThat(problems).hasSize(1);
      assertThat(problems.get(0).line()).isEqualTo(2);
      assertThat(problems.get(0).column()).isEqualTo(5);
      assertThat(problems.get(0).message()).contains("U+" + code);
    }
  }

  @Test
  void read_nestedTooDeep_isRefusedAtTheFirstLevelTooMany() {
    assertThat(problems("a: " + "[".repeat(200_000)))
        .singleElement()
        .hasToString("job.yaml:1:23: nested deeper than 20 levels; no field needs that");
    assertThat(problems("a: " + "{b: ".repeat(200_000)).get(0).message()).contains("20 levels");
  }

  /** A megabyte of anything is dealt with in seconds; the limit is wide for a loaded machine. */
  @ParameterizedTest
  @ValueSource(strings = {"[", "{", "- ", "? ", "a: ", "'", "%", " ", "#", "k: 1\n", "!x ", "1"})
  void read_ofAMegabyteOfOneThing_isRefusedInTime(String thing) {
    String text = "curvestock: 1\nx: " + thing.repeat((1 << 20) / thing.length() - 20);

    assertTimeoutPreemptively(
        Duration.ofSeconds(60), () -> assertThat(problems(text)).isNotEmpty());
  }

  @Test
  void read_ofLongNumbersAndKeys_isRefusedInOurWords() {
    String long3000 = "1".repeat(3000);

    assertThat(problems(BrokenJob.SOUND.replace("count: 3", "count: " + long3000)))
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .startsWith("must be a whole number from 1 to 100000, but was \"1111");
    assertThat(problems("? " + long3000 + "\n: 1\n"))
        .anySatisfy(problem -> assertThat(problem.message()).startsWith("unknown key \"1111"));
  }

  @Test
  void read_ofMoreThanAMegabyte_isRefusedUnread() {
    assertThat(problems("#".repeat((1 << 20) + 1)))
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .contains("1048577 characters; at most 1 MB");
  }

  @Test
  void read_ofManyProblems_stopsListingSomewhere() {
    StringBuilder text = new StringBuilder("curvestock: 1\n");
    for (int i = 0; i < 5000; i++) {
      text.append("key").append(i).append(": 1\n");
    }
    assertThat(problems(text.toString())).hasSize(500);
  }

  @Test
  void read_withByteOrderMarkAndCarriageReturns_isTheSameJob() {
    Job plain = JobReader.read(BrokenJob.SOUND, "job.yaml");

    Job other = JobReader.read("\uFEFF" + BrokenJob.SOUND.replace("\n", "\r\n"), "job.yaml");
    // Without the texts that they were read from.
    assertThat(other.on(other.sheets(), other.cutting()))
        .isEqualTo(plain.on(plain.sheets(), plain.cutting()));
    assertThat(problems("\uFEFFcurvestock: 3").get(0).column()).isEqualTo(13);
  }

  @Test
  void read_afterEmojis_countsColumnsAsTheEditorDoes() {
    assertThat(problems("curvestock: 1\nnote: {🚂🚂: &a in}"))
        .extracting(Problem::toString)
        .anySatisfy(line -> assertThat(line).startsWith("job.yaml:2:12: anchors"));
  }

  @ParameterizedTest
  @CsvSource({
    "curf, kerf",
    "kref, kerf",
    "Kerf, kerf",
    "krf, kerf",
    "segment_angle, segment-angle",
    "segments per turn, segments-per-turn",
  })
  void nearest_ofMisspeltWord_findsIt(String written, String meant) {
    assertThat(
            Words.nearest(written, List.of("margin", "kerf", "segment-angle", "segments-per-turn")))
        .contains(meant);
  }

  @Test
  void nearest_ofAnotherWord_findsNothing() {
    assertThat(Words.nearest("blade", List.of("kerf", "extra", "margin"))).isEmpty();
    assertThat(Words.nearest("k".repeat(100_000), List.of("kerf"))).isEmpty();
  }

  /** Found by noise: such line breaks put the place of a later problem off the end of the file. */
  @ParameterizedTest
  @CsvSource({"0x85", "0x2028", "0x2029"})
  void read_withARareLineBreak_isRefusedWhereItStands(int character) {
    assertThat(problems("curvestock: 1\ntitle: a" + Character.toString(character) + "b\n"))
        .singleElement()
        .extracting(Problem::toString)
        .asString()
        .startsWith("job.yaml:2:9: ")
        .contains("is not allowed in a text file");
  }
}

package curvestock.job;

import java.util.Optional;

/** Says in plain words what the YAML parser did not understand. */
final class SyntaxWords {

  private SyntaxWords() {}

  /**
   * @param problem the parser's own words
   * @param found where it stopped
   * @param begun where the thing began that it was reading, if known
   */
  static void report(String problem, Place found, Optional<Place> begun, Problems problems) {
    String said = problem == null ? "" : problem;
    if (said.contains("unexpected end of stream")) {
      problems.add(
          begun.orElse(found), "", "a text in quotes begins here but the closing quote is missing");
      return;
    }
    problems.add(found, "", plain(said));
  }

  private static String plain(String problem) {
    if (problem.contains("mapping values are not allowed")) {
      return "a second colon on one line, or a line indented too far; put a text that holds a"
          + " colon in quotes, and line up the keys of one block";
    }
    if (problem.contains("(TAB)")) {
      return "a tab; indent with spaces";
    }
    if (problem.contains("cannot start any token")) {
      return "a text must not begin with this sign; put the text in quotes";
    }
    if (problem.contains("expected ',' or ']'")) {
      return "a list in square brackets is not finished: a comma or the closing ] is missing";
    }
    if (problem.contains("expected ',' or '}'")) {
      return "a block in curly brackets is not finished: a comma or the closing } is missing";
    }
    if (problem.contains("expected <block end>")) {
      return "this does not line up with the lines above, or something follows a closing quote;"
          + " give all keys of one block the same indentation";
    }
    if (problem.contains("could not find expected ':'")) {
      return "a key without a colon; write `key: value`";
    }
    if (problem.contains("Expected a field name")) {
      return "a key must be a single word followed by a colon";
    }
    if (problem.contains("<document start>")) {
      return "something follows the end of the job; write one job per file";
    }
    return "this is not readable as YAML (" + problem.lines().findFirst().orElse("no reason") + ")";
  }
}

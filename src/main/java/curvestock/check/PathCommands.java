package curvestock.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.batik.parser.DefaultPathHandler;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.PathParser;

/**
 * The commands of SVG path data.
 *
 * <p>Batik's parser judges the grammar and gives the commands, but in single precision, which is a
 * tenth of a thousandth of a millimetre too coarse at a sheet's size. So the numbers are read from
 * the same text once more in double precision, and each must agree with Batik's.
 */
final class PathCommands {

  /** Farther out than this no sheet reaches. */
  private static final double FARTHEST = 1e6;

  private static final int MOST_COMMANDS = 2_000;
  private static final int LONGEST_SHOWN = 40;

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");

  /** Single precision and the parser's own rounding. */
  private static final double SINGLE_PRECISION = 1e-6;

  /** A command's letter (small where relative) and its numbers; flags are 0 or 1. */
  record Command(char letter, List<Double> values) {

    Command {
      values = List.copyOf(values);
    }

    double value(int index) {
      return values.get(index);
    }
  }

  private PathCommands() {}

  /**
   * @throws CheckException if the data is malformed, unclear or out of bounds
   */
  static List<Command> of(String data) throws CheckException {
    List<Command> coarse = new ArrayList<>();
    PathParser parser = new PathParser();
    parser.setPathHandler(new Recorder(coarse));
    try {
      parser.parse(data);
    } catch (ParseException e) {
      throw new CheckException("malformed path data: " + e.getMessage(), e);
    }
    if (!coarse.isEmpty() && Character.toUpperCase(coarse.get(0).letter()) != 'M') {
      throw new CheckException("malformed path data: it must start with M");
    }
    Matcher number = NUMBER.matcher(data);
    List<Command> commands = new ArrayList<>();
    for (Command command : coarse) {
      List<Double> values = new ArrayList<>();
      for (double value : command.values()) {
        values.add(next(number, value));
      }
      commands.add(new Command(command.letter(), values));
    }
    if (number.find()) {
      throw new CheckException("path data is not clear: too many numbers");
    }
    return commands;
  }

  private static double next(Matcher number, double coarse) throws CheckException {
    if (!number.find()) {
      throw new CheckException("path data is not clear: set every number off by a space");
    }
    double value = Double.parseDouble(number.group());
    if (!(Math.abs(value) <= FARTHEST)) {
      throw new CheckException(
          "a number of the path is out of bounds: "
              + shown(number.group())
              + " (at most 1000000 mm)");
    }
    if (!(Math.abs(value - coarse) <= SINGLE_PRECISION * Math.max(1, Math.abs(value)))) {
      throw new CheckException(
          "path data is not clear: "
              + shown(number.group())
              + " reads as "
              + coarse
              + "; set every number off by a space");
    }
    return value;
  }

  /** A hostile number may have a million digits; a message has room for a few. */
  private static String shown(String number) {
    return number.length() <= LONGEST_SHOWN ? number : number.substring(0, LONGEST_SHOWN) + "...";
  }

  /** Takes down what Batik's parser reports. */
  private static final class Recorder extends DefaultPathHandler {

    private final List<Command> commands;

    Recorder(List<Command> commands) {
      this.commands = commands;
    }

    private void add(char letter, double... values) {
      if (commands.size() >= MOST_COMMANDS) {
        throw new ParseException("more than " + MOST_COMMANDS + " commands", -1, -1);
      }
      commands.add(new Command(letter, Arrays.stream(values).boxed().toList()));
    }

    @Override
    public void movetoAbs(float x, float y) {
      add('M', x, y);
    }

    @Override
    public void movetoRel(float x, float y) {
      add('m', x, y);
    }

    @Override
    public void linetoAbs(float x, float y) {
      add('L', x, y);
    }

    @Override
    public void linetoRel(float x, float y) {
      add('l', x, y);
    }

    @Override
    public void linetoHorizontalAbs(float x) {
      add('H', x);
    }

    @Override
    public void linetoHorizontalRel(float x) {
      add('h', x);
    }

    @Override
    public void linetoVerticalAbs(float y) {
      add('V', y);
    }

    @Override
    public void linetoVerticalRel(float y) {
      add('v', y);
    }

    @Override
    public void arcAbs(
        float rx, float ry, float turn, boolean large, boolean sweep, float x, float y) {
      add('A', rx, ry, turn, large ? 1 : 0, sweep ? 1 : 0, x, y);
    }

    @Override
    public void arcRel(
        float rx, float ry, float turn, boolean large, boolean sweep, float x, float y) {
      add('a', rx, ry, turn, large ? 1 : 0, sweep ? 1 : 0, x, y);
    }

    @Override
    public void closePath() {
      add('Z');
    }

    @Override
    public void curvetoCubicAbs(float a, float b, float c, float d, float e, float f) {
      add('C', a, b, c, d, e, f);
    }

    @Override
    public void curvetoCubicRel(float a, float b, float c, float d, float e, float f) {
      add('c', a, b, c, d, e, f);
    }

    @Override
    public void curvetoCubicSmoothAbs(float a, float b, float c, float d) {
      add('S', a, b, c, d);
    }

    @Override
    public void curvetoCubicSmoothRel(float a, float b, float c, float d) {
      add('s', a, b, c, d);
    }

    @Override
    public void curvetoQuadraticAbs(float a, float b, float c, float d) {
      add('Q', a, b, c, d);
    }

    @Override
    public void curvetoQuadraticRel(float a, float b, float c, float d) {
      add('q', a, b, c, d);
    }

    @Override
    public void curvetoQuadraticSmoothAbs(float a, float b) {
      add('T', a, b);
    }

    @Override
    public void curvetoQuadraticSmoothRel(float a, float b) {
      add('t', a, b);
    }
  }
}

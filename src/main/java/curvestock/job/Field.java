package curvestock.job;

import curvestock.geometry.Point;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * One value of the file and the field it stands in. Each method reads it as one kind of thing; if
 * it is not that, a problem is noted and nothing returned.
 */
final class Field {

  private final Reading reading;
  private final String path;
  private final Node node;

  Field(Reading reading, String path, Node node) {
    this.reading = reading;
    this.path = path;
    this.node = node;
  }

  String path() {
    return path;
  }

  /** The last word of the path. */
  String key() {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  /** Whether it is a single value rather than a list or a block. */
  boolean isText() {
    return node instanceof Node.Text;
  }

  /** Whether {@code true} stands there; notes nothing. */
  boolean isTrue() {
    return node instanceof Node.Text value && value.text().strip().equals("true");
  }

  Reading reading() {
    return reading;
  }

  void note(String message) {
    reading.problems().add(node.place(), path, message);
  }

  /** What stands there, quoted, for messages. */
  String shown() {
    return node.kind();
  }

  /** The text as written, for messages and for readers of special forms. */
  Optional<String> written(String expected) {
    if (node instanceof Node.Text value && !value.text().isBlank()) {
      return Optional.of(value.text().strip());
    }
    note("must be " + expected + ", but was " + node.kind());
    return Optional.empty();
  }

  /** Words on one line, at most {@code longest} characters. */
  Optional<String> line(int longest) {
    Optional<String> text = text(longest);
    if (text.isPresent() && text.get().chars().anyMatch(Character::isISOControl)) {
      note("must be on one line, but was " + Words.quoted(text.get()));
      return Optional.empty();
    }
    return text;
  }

  /** Words on any number of lines. */
  Optional<String> text(int longest) {
    Optional<String> text = written("a text");
    if (text.isPresent() && text.get().length() > longest) {
      note("must have at most " + longest + " characters, but has " + text.get().length());
      return Optional.empty();
    }
    return text;
  }

  /** A length of a piece or a sheet: {@link Lengths#SIZE}. */
  Optional<Length> size() {
    return Lengths.SIZE.read(this);
  }

  /** An angle from {@code least} to {@code most} degrees. */
  Optional<Angle> angle(double least, double most) {
    Optional<Angle> angle =
        written("an angle such as 90").flatMap(text -> parse(() -> Angle.parse(text)));
    if (angle.isPresent() && !(angle.get().degrees() >= least && angle.get().degrees() <= most)) {
      note(
          "must be from "
              + Angle.ofDegrees(least)
              + " to "
              + Angle.ofDegrees(most)
              + ", but was "
              + angle.get());
      return Optional.empty();
    }
    return angle;
  }

  /** A whole number from {@code least} to {@code most}, in decimal digits. */
  Optional<Integer> whole(int least, int most) {
    return Numbers.whole(this, least, most).map(Math::toIntExact);
  }

  /** A number above zero and at most {@code most}: a decimal, or a fraction such as 5 1/4. */
  Optional<Double> amount(double most) {
    return Numbers.amount(this, most);
  }

  Optional<Money> price() {
    return Numbers.price(this);
  }

  Optional<Boolean> flag() {
    return choice(Map.of("true", true, "false", false), List.of("true", "false"));
  }

  /** One of the words, in the order given for messages. */
  <T> Optional<T> choice(Map<String, T> meanings, List<String> words) {
    Optional<String> text = written("one of " + String.join(", ", words));
    if (text.isPresent() && !meanings.containsKey(text.get())) {
      note(
          "must be one of "
              + String.join(", ", words)
              + ", but was "
              + Words.quoted(text.get())
              + Words.nearest(text.get(), words)
                  .map(near -> "; did you mean \"" + near + "\"?")
                  .orElse(""));
    }
    return text.map(meanings::get);
  }

  /** The elements of a list of {@code least} to {@code most} elements, as fields of their own. */
  Optional<List<Field>> items(String what, int least, int most) {
    if (!(node instanceof Node.Items list)) {
      note("must be a list of " + what + ", but was " + node.kind());
      return Optional.empty();
    }
    int size = list.items().size();
    if (size < least || size > most) {
      note("must have " + least + " to " + most + " " + what + ", but has " + size);
      return Optional.empty();
    }
    List<Field> fields = new ArrayList<>();
    for (Node item : list.items()) {
      fields.add(new Field(reading, path + "[" + (fields.size() + 1) + "]", item));
    }
    return Optional.of(fields);
  }

  /** Every element of a list read by {@code reader}; nothing if one of them failed. */
  <T> Optional<List<T>> each(
      String what, int least, int most, Function<Field, Optional<T>> reader) {
    Optional<List<Field>> fields = items(what, least, most);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    List<T> values = new ArrayList<>();
    fields.get().forEach(field -> reader.apply(field).ifPresent(values::add));
    return values.size() == fields.get().size() ? Optional.of(values) : Optional.empty();
  }

  /** A point given as [x, y], in millimetres. */
  Optional<Point> point() {
    Optional<List<Length>> pair =
        node instanceof Node.Items list && list.items().size() == 2
            ? each("lengths", 2, 2, Lengths.COORDINATE::read)
            : Optional.empty();
    if (pair.isEmpty() && !(node instanceof Node.Items list && list.items().size() == 2)) {
      note("must be a point [x, y], such as [12 in, 3 in], but was " + node.kind());
    }
    return pair.map(xy -> new Point(xy.get(0).millimetres(), xy.get(1).millimetres()));
  }

  /** A block with the given keys. */
  Optional<Block> block(String... allowed) {
    if (node instanceof Node.Mapping mapping) {
      return Optional.of(new Block(reading, path, mapping, List.of(allowed)));
    }
    note(
        "must be a block with the keys " + String.join(", ", allowed) + ", but was " + node.kind());
    return Optional.empty();
  }

  private <T> Optional<T> parse(Supplier<T> parser) {
    try {
      return Optional.of(parser.get());
    } catch (IllegalArgumentException e) {
      note(e.getMessage());
      return Optional.empty();
    }
  }
}

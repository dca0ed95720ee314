package curvestock.job;

import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** A mapping whose allowed keys are known: finds fields, and notes unknown and missing ones. */
final class Block {

  private final Reading reading;
  private final String path;
  private final Place place;
  private final int problemsBefore;
  private final Map<String, Field> fields = new LinkedHashMap<>();

  /** Keys that an unknown key was most likely meant to be; they are not noted as missing too. */
  private final Set<String> misspelt = new HashSet<>();

  /** Notes every key of the mapping that is not among {@code allowed}. */
  Block(Reading reading, String path, Node.Mapping mapping, List<String> allowed) {
    this.reading = reading;
    this.path = path;
    this.place = mapping.place();
    this.problemsBefore = reading.problems().count();
    Optional<Node.Entry> before = Optional.empty();
    for (Node.Entry entry : mapping.entries()) {
      if (before.isPresent() && isDecimals(before.get(), entry)) {
        noteComma(before.get(), entry);
      } else if (allowed.contains(entry.key())) {
        fields.put(entry.key(), new Field(reading, pathOf(entry.key()), entry.value()));
      } else {
        noteUnknown(entry, allowed);
      }
      before = Optional.of(entry);
    }
  }

  /** Whether digits stand alone behind a number: {@code {price: 49,90}} is two entries to YAML. */
  private static boolean isDecimals(Node.Entry before, Node.Entry entry) {
    return entry.key().matches("\\d+.*")
        && before.value() instanceof Node.Text number
        && number.text().strip().matches("\\d+");
  }

  private void noteComma(Node.Entry before, Node.Entry entry) {
    String whole = ((Node.Text) before.value()).text().strip();
    reading
        .problems()
        .add(
            entry.place(),
            pathOf(before.key()),
            "within { } a comma begins the next entry; write the number with a point: "
                + before.key()
                + ": "
                + whole
                + "."
                + Words.quoted(entry.key()).replace("\"", ""));
  }

  private void noteUnknown(Node.Entry entry, List<String> allowed) {
    if (reading.problems().isFull()) {
      reading.problems().add(entry.place(), path, "unknown key");
      return;
    }
    Optional<String> meant = Words.nearest(entry.key(), allowed);
    meant.ifPresent(misspelt::add);
    String hint = meant.map(key -> "did you mean \"" + key + "\"? ").orElse("");
    String message =
        "unknown key "
            + Words.quoted(entry.key())
            + "; "
            + hint
            + "allowed here: "
            + String.join(", ", allowed);
    reading.problems().add(entry.place(), path, message);
  }

  Optional<Field> find(String key) {
    return Optional.ofNullable(fields.get(key));
  }

  /**
   * The field, noted as missing if it is not there.
   *
   * @param example what to write, for the message
   */
  Optional<Field> need(String key, String example) {
    Optional<Field> field = find(key);
    if (field.isEmpty() && !misspelt.contains(key)) {
      reading.problems().add(place, pathOf(key), "is missing; write `" + example + "`");
    }
    return field;
  }

  /** The one field of these that is given, noted if there are none or several. */
  Optional<Field> needOneOf(String... keys) {
    List<Field> given = Arrays.stream(keys).flatMap(key -> find(key).stream()).toList();
    if (given.size() == 1) {
      return Optional.of(given.get(0));
    }
    if (given.isEmpty() && Arrays.stream(keys).anyMatch(misspelt::contains)) {
      return Optional.empty();
    }
    String said =
        given.isEmpty()
            ? "none is given"
            : given.stream().map(Field::key).collect(Collectors.joining(" and ")) + " are given";
    note("must have exactly one of " + String.join(", ", keys) + ", but " + said);
    return Optional.empty();
  }

  /** Notes a problem of the block as a whole. */
  void note(String message) {
    reading.problems().add(place, path, message);
  }

  /** Whether nothing was found wrong in this block or below it. */
  boolean isSound() {
    return reading.problems().count() == problemsBefore;
  }

  /**
   * What the supplier makes, if the block is sound; a rule that the made record itself enforces is
   * noted as a problem of the block.
   */
  <T> Optional<T> build(Supplier<T> maker) {
    if (!isSound()) {
      return Optional.empty();
    }
    try {
      return Optional.of(maker.get());
    } catch (IllegalArgumentException e) {
      note(e.getMessage());
      return Optional.empty();
    }
  }

  private String pathOf(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}

package curvestock.job;

import java.util.List;

/**
 * A node of the file's tree. Every value is the text that was written: whether {@code 010} is eight
 * or ten and {@code no} a word or false is for the field to decide, not for YAML.
 */
sealed interface Node {

  Place place();

  /** What it is, for messages. */
  String kind();

  /** A single value; empty if nothing stands after the colon. */
  record Text(Place place, String text) implements Node {
    @Override
    public String kind() {
      return text.isEmpty() ? "nothing" : Words.quoted(text);
    }
  }

  /** A list. */
  record Items(Place place, List<Node> items) implements Node {
    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String kind() {
      return "a list";
    }
  }

  /** Keys with values, in the order of the file, each key once. */
  record Mapping(Place place, List<Entry> entries) implements Node {
    public Mapping {
      entries = List.copyOf(entries);
    }

    @Override
    public String kind() {
      return "a block of keys";
    }
  }

  /** One {@code key: value}; {@code place} is that of the key. */
  record Entry(Place place, String key, Node value) {}
}

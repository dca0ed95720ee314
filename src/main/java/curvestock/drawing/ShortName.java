package curvestock.drawing;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How a part too small for its whole name is called on a picture. */
public final class ShortName {

  private static final List<String> KINDS = List.of("block-", "brace-", "plate-");

  private ShortName() {}

  /** {@code 34-2} for block-34-2, {@code p5} for plate-5; other names as they are. */
  public static String of(String name) {
    return name.replaceFirst("^block-|^(br)ace-|^(p)late-", "$1$2");
  }

  /** How they are read, by an example of each kind among these names; empty if none is shorter. */
  public static Optional<String> legend(Collection<String> names) {
    String examples =
        KINDS.stream()
            .flatMap(kind -> last(names, kind))
            .map(name -> of(name) + " for " + name)
            .collect(Collectors.joining(", "));
    return examples.isEmpty()
        ? Optional.empty()
        : Optional.of("Parts too small for their whole name show it short: " + examples + ".");
  }

  /** The last of the longest tells most, such as 34-2. */
  private static Stream<String> last(Collection<String> names, String kind) {
    return names.stream()
        .filter(name -> name.startsWith(kind))
        .reduce((a, b) -> a.length() > b.length() ? a : b)
        .stream();
  }
}

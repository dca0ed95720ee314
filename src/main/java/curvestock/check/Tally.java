package curvestock.check;

import curvestock.piece.Demand;
import curvestock.piece.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The pieces on all drawings of one kind, against those wanted.
 *
 * @param kind of the drawings
 * @param files how many drawings
 * @param found pieces on them, of all sorts
 * @param wanted pieces of the job, of all sorts
 * @param missing how many of each piece are missing, by id
 * @param surplus how many of each piece are too many, by id
 */
public record Tally(
    DrawingKind kind,
    int files,
    int found,
    int wanted,
    Map<String, Integer> missing,
    Map<String, Integer> surplus) {

  /** Copies the maps. */
  public Tally {
    missing = java.util.Collections.unmodifiableMap(new TreeMap<>(missing));
    surplus = java.util.Collections.unmodifiableMap(new TreeMap<>(surplus));
  }

  /**
   * Compares.
   *
   * @param found by piece id
   */
  static Tally of(DrawingKind kind, int files, List<Demand> wanted, Map<String, Integer> found) {
    Map<String, Integer> missing = new TreeMap<>();
    Map<String, Integer> surplus = new TreeMap<>();
    for (List<Demand> alike : groups(kind, wanted)) {
      // What lies as the strictest asks may also be one that asks for less.
      int carried = 0;
      String last = "";
      for (Demand demand : alike) {
        last = demand.piece().id();
        carried += found.getOrDefault(last, 0) - demand.count();
        if (carried < 0) {
          missing.put(last, -carried);
          carried = 0;
        }
      }
      if (carried > 0) {
        surplus.put(last, carried);
      }
    }
    return new Tally(
        kind,
        files,
        found.values().stream().mapToInt(Integer::intValue).sum(),
        wanted.stream().mapToInt(Demand::count).sum(),
        missing,
        surplus);
  }

  /** A DXF names no pieces: those of one shape and thickness are told apart by grain alone. */
  private static List<List<Demand>> groups(DrawingKind kind, List<Demand> wanted) {
    List<List<Demand>> groups = new ArrayList<>();
    for (Demand demand : wanted) {
      groups.stream()
          .filter(
              group -> kind == DrawingKind.DXF && areAlike(group.get(0).piece(), demand.piece()))
          .findFirst()
          .orElseGet(
              () -> {
                List<Demand> fresh = new ArrayList<>();
                groups.add(fresh);
                return fresh;
              })
          .add(demand);
    }
    groups.forEach(
        group ->
            group.sort(Comparator.comparing(demand -> demand.piece().grain().within().degrees())));
    return groups;
  }

  private static boolean areAlike(Piece a, Piece b) {
    return a.thickness().equals(b.thickness()) && Alike.areAlike(a, b);
  }

  /**
   * In words, a line for each thing to say.
   *
   * @param partial whether pieces may be missing
   */
  public List<String> words(boolean partial) {
    String start = kind.words() + ", " + (files == 1 ? "1 file" : files + " files") + ": ";
    List<String> lines = new ArrayList<>();
    if (!surplus.isEmpty()) {
      lines.add(
          start + "more than wanted: " + list(surplus) + ". Is a sheet or a piece in it twice?");
    }
    if (!missing.isEmpty()) {
      lines.add(
          start
              + (partial ? "not among those given: " : "missing: ")
              + list(missing)
              + (partial
                  ? "."
                  : ". Give the drawings of all sheets, or --partial if only these are meant."));
    }
    if (lines.isEmpty()) {
      lines.add(String.format(Locale.ROOT, "%scomplete, %d of %d pieces", start, found, wanted));
    }
    return lines;
  }

  private static String list(Map<String, Integer> pieces) {
    return pieces.entrySet().stream()
        .map(entry -> entry.getValue() + " x " + Shown.line(entry.getKey()))
        .collect(Collectors.joining(", "));
  }
}

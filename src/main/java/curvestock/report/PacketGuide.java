package curvestock.report;

import curvestock.answer.Cautions;
import curvestock.job.Job;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Says in plain words which file of a shop packet is for what. */
public final class PacketGuide {

  /** What files of one kind are for. */
  private record Entry(String chapter, Pattern path, String use) {
    static Entry of(String chapter, String path, String use) {
      return new Entry(chapter, Pattern.compile(path), use);
    }
  }

  private static final String FIRST = "Read first";
  private static final String HAND = "To cut by hand";
  private static final String MACHINE = "To cut by machine";
  private static final String BUILD = "To build the helix";
  private static final String CHOICE = "Which segment size";
  private static final String DATA = "Data for other programs";

  /** The first that fits a file speaks for it. */
  private static final List<Entry> ENTRIES =
      List.of(
          Entry.of(FIRST, "report\\.html", "everything at a glance, in any browser; needs no net"),
          Entry.of(FIRST, "report\\.pdf", "the same, to print"),
          Entry.of(FIRST, "summary\\.txt", "sheets to buy, cost and layouts in a few lines"),
          Entry.of(FIRST, "helix\\.txt", "whether the helix works, and why"),
          Entry.of(
              HAND,
              "patterns/.*\\.pdf",
              "full-size patterns to glue together: print at 100 %, measure the bars"),
          Entry.of(HAND, "marking-out\\.pdf", "how to mark every piece on its sheet, with numbers"),
          Entry.of(HAND, "trammel\\.pdf", "where to drill the holes of a trammel"),
          Entry.of(
              HAND,
              "footprint\\.pdf",
              "full-size plan of the helix to lay on the bench: print at 100 %, measure the bars"),
          Entry.of(HAND, "labels\\.pdf", "labels to stick on the pieces"),
          Entry.of(
              HAND,
              "sheets/sheet-\\d+\\.(svg|png)",
              "each sheet's layout for people: numbered pieces, title, scale bars"),
          Entry.of(
              MACHINE, "machine\\.txt", "read before you run the machine: size, order, cautions"),
          Entry.of(MACHINE, "test-cut.*\\.(svg|dxf)", "cut this first and measure it"),
          Entry.of(
              MACHINE,
              "sheets/sheet-\\d+-.*\\.svg",
              "each sheet's outlines and marks alone, true to scale in millimetres"),
          Entry.of(MACHINE, ".*\\.dxf", "the same as DXF, in millimetres"),
          Entry.of(MACHINE, "sheets/.*", "further drawings of the sheets"),
          Entry.of(BUILD, "helix-plan\\.(svg|png)", "the helix from above"),
          Entry.of(BUILD, "helix-side\\.(svg|png)", "the helix unrolled, with its heights"),
          Entry.of(
              BUILD,
              "helix-ends\\.(svg|png)",
              "entry and exit from the side: lead-in, climb-lead, vertical curve"),
          Entry.of(BUILD, "schedule\\.csv", "every piece in the order of building, for any table"),
          Entry.of(BUILD, "supports\\.csv", "the height of every support"),
          Entry.of(BUILD, "support-table\\.pdf", "the same to print, with a box to tick"),
          Entry.of(BUILD, "joints\\.csv", "every joint, the pieces that it ties, its screws"),
          Entry.of(BUILD, "cutting-list\\.csv", "what is cut from each board or rod"),
          Entry.of(BUILD, "shopping\\.csv", "what to buy"),
          Entry.of(CHOICE, "compare\\.txt", "segment sizes side by side, and what to choose"),
          Entry.of(CHOICE, "charts/.*", "the same as pictures"),
          Entry.of(
              DATA, "remnants\\.yaml", "offcuts worth keeping, for the next job's `stock-file:`"),
          Entry.of(DATA, ".*\\.json", "everything as numbers"),
          Entry.of(DATA, ".*", "more"));

  private PacketGuide() {}

  /**
   * The text for the folder's reader.
   *
   * @param paths of the files that it holds, relative to it
   * @param unprintable what to know of letters that its PDFs lack
   */
  public static String of(Job job, Collection<String> paths, Optional<String> unprintable) {
    List<String> lines = new ArrayList<>();
    lines.add(job.title() + ": the shop packet");
    lines.add(
        job.invented() ? "The figures of this job are invented, for demonstration only." : "");
    lines.add("");
    lines.add(
        "Lengths are printed with their unit. Drawings are at true scale unless they say so.");
    unprintable.ifPresent(words -> lines.addAll(TextPaper.wrapped("", words)));
    Map<String, List<String>> chapters = chapters(paths);
    chapters.forEach(
        (chapter, entries) -> {
          lines.add("");
          lines.add(chapter);
          lines.addAll(entries);
        });
    lines.add("");
    lines.add("Cautions");
    Cautions.ofPacket().forEach(words -> lines.addAll(TextPaper.wrapped("  ", words)));
    return String.join("\n", lines).replace("\n\n\n", "\n\n") + "\n";
  }

  private static Map<String, List<String>> chapters(Collection<String> paths) {
    Map<String, List<String>> chapters = new LinkedHashMap<>();
    for (String chapter : List.of(FIRST, HAND, MACHINE, BUILD, CHOICE, DATA)) {
      List<String> entries = new ArrayList<>();
      for (Entry entry : ENTRIES) {
        List<String> files =
            new TreeSet<>(paths)
                .stream().filter(path -> entryOf(path).equals(Optional.of(entry))).toList();
        if (entry.chapter().equals(chapter) && !files.isEmpty()) {
          files.forEach(file -> entries.add("  " + file));
          entries.add("      " + entry.use());
        }
      }
      if (!entries.isEmpty()) {
        chapters.put(chapter, entries);
      }
    }
    return chapters;
  }

  private static Optional<Entry> entryOf(String path) {
    return ENTRIES.stream().filter(entry -> entry.path().matcher(path).matches()).findFirst();
  }
}

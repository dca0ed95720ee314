package curvestock.report;

import curvestock.answer.Cautions;
import curvestock.drawing.SheetTitle;
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
  private static final String CHOICE = "Choosing the segment size";
  private static final String DATA = "For later, and for other programs";

  /** The first that fits a file speaks for it. */
  private static final List<Entry> ENTRIES =
      List.of(
          Entry.of(
              FIRST,
              "report\\.html",
              "the whole plan as one web page; opens in any browser, no internet needed"),
          Entry.of(FIRST, "report\\.pdf", "the same, to print"),
          Entry.of(
              FIRST, "summary\\.txt", "what to buy, what it costs and what is cut from each sheet"),
          Entry.of(
              FIRST,
              "helix\\.txt",
              "whether the helix works: every check, every height, the shopping list"),
          Entry.of(
              HAND,
              "patterns/.*\\.pdf",
              "full-size patterns on several pages: measure the scale bars, then tape the pages together"),
          Entry.of(
              HAND,
              "marking-out\\.pdf",
              "how to mark out every piece on its sheet: corners to measure, arcs to swing, order of cuts"),
          Entry.of(HAND, "trammel\\.pdf", "where to drill the trammel's holes"),
          Entry.of(
              HAND,
              "footprint\\.pdf",
              "full-size plan of the helix to lay on the base: measure the scale bars, then tape the pages together"),
          Entry.of(HAND, "labels\\.pdf", "a label for each piece"),
          Entry.of(
              HAND,
              "sheets/sheet-\\d+\\.(svg|png)",
              "picture of each sheet: where its numbered pieces are"),
          Entry.of(
              MACHINE,
              "machine\\.txt",
              "read this before you run the machine: sizes, order, cautions"),
          Entry.of(
              MACHINE,
              "test-(cut|flip).*\\.(svg|dxf)",
              "the test cut: cut it first and measure it; machine.txt says how"),
          Entry.of(
              MACHINE,
              "sheets/sheet-\\d+-.*\\.svg",
              "each sheet for the machine, at true size in millimetres; if there is a flip file, it is run"
                  + " first, with the sheet face down: see machine.txt"),
          Entry.of(MACHINE, ".*\\.dxf", "the same as DXF; the file name ends with the unit"),
          Entry.of(MACHINE, "sheets/.*", "further drawings of the sheets"),
          Entry.of(BUILD, "helix-plan\\.(svg|png)", "the helix from above"),
          Entry.of(BUILD, "helix-side\\.(svg|png)", "the helix rolled out flat, with its heights"),
          Entry.of(
              BUILD,
              "helix-ends\\.(svg|png)",
              "entry and exit from the side: where the track is level, where it climbs, and the curve between"),
          Entry.of(
              BUILD, "schedule\\.csv", "every piece in the order you build, for a spreadsheet"),
          Entry.of(BUILD, "supports\\.csv", "the height of every support, for a spreadsheet"),
          Entry.of(
              BUILD,
              "support-table\\.pdf",
              "the same to print, with boxes to check off, the supports to cut, and how to fasten"
                  + " them"),
          Entry.of(BUILD, "joints\\.csv", "every joint and the two pieces it joins"),
          Entry.of(
              BUILD,
              "cutting-list\\.csv",
              "cut list for the risers: what to cut from each length you buy"),
          Entry.of(BUILD, "shopping\\.csv", "what to buy"),
          Entry.of(CHOICE, "compare\\.txt", "segment sizes side by side"),
          Entry.of(CHOICE, "charts/.*", "the same as a chart"),
          Entry.of(
              DATA,
              "remnants\\.yaml",
              "the offcuts to keep; name this file in your next job under `stock-file:` and Curvestock uses them first"),
          Entry.of(DATA, ".*\\.json", "all figures, for software"),
          Entry.of(DATA, ".*", "everything else"));

  private PacketGuide() {}

  /**
   * The text for the folder's reader.
   *
   * @param paths of the files that it holds, relative to it
   * @param unprintable what to know of letters that its PDFs lack
   */
  public static String of(Job job, Collection<String> paths, Optional<String> unprintable) {
    List<String> lines = new ArrayList<>();
    lines.add(job.title() + ": cutting packet");
    lines.add(job.invented() ? SheetTitle.INVENTED_NOTE : "");
    lines.add("");
    boolean footprint = paths.contains("footprint.pdf");
    if (paths.stream().anyMatch(path -> path.startsWith("patterns/"))) {
      lines.add(
          "Print the patterns%s at 100 %%: they are full size. No other printout is."
              .formatted(footprint ? " and the footprint" : ""));
    }
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

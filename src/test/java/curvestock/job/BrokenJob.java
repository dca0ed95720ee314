package curvestock.job;

import java.util.List;

/**
 * A small sound job with one place broken.
 *
 * @param find what is replaced in {@link #SOUND}
 * @param put what stands there instead
 * @param place line and column of the one problem expected
 * @param says part of what the user must be told
 * @param bySchema whether the schema can see it too
 */
record BrokenJob(String find, String put, String place, String says, boolean bySchema) {

  static final String SOUND =
      """
      curvestock: 1
      title: Test job
      invented: true
      currency: $
      sheets:
        - name: birch
          size: 4x8 ft
          thickness: 0.476 in
          price: 68.00
      cutting:
        kerf: 1/8 in
        margin: 1/4 in
      helix:
        turns: 5 1/4
        radius: 26 in
        width: 4 1/2 in
        segments-per-turn: 4
      pieces:
        - name: plate
          count: 3
          strip: {length: 6 in, width: 4 in}
      search: {seed: 1, effort: normal}
      rates: {feed-per-minute: 20 in, minutes-per-joint: 10, largest-piece: 60x24 in}
      patterns: {paper: A3}
      """;

  private static final String SEARCH = "search: {seed: 1, effort: normal}";

  String text() {
    if (!SOUND.contains(find)) {
      throw new IllegalStateException("the sound job does not hold " + find);
    }
    return SOUND.replace(find, put);
  }

  @Override
  public String toString() {
    return find.strip() + " -> " + put.strip();
  }

  private static BrokenJob seen(String find, String put, String place, String says) {
    return new BrokenJob(find, put, place, says, true);
  }

  /** Sums, crossings, units; and values that YAML 1.1 changes before the schema sees them. */
  private static BrokenJob unseen(String find, String put, String place, String says) {
    return new BrokenJob(find, put, place, says, false);
  }

  /** Breaks that leave readable YAML. */
  static List<BrokenJob> all() {
    return List.of(
        seen("curvestock: 1", "curvestock: 3", "1:13", "must be 2 or 1, the formats this"),
        seen("curvestock: 1\n", "", "1:1", "curvestock: is missing; write `curvestock: 2`"),
        seen("paper: A3", "paper: A5", "24:19", "one of A4, Letter, A3, Tabloid, roll"),
        seen("title: Test job", "title: [a]", "2:8", "title: must be a text, but was a list"),
        seen("title: Test job", "title:", "2:7", "must be a text, but was nothing"),
        unseen("invented: true", "invented: no", "3:11", "one of true, false, but was \"no\""),
        seen("invented: true", "unit: in", "3:1", "did you mean \"units\"?"),
        seen("currency: $", "currency: doubloons", "4:11", "at most 8 characters, but has 9"),
        seen("currency: $", "units: inch", "4:8", "but was \"inch\""),
        seen("currency: $", "print: {unit: ft}", "4:15", "one of in, mm, cm, but was \"ft\""),
        seen("currency: $", "print: {unit: mm, fraction: 8}", "4:8", "for inches only"),
        seen("currency: $", "print: {unit: in, fraction: 10}", "4:8", "but was 1/10"),
        seen("size: 4x8 ft", "size: big", "7:11", "two lengths such as \"4x8 ft\""),
        unseen("size: 4x8 ft", "size: 48x96", "7:11", "\"96\" has no unit"),
        unseen("size: 4x8 ft", "size: 4x8 yd", "7:11", "not a length"),
        unseen("size: 4x8 ft", "size: 4 km x 8 ft", "7:11", "\"4 km\" is not a length"),
        unseen("size: 4x8 ft", "size: 4x800 ft", "7:11", "from 0.1 mm (0.004 in) to 100 m"),
        seen("    size: 4x8 ft\n", "", "6:5", "exactly one of size, corners, but none is given"),
        seen("name: birch", "name: \"\"", "6:11", "must be a text, but was nothing"),
        seen("0.476 in", "-3 mm", "8:16", "from 0.1 mm (0.004 in) to 200 mm"),
        unseen("0.476 in", "0 in", "8:16", "but was \"0 in\""),
        seen("0.476 in", "thin", "8:16", "\"thin\" is not a length"),
        unseen("0.476 in", "1,5 mm", "8:16", "use a point, not a comma"),
        seen("price: 68.00", "price: -1", "9:12", "not negative"),
        seen("price: 68.00", "price: $68", "9:12", "the sign goes to `currency:`"),
        seen("price: 68.00", "price: '68.005'", "9:12", "at most two decimals"),
        seen("    price: 68.00\n", "", "6:5", "`on-hand: true`"),
        seen("price: 68.00", "on-hand: false", "6:5", "price: is missing"),
        seen("price: 68.00", "prize: 68.00", "9:5", "did you mean \"price\"?"),
        seen("price: 68.00", "price: 1\n    available: -1", "10:16", "whole number from 0"),
        seen("price: 68.00", "price: 1\n    grain: sideways", "10:12", "along, across"),
        seen("price: 68.00", "price: 1\n    defects: []", "10:14", "1 to 100 defects, but has 0"),
        seen(
            "price: 68.00",
            "price: 1\n    defects: [{circle: {at: [1 in], radius: 1 in}}]",
            "10:29",
            "must be a point [x, y]"),
        unseen(
            "price: 68.00",
            "price: 1\n    defects: [{circle: {at: [120 in, 0 in], radius: 1 in}}]",
            "10:15",
            "lies outside the sheet"),
        seen("  kerf: 1/8 in\n", "", "11:3", "cutting.kerf: is missing; write `kerf: 1/8 in`"),
        seen("kerf: 1/8 in", "curf: 1/8 in", "11:3", "did you mean \"kerf\"?"),
        unseen("kerf: 1/8 in", "kerf: 1/8", "11:9", "\"1/8\" has no unit"),
        seen("kerf: 1/8 in", "kerf: -1 mm", "11:9", "from 0 to 50.8 mm (2 in)"),
        unseen("kerf: 1/8 in", "kerf: 3 in", "11:9", "but was \"3 in\""),
        unseen("margin: 1/4 in", "margin: 2 m", "12:11", "from 0 to 1 m"),
        unseen("kerf: 1/8 in", "kerf: 1e999 mm", "11:9", "not a length"),
        seen("kerf: 1/8 in", "kerf: NaN", "11:9", "not a length"),
        seen("turns: 5 1/4", "turns: 0", "14:10", "above 0 and at most 1000"),
        seen("turns: 5 1/4", "turns: 1001", "14:10", "but was \"1001\""),
        seen("turns: 5 1/4", "turns: 1:30", "14:10", "but was \"1:30\""),
        seen("turns: 5 1/4", "turns: NaN", "14:10", "but was \"NaN\""),
        unseen(
            "turns: 5 1/4",
            "turns: 5.001",
            "14:3",
            "a last piece of 0.36°, only 4.15 mm (0.163 in) long"),
        unseen("turns: 5 1/4", "turns: 5 1/0", "14:10", "but was \"5 1/0\""),
        seen("turns: 5 1/4", "turns: five", "14:10", "such as 5.25 or 5 1/4"),
        unseen(
            "radius: 26 in",
            "radius: \"28\"",
            "15:11",
            "helix.radius: \"28\" has no unit; write a number with a unit such as \"28 in\" or"
                + " \"711 mm\", or set `units: in` at the top"),
        unseen("radius: 26 in", "radius: 700", "15:11", "\"700 mm\""),
        unseen(
            "radius: 26 in",
            "radius: 2 in",
            "16:10",
            "twice the radius, which is \"2 in\", but was"),
        seen("segments-per-turn: 4", "segments-per-turn: 4.5", "17:22", "whole number from 1"),
        seen("segments-per-turn: 4", "segments-per-turn: 0", "17:22", "from 1 to 360"),
        seen("segments-per-turn: 4", "segment-angle: 0.5", "17:18", "must be from 1° to 360°"),
        seen("segments-per-turn: 4", "segment-angle: 400", "17:18", "but was 400°"),
        seen("segments-per-turn: 4", "segment-angle: right", "17:18", "is not an angle"),
        seen(
            "segments-per-turn: 4",
            "segments-per-turn: 4\n  segment-angle: 90",
            "14:3",
            "segments-per-turn and segment-angle are given"),
        seen("count: 3", "count: 0", "20:12", "pieces[1].count: must be a whole number from 1"),
        unseen("count: 3", "count: 0x10", "20:12", "but was \"0x10\""),
        seen("count: 3", "count: 99999999999999999999", "20:12", "to 100000"),
        unseen("count: 3", "count: 100000", "1:1", "has 100021 pieces"),
        unseen("count: 3", "count: 99000", "1:1", "or raise the limit by `limits: {sheets:"),
        unseen(
            "{length: 6 in, width: 4 in}",
            "{length: 1 in, width: 1/2 in}",
            "1:1",
            "or raise the limit by `limits: {pieces-on-a-sheet:"),
        seen("search: {", "limits: {sheets: 0}\nsearch: {", "22:18", "whole number from 1 to"),
        unseen(
            "search: {",
            "limits: {combinations: 1}\nsearch: {",
            "1:1",
            "so 2 combinations; more than 1"),
        seen("strip: {", "stripe: {", "21:5", "did you mean \"strip\"?"),
        seen("strip: {length: 6 in, width: 4 in}", "strip: 6x4 in", "21:12", "must be a block"),
        seen(
            "strip: {length: 6 in, width: 4 in}",
            "polygon: {corners: [[0 in, 0 in], [1 in, 1 in]]}",
            "21:24",
            "must have 3 to 200 corners, but has 2"),
        unseen(
            "strip: {length: 6 in, width: 4 in}",
            "polygon: {corners: [[0 in, 0 in], [2 in, 2 in], [2 in, 0 in], [0 in, 1 in]]}",
            "21:24",
            "the edge after corner 1 meets the edge after corner 3"),
        unseen(
            "strip: {length: 6 in, width: 4 in}",
            "polygon: {corners: [[0 in, 0 in], [2 in, 2 in], [2 in, 0 in], [0 in, 0 in]]}",
            "21:24",
            "corners 4 and 1 are the same place"),
        unseen(
            "strip: {length: 6 in, width: 4 in}",
            "polygon: {corners: [[0 in, 0 in], [2 in, 2 in], [1 in, 1 in]]}",
            "21:24",
            "turns back on itself at corner 2"),
        seen("count: 3", "count: 3\n    grain: sideways", "21:12", "must be one of free"),
        seen(
            "count: 3",
            "count: 3\n    grain: {direction: 0, within: 91}",
            "21:35",
            "must be from 0° to 90°"),
        seen("effort: normal", "effort: heroic", "22:27", "quick, normal, thorough"),
        seen("seed: 1", "seed: -1", "22:16", "whole number from 0"),
        seen("minutes-per-joint: 10", "minutes-per-joint: 0", "23:52", "above 0 and at most 1000"),
        seen("minutes-per-joint: 10", "parts-per-joint: -1", "23:50", "not negative"),
        seen("minutes-per-joint: 10", "machine-per-hour: $9", "23:51", "the sign goes to"),
        seen("minutes-per-joint: 10", "minute-per-joint: 9", "23:33", "did you mean \"minutes-per"),
        unseen("per-minute: 20 in", "per-minute: 20", "23:26", "\"20\" has no unit"),
        seen("largest-piece: 60x24 in", "largest-piece: big", "23:71", "two lengths such as"),
        seen(SEARCH, SEARCH + "\nmachine: {outlines: bigger}", "23:21", "finished, offset"),
        unseen(SEARCH, SEARCH + "\nmachine: {lines-within: 1 mm}", "23:25", "to 0.2 mm"),
        seen(SEARCH, SEARCH + "\nmachine: {colours: {cut: red}}", "23:26", "\"#ff0000\""),
        unseen(
            SEARCH, SEARCH + "\nmachine: {colours: {cut: '#6b6b6b'}}", "23:10", "must all differ"),
        seen(SEARCH, SEARCH + "\nmachine: {colours: {cutt: '#ff0000'}}", "23:21", "mean \"cut\"?"),
        seen(SEARCH, SEARCH + "\nmachine: {tabs: {count: 4}}", "23:17", "write `width: 1/4 in`"),
        seen(
            SEARCH, SEARCH + "\nmachine: {tabs: {width: 5 mm, count: 0}}", "23:38", "from 1 to 20"),
        seen(SEARCH, SEARCH + "\nmachine: {bed: big}", "23:16", "two lengths such as"),
        seen(SEARCH, SEARCH + "\nmachine: {dxf: {unit: ft}}", "23:23", "one of mm, in"),
        seen("sheets:\n", "stock:\n", "5:1", "unknown key \"stock\""));
  }
}

package curvestock.answer;

import java.util.List;
import java.util.stream.Stream;

/** The cautions that every paper shows, each worded once. */
public enum Cautions {
  PLANNING(
      "These figures are a planning aid. Measure your sheets and the printed scale bars, cut two test"
          + " pieces and try the joint between them, and run your own trains round a mock-up of the curve before you cut the rest."),
  DUST(
      "Wear eye and hearing protection. Wood dust harms the lungs: use extraction and a mask, and"
          + " vacuum rather than sweep."),
  CLAMP(
      "Clamp the work; support the piece and the offcut; never hold a small piece by hand; wait for"
          + " the blade to stop. Unplug before changing a blade or bit. No gloves or loose"
          + " sleeves near a spinning tool."),
  ROUTER("With a router on a trammel, take several shallow passes and never climb-cut."),
  MACHINE(
      "On a CNC router or a laser, keep clamps and screws out of the tool's path, make a dry run above"
          + " the wood, and never leave the machine running alone."),
  FEED(
      "On a CNC router, feed against the bit's rotation. Climb-cut only if the machine's manual allows"
          + " it."),
  LASER(
      "A laser needs fume extraction, a fire extinguisher at hand, and plywood sold as safe for"
          + " lasers. Keep its lid closed. If the laser has no lid, wear laser safety glasses rated for it."),
  LOOSE(
      "A piece that comes loose on the machine can jam or fly: hold each one down by vacuum, tape or"
          + " screws inside its outline before it is cut free."),
  TABS(
      "A piece that comes loose on the machine can jam or fly: leave the tabs alone until the tool has"
          + " stopped, then cut them by hand."),
  SHEETS("A full sheet takes two people to carry. Strap it down for the drive home."),
  RODS(
      "Clamp threaded rod to saw it, and wear safety glasses. Cut ends are sharp: deburr and cap them,"
          + " especially at head height."),
  LIFTING(
      "People reach into a helix and duck under it. If you move it, get help, and set it down on"
          + " scraps of lumber to keep fingers clear. Pad its edges, and leave a way out for whoever is inside."),
  LICENSED(
      "Follow your tools' manuals and local codes. Leave house wiring, and anything hung from a ceiling, to a licensed electrician or builder.");

  private final String words;

  Cautions(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** Where many short blocks are sawn to a stop. */
  public static final String SHORT_BLOCKS =
      "Before you saw blocks: clamp each with the saw's hold-down, keep your hands clear of the blade, and"
          + " never hold a short block by hand. Clear the stop before the blade comes through, so that"
          + " the block cannot jam between them, and let the blade stop before you lift it. Wear eye and"
          + " hearing protection and a dust mask. Your saw's manual comes first.";

  /** On a paper that goes to the saw with the wood. */
  public static final String AT_THE_SAW =
      "Before you cut: eye and hearing protection, a dust mask, the work clamped, and the tool unplugged"
          + " for each change of blade or bit. Your tool's manual comes first.";

  /** For a router bit of up to 1/8 in or 3 mm. */
  public static final String THIN_BIT =
      "A bit this thin snaps easily: take light passes, keep the guard on and wear a face shield.";

  /** In a line, for a screen that has no room for more. */
  public static final String CUTTING_IN_A_LINE =
      "Caution: measure your sheets, cut test pieces, protect eyes, ears and lungs, clamp the work.";

  /** The same of a helix. */
  public static final String BUILDING_IN_A_LINE =
      "Caution: try your trains around a mock-up first. Get help to lift the helix, and pad its edges.";

  /**
   * Those that go with a whole shop packet.
   *
   * @param helix whether a helix is built, and not only pieces cut
   * @param rods whether there are threaded rods
   * @param tabs whether the job's files for machines have tabs that hold pieces
   */
  public static List<String> all(boolean helix, boolean rods, boolean tabs) {
    Cautions other = tabs ? LOOSE : TABS;
    return words(
        rods,
        Stream.of(values())
            .filter(caution -> caution != other && (helix || caution != LIFTING))
            .toArray(Cautions[]::new));
  }

  /** For people who build and lift. */
  public static List<String> ofBuilding(boolean rods) {
    return words(rods, PLANNING, DUST, RODS, LIFTING, LICENSED);
  }

  /** Of rods only where there are some. */
  private static List<String> words(boolean rods, Cautions... cautions) {
    return Stream.of(cautions)
        .filter(caution -> rods || caution != RODS)
        .map(Cautions::words)
        .toList();
  }

  /**
   * For whoever runs a machine.
   *
   * @param tabs whether the job's files have tabs that hold pieces
   */
  public static List<String> ofMachines(boolean tabs) {
    return words(false, tabs ? TABS : LOOSE, MACHINE, FEED, LASER, DUST, LICENSED);
  }

  /** For the first page of a packet. */
  public static List<String> ofPacket() {
    return List.of(PLANNING.words, DUST.words, CLAMP.words, SHEETS.words, LICENSED.words);
  }
}

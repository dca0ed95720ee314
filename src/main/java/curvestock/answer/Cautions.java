package curvestock.answer;

import java.util.ArrayList;
import java.util.List;

/** The cautions that every paper shows, each worded once. */
public enum Cautions {
  PLANNING(
      "These figures are a planning aid. Measure your sheets and the scale bars, cut one test piece"
          + " and try it with your own trains before you cut a stack."),
  DUST(
      "Wear eye and hearing protection. Wood dust harms the lungs: use extraction and a mask, and"
          + " vacuum rather than sweep."),
  CLAMP(
      "Clamp the work; support the piece and the offcut; never hold a small arc by hand; wait until"
          + " the blade stands still. Unplug before changing a blade or bit. No gloves or loose"
          + " sleeves near turning tools."),
  ROUTER("With a router on a trammel take several shallow passes, and never climb-cut."),
  MACHINE(
      "On a machine keep clamps and screws outside the tool's path, air-cut first, and never leave"
          + " it running alone. A laser needs fume extraction, a means to put out a fire, and sheet"
          + " known to be suitable."),
  LOOSE(
      "A piece that comes loose can jam or fly: hold it by tabs, screws in the waste, or vacuum."),
  SHEETS("Carry a full sheet with two people and tie it down on the car."),
  RODS("Cut ends of threaded rod are sharp: deburr and cap them, above all at head height."),
  LIFTING(
      "A helix is a structure that people reach into and duck under. Lift it with two or more people"
          + " and blocks under it, pad its edges, and leave a way out."),
  LICENSED(
      "Follow your tools' manuals and local codes. Leave mains wiring, and structures fixed over"
          + " people's heads, to licensed people.");

  private final String words;

  Cautions(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** Those that go with a whole shop packet. */
  public static List<String> all() {
    List<String> all = new ArrayList<>();
    for (Cautions caution : values()) {
      all.add(caution.words);
    }
    return all;
  }

  /** For people who build and lift. */
  public static List<String> ofBuilding() {
    return List.of(PLANNING.words, DUST.words, RODS.words, LIFTING.words, LICENSED.words);
  }

  /** For whoever runs a machine. */
  public static List<String> ofMachines() {
    return List.of(LOOSE.words, MACHINE.words, DUST.words, LICENSED.words);
  }

  /** For the first page of a packet. */
  public static List<String> ofPacket() {
    return List.of(PLANNING.words, DUST.words, CLAMP.words, SHEETS.words, LICENSED.words);
  }
}

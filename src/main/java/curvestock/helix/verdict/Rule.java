package curvestock.helix.verdict;

/** What is judged. */
public enum Rule {
  GRADE("grade", "grade", Sense.AT_MOST),
  FREE_HEIGHT("free-height", "clearance", Sense.AT_LEAST),
  RADIUS_BY_STANDARD("radius-by-standard", "radius by the standard", Sense.AT_LEAST),
  RADIUS_BY_VEHICLE("radius-by-vehicle", "radius for the longest vehicle", Sense.AT_LEAST),
  EASEMENT("easement", "easement", Sense.AT_LEAST),
  LONGEST_VEHICLE("longest-vehicle", "longest vehicle", Sense.AT_MOST),
  SUPPORT_ROOM("support-room", "room beside the supports", Sense.AT_LEAST),
  TRACK_ROOM("track-room", "room between the tracks", Sense.AT_LEAST),
  SIDE_PLATES("side-plates", "side plates", Sense.AT_LEAST),
  OPENING("opening", "opening inside", Sense.AT_LEAST),
  CLIMB("climb", "climb", Sense.AT_MOST),
  TRAIN("train", "longest train", Sense.AT_MOST),
  VERTICAL_CURVE("vertical-curve", "vertical curve", Sense.AT_LEAST),
  LEAD("lead", "lead", Sense.AT_LEAST),
  APPROACH("approach", "approach", Sense.AT_LEAST),
  FLAT_PATTERN("flat-pattern", "flat pattern", Sense.AT_MOST),
  SUPPORT_SPACING("support-spacing", "support spacing", Sense.AT_MOST),
  SUPPORT_EDGES("support-edges", "supports at both edges", Sense.AT_MOST),
  ROD_HOLES("rod-holes", "rod holes", Sense.AT_LEAST),
  HOLE_PATTERNS("hole-patterns", "hole patterns", Sense.AT_LEAST),
  EARS("ears", "ears beside side plates", Sense.AT_LEAST),
  RODS_IN_PLATES("rods-in-plates", "rods and splice plates", Sense.AT_LEAST),
  JOINTS_ON_RISERS("joints-on-risers", "joints on supports", Sense.AT_LEAST),
  JOINT_STAGGER("joint-stagger", "joints, turn to turn", Sense.AT_LEAST),
  SPLICE_PLATE("splice-plate", "splice plate", Sense.AT_MOST),
  LEAD_SUPPORTS("lead-supports", "supports under the lead", Sense.AT_MOST),
  APPROACH_SUPPORTS("approach-supports", "supports near entry and exit", Sense.AT_MOST),
  BASE("base", "supports on the base", Sense.AT_LEAST);

  /** Which way what is measured must lie from what is needed. */
  public enum Sense {
    AT_LEAST,
    AT_MOST
  }

  private final String key;
  private final String title;
  private final Sense sense;

  Rule(String key, String title, Sense sense) {
    this.key = key;
    this.title = title;
    this.sense = sense;
  }

  /** Stable name for data. */
  public String key() {
    return key;
  }

  /** As a heading. */
  public String title() {
    return title;
  }

  public Sense sense() {
    return sense;
  }
}

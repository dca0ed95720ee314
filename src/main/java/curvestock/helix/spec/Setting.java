package curvestock.helix.spec;

/**
 * A figure of the job's {@code helix:} block that advice may change.
 *
 * <p>Turns are held as an angle (5 1/4 turns are 1890°), numbers as counts, a grade as a share, all
 * else as lengths.
 */
public enum Setting {
  TURNS("turns", "number of turns"),
  RISE_PER_TURN("rise-per-turn", "rise per turn"),
  STEEPEST_GRADE("steepest-grade", "steepest grade"),
  /** To the middle of the roadbed. */
  RADIUS("radius", "radius"),
  WIDTH("width", "roadbed width"),
  TRACK_SPACING("track-spacing", "track spacing"),
  ENTRY_VERTICAL_CURVE("bottom.vertical-curve", "vertical curve at the entry"),
  EXIT_VERTICAL_CURVE("top.vertical-curve", "vertical curve at the exit"),
  ENTRY_CLIMB_LEAD("bottom.climb-lead", "climb lead at the entry"),
  EXIT_CLIMB_LEAD("top.climb-lead", "climb lead at the exit"),
  ENTRY_LEAD_IN("bottom.lead-in", "lead at the entry"),
  EXIT_LEAD_IN("top.lead-in", "lead at the exit"),
  ENTRY_EASEMENT("bottom.easement", "easement at the entry"),
  EXIT_EASEMENT("top.easement", "easement at the exit"),
  /** Another way of joining, named by a text. */
  JOINT("joint", "joint"),
  PLATE_INSET("joint.plate.inset", "inset of the splice plates"),
  PLATE_SCREWS("joint.plate.screws-each-side", "screws each side of a joint"),
  SIDE_PLATE_HEIGHT("joint.side-plates.height", "height of the side plates"),
  SUPPORTS_PER_TURN("supports.per-turn", "supports per turn"),
  FIRST_SUPPORT("supports.first-at", "distance to the first support");

  private final String key;
  private final String title;

  Setting(String key, String title) {
    this.key = key;
    this.title = title;
  }

  /** Path of the key within the helix block. */
  public String key() {
    return key;
  }

  /** Whether it is an easement's length, of which there may be none yet. */
  public boolean isEasement() {
    return this == ENTRY_EASEMENT || this == EXIT_EASEMENT;
  }

  /** Whether it makes the climb steeper or gentler. */
  public boolean isOfClimb() {
    return this == TURNS || this == RISE_PER_TURN;
  }

  /** What a builder calls it, to stand within a sentence. */
  public String title() {
    return title;
  }
}

package curvestock.helix.verdict;

/** What else a verdict knows, beside what was measured and what is needed. */
public enum Fact {
  /** Height gained in a turn. */
  RISE,
  /** Height of the underside over the base. */
  UNDERSIDE,
  /** Length of a turn. */
  RUN,
  /** Grade with the curve's drag. */
  WITH_DRAG,
  /** More than is needed, as a published standard would have it. */
  COMFORTABLE,
  /** Where a figure comes from. */
  SOURCE,
  /** Where the comfortable figure is from, if from elsewhere. */
  COMFORT_SOURCE,
  /** How long two levels lie over each other. */
  OVERLAP,
  /** What is left near entry or exit, where it is less than elsewhere. */
  NEAR_END,
  /** How long the straight roadbed is where the track goes on beyond it. */
  LEAD,
  /** The least that counts as the length of a car. */
  LEAST_CAR,
  /** What can be had at most in this way. */
  BEST,
  /** How far the longest vehicle reaches from the middle of its track. */
  REACH,
  /** How much of that the curve adds. */
  OVERHANG,
  /** What a standard publishes for this case. */
  PUBLISHED,
  THICKNESS,
  /** How far something stands up. */
  UP,
  /** How far something stands out. */
  OUT,
  /** Change of the grade. */
  CHANGE,
  /** Angle that a turn loses. */
  MISSING,
  /** What all turns lose. */
  MISSING_IN_ALL,
  /** Height that can be taken up. */
  SLACK,
  LIMIT,
  /** The careful end of a range. */
  CAREFUL,
  /** The wide end of a range. */
  WIDEST,
  /** Edges to hold at every support, 1 or 2. */
  EDGES,
  /** Diameter of a hole. */
  HOLE,
  /** What the slope adds. */
  SLOPE_SHARE,
  /** How many there are. */
  ALL,
  /** Least wood left beside a screw. */
  WOOD,
  WOOD_NEEDED,
  /** Names of supports. */
  SUPPORTS,
  /** Supports in the way of trains. */
  BLOCKING,
  /** Supports that go through the wood of the lead-in. */
  TOUCHING,
  /** Supports that would stand in one place with another, or with a turn. */
  MEETING,
  /** Supports that stand nearer than a hand's error. */
  CLOSE,
  /** What they should keep. */
  CLEAR,
  /** Supports left out of the approach. */
  LEFT_OUT,
  /** Supports left out whose edge a strip carries. */
  BRIDGED,
  /** The widest span. */
  SPAN,
  /** The supports at its two ends. */
  BETWEEN,
  /** How far an end reaches beyond its last support. */
  BEYOND,
  /** Size across the track of a pad beside the base. */
  PAD_ACROSS,
  /** Its size along the track. */
  PAD_ALONG
}

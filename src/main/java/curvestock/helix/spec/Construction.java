package curvestock.helix.spec;

import curvestock.units.Length;

/** How the pieces are joined to a ring. */
public sealed interface Construction {

  /** Layers of plywood on top of each other. */
  default int layers() {
    return 1;
  }

  /** How far the joint hangs below the plywood. */
  default Length hangsBelow() {
    return Length.ZERO;
  }

  /** In plain words. */
  String title();

  /** Square ends butted, a plate glued and screwed below. */
  record ButtWithPlate(SplicePlate plate) implements Construction {
    @Override
    public Length hangsBelow() {
      return plate.thickness();
    }

    @Override
    public String title() {
      return "butt joints with a splice plate below";
    }
  }

  /**
   * Ends halved in thickness over each other.
   *
   * @param lap length of the overlap along the centre line
   */
  record HalfLap(Length lap) implements Construction {
    /**
     * Checks the value.
     *
     * @throws IllegalArgumentException if the lap is not above zero
     */
    public HalfLap {
      lap.requirePositive("lap");
    }

    @Override
    public String title() {
      return "half-lap joints";
    }
  }

  /** Two layers of the stated plywood, the joints of one in the middle of the other's pieces. */
  record TwoLayers() implements Construction {
    @Override
    public int layers() {
      return 2;
    }

    @Override
    public String title() {
      return "two layers with staggered joints";
    }
  }

  /**
   * Square ends butted, a plate glued upright to each edge of the roadbed.
   *
   * @param length along the track
   * @param height of the plate; what is more than the plywood stands up beside the track
   * @param thickness how far it stands out sideways
   * @param fromRoadbedSheets whether it is cut from the same sheets as the roadbed
   */
  record PlatesBeside(Length length, Length height, Length thickness, boolean fromRoadbedSheets)
      implements Construction {
    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a length is not above zero
     */
    public PlatesBeside {
      length.requirePositive("side plate length");
      height.requirePositive("side plate height");
      thickness.requirePositive("side plate thickness");
    }

    @Override
    public String title() {
      return "butt joints with plates beside";
    }
  }
}

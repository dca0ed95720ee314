package curvestock.compare;

/**
 * What the joints of a helix take.
 *
 * @param joints in all layers; those to the tracks outside are not counted
 * @param plates splice or side plates
 * @param screws for the plates
 * @param glueGrams for plates, laps, or two layers on each other
 * @param assumed whether the job says nothing of its joints, so that the trade's usual is taken
 */
public record JointParts(int joints, int plates, int screws, double glueGrams, boolean assumed) {}

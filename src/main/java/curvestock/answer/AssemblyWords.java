package curvestock.answer;

import curvestock.helix.HelixPlan;
import curvestock.helix.spec.Riser;
import java.util.List;

/** How a turn is put up, in sentences. */
public final class AssemblyWords {

  private final HelixPlan plan;
  private final Figures figures;

  public AssemblyWords(Building helix, Figures figures) {
    this.plan = helix.plan();
    this.figures = figures;
  }

  /** In which order a turn is fitted, measured, glued and run. */
  public List<String> order() {
    boolean blocks = plan.spec().supports().riser() instanceof Riser.WoodBlocks;
    return List.of(
        "Build turn by turn, from the bottom up. "
            + (blocks
                ? "Set the blocks under all the turn's pieces"
                : "Set the lower nuts under all the turn's pieces to the heights listed")
            + (reachesOn()
                ? ". The last piece ends on the first support of the next turn: set that one too. "
                : ". ")
            + "Dry-fit the pieces and check that the joints close. Measure up from the base to the top of the plywood at every support. Where a joint sits on a support, lay both pieces on it before you measure. "
            + (blocks
                ? "Shim a block that is low, trim one that is high"
                : "Turn a nut to put a height right")
            + ", and check the support off in the support table. A height is right if it is within %s (rule of thumb)."
                .formatted(figures.isImperial() ? "1/32 in" : "1 mm"),
        "Glue only when every height of the turn is right, except at the joint at the top of the turn: leave that joint dry, and do not measure there, until the next turn's first piece is on. "
            + (blocks
                ? "To glue, lift the pieces off, glue this turn's blocks in place, and screw the lowest ones to the base. Put the pieces back in order, with glue on the blocks and in the joints. "
                    + (reachesOn()
                        ? "Before you put on the last piece, screw the first one down at S1 and glue the blocks for the end of the last piece on top of it. "
                        : "")
                    + "Clamp the joints and drive the screws down into the blocks."
                    + (reachesOn() ? "" : " The next turn's blocks go on over the screws.")
                : "Glue and clamp the joints, and run the upper nuts down when they are dry.")
            + (plan.stations().hasStrips()
                ? " Fit each edge strip once all the pieces that it touches are glued down."
                : "")
            + " Lay the track and run a train over it before the next turn goes on, and your tallest train under that turn once it is on.");
  }

  /** Whether some piece rests on a support of the next turn too. */
  private boolean reachesOn() {
    return plan.roadbed().pieces().stream()
        .anyMatch(
            piece ->
                piece.stations().stream()
                    .anyMatch(
                        place ->
                            plan.line().turnAt(place.at()) > plan.line().turnAt(piece.from())));
  }
}

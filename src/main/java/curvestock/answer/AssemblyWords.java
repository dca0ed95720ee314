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
        "Glue only when every height of the turn is right: "
            + (blocks
                ? "lift the pieces off, glue this turn's blocks in place, and screw the lowest ones to the base. Put the pieces back with glue on the blocks and in the joints, clamp the joints, and drive the screws down into the blocks. "
                    + (reachesOn()
                        ? "At the first support, screw the first piece down and glue the next turn's blocks onto it before the last piece goes on."
                        : "The next turn's blocks go on over the screws.")
                : "glue and clamp the joints, and run the upper nuts down when they are dry.")
            + (plan.stations().hasStrips()
                ? " Fit an edge strip once every piece that it touches is glued down; one that reaches the next turn's first piece waits for that piece."
                : "")
            + " At the joint at the top of the turn, do not measure, glue or screw until the next turn's first piece is on. Lay the track and run your tallest train over it before the next turn goes on.");
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

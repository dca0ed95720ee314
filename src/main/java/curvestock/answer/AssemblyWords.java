package curvestock.answer;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.BlockScrews;
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
                ? "Set the blocks under all the turn's pieces, leads included"
                : "Set the lower nuts under all the turn's pieces to the heights in support-table.pdf")
            + whereItEnds(blocks)
            + "Dry-fit the pieces and check that the joints close. Measure up from the base to the top of the plywood at every support. "
            + (plan.stations().jointsOnSupports(plan.joints()).isEmpty()
                ? ""
                : "Where a joint sits on a support, lay both pieces on it before you measure. ")
            + (blocks
                ? "Shim a block that is low, trim one that is high"
                : "Turn a nut to put a height right")
            + ", and check the support off in the support table. A height is right if it is within %s (rule of thumb)."
                .formatted(figures.isImperial() ? "1/32 in" : "1 mm"),
        "Get every height of the turn right before you glue, except at its upper end. Leave %s dry for now, and check the height there when you dry-fit the next turn. If it is off, lift the loose end and %s. Glue%s that end with that turn. "
                .formatted(
                    layers() > 1
                        ? reachesOn()
                            ? "the turn's last L2 piece and the L1 piece put up with it"
                            : "the last joint of each layer"
                        : blocks
                            ? "the joint there, and the top of any block under it,"
                            : "the joint there",
                    blocks ? "shim or trim the block" : "turn the nuts",
                    blocks && screws() ? " and screw" : "")
            + (blocks
                ? gluing()
                : "Glue and clamp the joints, and run the upper nuts down when they are dry.")
            + (plan.stations().hasStrips()
                ? " Fit each edge strip once all the pieces that it touches are glued down; one that reaches the dry joint waits for the next turn."
                : "")
            + " Lay the track up to the dry joint and run a train over it before you add the next turn. Once that turn is on, run your tallest train under it.");
  }

  /** With screws where blocks are thick enough for them. */
  private String gluing() {
    boolean screws = screws();
    return "To glue, lift the pieces off and glue this turn's blocks in place"
        + (screws ? "; screw those on the base down to it. " : ". ")
        + "Put the pieces back in order, with glue on the blocks and in the joints. "
        + (reachesOn()
            ? "Before the last piece goes on, %s the roadbed down where the blocks under its end will stand: they will cover that spot. Then glue those blocks' feet in place, and leave their tops dry. "
                .formatted(screws ? "screw" : "clamp")
            : "")
        + "Clamp the joints and "
        + (screws
            ? "drive the screws down into the blocks."
            : "weigh the roadbed down until the glue is dry.")
        + (reachesOn() || !screws ? "" : " The next turn's blocks go on over the screws.");
  }

  /** What of the next turn has to be there already. */
  private String whereItEnds(boolean blocks) {
    if (!reachesOn()) {
      return ". ";
    }
    return layers() > 1
        ? ". The turn's last piece in the upper layer (L2) lies partly on the next turn's first piece in the lower layer (L1): put up that L1 piece now too. "
        : ". The turn's last piece ends on the first support or two of the next turn: "
            + (blocks
                ? "once the piece straight below is laid, stand those blocks on it. "
                : "set the nuts there too. ");
  }

  private boolean screws() {
    return plan.spec().supports().riser() instanceof Riser.WoodBlocks wood
        && BlockScrews.hold(wood);
  }

  private int layers() {
    return plan.spec().construction().layers();
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

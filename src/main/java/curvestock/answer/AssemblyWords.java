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
            + "Dry-fit the pieces and check that the joints close.",
        "Measure up from the base to the top of the plywood at every support. "
            + (plan.stations().jointsOnSupports(plan.joints()).isEmpty()
                ? ""
                : "Where a joint sits on a support, lay both pieces on it before you measure. ")
            + (blocks
                ? "Shim a block that is low, trim one that is high"
                : "Turn a nut to put a height right")
            + ", and check the support off in the support table. A height is right if it is within %s (rule of thumb). Get all of them right before you glue, except at the turn's upper end."
                .formatted(figures.isImperial() ? "1/32 in" : "1 mm"),
        "At the upper end, leave %s dry for now. When you dry-fit the next turn, check the height there again. If it is off, lift the loose end and %s. Glue%s that end when you glue the next turn. The top turn has none after it: glue all of it."
            .formatted(
                layers() > 1
                    ? reachesOn()
                        ? "the turn's last L2 piece and the L1 piece put up with it"
                        : "the last joint of each layer"
                    : blocks
                        ? "the joint and the tops of the "
                            + (plan.stations().jointsOnSupports(plan.joints()).isEmpty()
                                ? "turn's last blocks"
                                : "blocks under it")
                        : "the joint",
                blocks ? "shim the block or sand its top down" : "turn the nuts",
                blocks && screws() ? " and screw" : ""),
        (blocks
                ? gluing()
                : (layers() > 1
                        ? "Now glue and clamp the layers of the rest of the turn"
                        : "Now glue and clamp the other joints")
                    + ", and run the upper nuts down when the glue is dry.")
            + (plan.stations().hasStrips()
                ? " Fit each edge strip once all the pieces that it touches are glued down; one that reaches the dry joint waits for the next turn."
                : ""),
        "Lay the track as far as the pieces are glued, and run a train to there before you add the next turn. Once that turn is on, run your tallest train under it.");
  }

  /** With screws where blocks are thick enough for them. */
  private String gluing() {
    boolean screws = screws();
    return "To glue the turn, lift its pieces off and glue this turn's blocks in place"
        + (screws ? "; screw those on the base down to it. " : ". ")
        + "Put the pieces back in order, with glue on the blocks and in the joints. "
        + (reachesOn()
            ? "Before the last piece goes on, %s down the roadbed at %s, straight below that piece's upper end%s: the next turn's blocks go there. Then%s glue those blocks' feet in place, and leave their tops dry. "
                .formatted(
                    screws ? "screw" : "clamp",
                    next(),
                    screws ? "" : ", until the glue is dry",
                    screws ? "" : " take off the clamps,")
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
        : ". The upper end of the turn's last piece rests on %s of the next turn: set the %s there too%s. "
            .formatted(
                next(), blocks ? "blocks" : "nuts", blocks ? ", once the piece below is laid" : "");
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
    return !ofNextTurn().isEmpty();
  }

  /** For each piece that rests on supports of the next turn too, which these are. */
  private List<List<String>> ofNextTurn() {
    return plan.roadbed().pieces().stream()
        .map(
            piece ->
                piece.stations().stream()
                    .filter(
                        place -> plan.line().turnAt(place.at()) > plan.line().turnAt(piece.from()))
                    .map(place -> place.station().name())
                    .toList())
        .filter(names -> !names.isEmpty())
        .toList();
  }

  /** The same for all turns: {@code S1}, or {@code S1 (on some turns S2 too)}. */
  private String next() {
    List<List<String>> all = ofNextTurn();
    List<String> always =
        all.get(0).stream()
            .filter(name -> all.stream().allMatch(one -> one.contains(name)))
            .toList();
    List<String> sometimes =
        all.stream()
            .flatMap(List::stream)
            .distinct()
            .filter(name -> !always.contains(name))
            .toList();
    return sometimes.isEmpty()
        ? Figures.list(always)
        : always.isEmpty()
            ? "the first supports"
            : "%s (on some turns %s too)".formatted(Figures.list(always), Figures.list(sometimes));
  }
}

package curvestock.helix.build;

import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.build.SupportRow.Part;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.course.HeightProfile;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Heights at every station and turn, all from one datum: the base that the supports stand on.
 *
 * <p>Supports stand at both edges, where trains pass between them and where the turn above puts its
 * load. One in the middle will do on the ring where nothing stands above and the bulge is small; a
 * straight lead would rock on one.
 */
public final class SupportTable {

  private static final double ROUNDING = 1e-6;

  private final HelixSpec spec;
  private final CentreLine line;
  private final HeightProfile profile;
  private final double ringLength;
  private final double run;
  private final boolean bothEverywhere;
  private final PlatesOnSupports plates;
  private final List<SupportRow> rows = new ArrayList<>();
  private final AtomicReference<BlockPlan> blocks = new AtomicReference<>();
  private final AtomicReference<Braces> braces = new AtomicReference<>();

  public SupportTable(
      HelixSpec spec,
      Climb climb,
      CentreLine line,
      HeightProfile profile,
      Joints joints,
      Stations stations) {
    this.spec = spec;
    this.line = line;
    this.profile = profile;
    ringLength = climb.ringLength();
    run = climb.runPerTurn().millimetres();
    plates = new PlatesOnSupports(spec, joints);
    bothEverywhere =
        spec.supports().riser() instanceof Riser.ThreadedRods
            || SupportBulge.of(spec.ground(), spec.supports()).needsBothEdges();
    stations.all().forEach(station -> add(station, stations.bridges()));
    rows.sort(Comparator.comparingDouble(SupportRow::at));
  }

  private void add(Station station, List<Bridge> bridges) {
    double foot = spec.supports().footHeight().millimetres();
    double standsOn = 0;
    for (double at : station.places()) {
      double underside = foot + profile.heightAt(at);
      Part part = part(at);
      boolean middle =
          part == Part.RING
              && station.places().size() == 1
              && station.edges() == Edges.BOTH
              && !bothEverywhere
              // What carries an edge over a gap ends on blocks under that edge.
              && bridges.stream().noneMatch(bridge -> bridge.endsAt(at));
      Edges edges = middle ? Edges.MIDDLE : station.edges();
      rows.add(
          new SupportRow(
              station,
              part,
              turn(part, at),
              at,
              line.bearing(at),
              edges,
              Length.ofMillimetres(underside),
              Length.ofMillimetres(underside).plus(spec.railAboveUnderside()),
              Length.ofMillimetres(underside - standsOn),
              plates.over(at, edges),
              profile.slopeAt(at)));
      standsOn = underside + spec.plywood().millimetres();
    }
  }

  /** The end of the last whole turn stands over the stations of its beginning: one turn more. */
  private int turn(Part part, double at) {
    return part == Part.RING ? (int) Math.floor(at / run + 1e-9) + 1 : line.turnAt(at);
  }

  private Part part(double at) {
    return at < -ROUNDING ? Part.ENTRY : at > ringLength + ROUNDING ? Part.EXIT : Part.RING;
  }

  /** Along which they stand. */
  CentreLine line() {
    return line;
  }

  /** In order of climb. */
  public List<SupportRow> rows() {
    return List.copyOf(rows);
  }

  /** What stands there; empty where the turns hang on rods. */
  public Optional<BlockPlan> blocks() {
    return wood()
        .map(
            riser ->
                blocks.updateAndGet(known -> known == null ? new BlockPlan(riser, this) : known));
  }

  /** What keeps the blocks from swaying; empty where the turns hang on rods. */
  public Optional<Braces> braces() {
    return wood()
        .map(
            riser ->
                braces.updateAndGet(
                    known -> known == null ? new Braces(spec, riser, this) : known));
  }

  private Optional<Riser.WoodBlocks> wood() {
    return spec.supports().riser() instanceof Riser.WoodBlocks riser
        ? Optional.of(riser)
        : Optional.empty();
  }

  /** The row of one of a piece's places. */
  public Optional<SupportRow> at(BedPiece.StationPlace place) {
    return rows.stream()
        .filter(row -> row.at() == place.at())
        .filter(row -> row.station().name().equals(place.station().name()))
        .findFirst();
  }

  /** Where a piece is held at one of its places: at both edges, at one, or in the middle. */
  public Edges edgesAt(BedPiece.StationPlace place) {
    return at(place).map(SupportRow::edges).orElse(Edges.NONE);
  }

  /** Where a splice plate lies on part of a block or washer only. */
  public List<SupportRow> partlyUnderPlates() {
    return rows.stream()
        .filter(row -> row.plate().millimetres() > 0 && plates.isPartlyOver(row.at(), row.edges()))
        .toList();
  }

  /** The rows of one turn of the ring (from 1). */
  public List<SupportRow> ofTurn(int turn) {
    return rows.stream().filter(row -> row.part() == Part.RING && row.turn() == turn).toList();
  }

  /** The rows of a lead, or of the whole ring. */
  public List<SupportRow> of(Part part) {
    return rows.stream().filter(row -> row.part() == part).toList();
  }
}

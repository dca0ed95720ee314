package curvestock.helix.build;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.helix.build.BedPiece.StationPlace;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.piece.AnnularSector;
import curvestock.piece.FreeShape;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Every piece of roadbed in its place, from the bottom up, and the kinds to cut.
 *
 * <p>The first and last piece of each layer carry their straight lead in one piece, so that no
 * joint falls where the climb starts.
 */
public final class Roadbed {

  /** A line of more parts than a straight, an arc and a straight holds an easement. */
  private static final int MOST_PARTS_NAMED = 3;

  private final HelixSpec spec;
  private final LengthStyle style;
  private final CentreLine line;
  private final Climb climb;
  private final Stations stations;
  private final HoleRule holeRule;
  private final PieceKinds kinds = new PieceKinds();
  private final List<BedPiece> pieces = new ArrayList<>();

  /**
   * Lays every piece.
   *
   * @param style of the lengths in the names of pieces
   */
  public Roadbed(
      HelixSpec spec,
      Climb climb,
      CentreLine line,
      Joints joints,
      Stations stations,
      LengthStyle style) {
    this.spec = spec;
    this.style = style;
    this.line = line;
    this.climb = climb;
    this.stations = stations;
    this.holeRule = new HoleRule(spec, climb);
    for (int layer = 1; layer <= joints.layers(); layer++) {
      layLayer(layer, joints.ofLayer(layer));
    }
  }

  /** Lower layer first, each in order of climb. */
  public List<BedPiece> pieces() {
    return List.copyOf(pieces);
  }

  /** The kinds in order of first use. */
  public List<PieceKind> kinds() {
    return kinds.all();
  }

  /** The kinds by outline alone, whatever their holes: what packing needs to tell apart. */
  public List<PieceKind> blankKinds() {
    PieceKinds blanks = new PieceKinds();
    for (PieceKind kind : kinds()) {
      for (int i = 0; i < kind.count(); i++) {
        blanks.add(kind.name(), kind.blank(), List.of());
      }
    }
    return blanks.all();
  }

  /** Numbers of the pieces of one kind, which are interchangeable, in order of climb. */
  public List<String> numbersOf(PieceKind kind) {
    return pieces.stream()
        .filter(piece -> piece.kindId().equals(kind.id()))
        .map(BedPiece::number)
        .toList();
  }

  /** Area of all pieces in square millimetres, holes not deducted. */
  public double area() {
    return kinds().stream().mapToDouble(kind -> kind.blank().area() * kind.count()).sum();
  }

  private void layLayer(int layer, List<Joint> joints) {
    for (int i = 0; i <= joints.size(); i++) {
      Optional<Joint> lower = i == 0 ? Optional.empty() : Optional.of(joints.get(i - 1));
      Optional<Joint> upper = i == joints.size() ? Optional.empty() : Optional.of(joints.get(i));
      String prefix = spec.construction().layers() == 1 ? "" : "L" + layer + "-";
      pieces.add(lay(prefix + (i + 1), layer, lower, upper));
    }
  }

  private BedPiece lay(String number, int layer, Optional<Joint> lower, Optional<Joint> upper) {
    double lap =
        spec.construction() instanceof Construction.HalfLap half ? half.lap().millimetres() : 0;
    double from = lower.map(Joint::at).orElse(0.0);
    double to = upper.map(Joint::at).orElse(climb.ringLength());
    double cutFrom = from - (lower.isPresent() ? lap / 2 : spec.bottom().leadIn().millimetres());
    double cutTo = to + (upper.isPresent() ? lap / 2 : spec.top().leadIn().millimetres());
    double reach = stations.reach();
    List<StationPlace> under =
        stationsWithin(
            Math.min(cutFrom, lower.isPresent() ? from - reach : cutFrom),
            Math.max(cutTo, upper.isPresent() ? to + reach : cutTo));
    List<Edge> part = line.portion(cutFrom, cutTo);
    Shape blank = shape(part, cutFrom, under);
    Pose pose = pose(part, cutFrom);
    String name = name(part, ear().isPresent() && !under.isEmpty());
    List<Hole> holes = holeRule.holes(line, under, pose);
    String kind = kinds.add(name, blank, holes);
    return new BedPiece(number, kind, layer, from, to, cutFrom, cutTo, lower, upper, under, pose);
  }

  /** A support that ends where the piece begins carries nothing of it. */
  private List<StationPlace> stationsWithin(double from, double to) {
    List<StationPlace> within = new ArrayList<>();
    for (Station station : stations.all()) {
      for (double at : station.places()) {
        if (at >= from && at <= to) {
          within.add(new StationPlace(station, at));
        }
      }
    }
    within.sort((a, b) -> Double.compare(a.at(), b.at()));
    return within;
  }

  private Shape shape(List<Edge> part, double cutFrom, List<StationPlace> under) {
    Length width = spec.ground().width();
    Optional<Riser.Ear> ear = ear();
    if (ear.isPresent() || part.size() != 1) {
      RoadbedOutline outline = new RoadbedOutline(part, width.millimetres());
      Outline inPlace =
          ear.map(e -> outline.withEars(distances(under, cutFrom), e)).orElseGet(outline::plain);
      Pose home = pose(part, cutFrom).inverse();
      return new FreeShape(
          inPlace.at(home), part.stream().<Edge>map(edge -> edge.at(home)).toList());
    }
    return part.get(0) instanceof Arc arc
        ? new AnnularSector(
            Length.ofMillimetres(arc.radius()), width, Angle.ofRadians(Math.abs(arc.sweep())))
        : new Strip(Length.ofMillimetres(part.get(0).length()), width);
  }

  private Optional<Riser.Ear> ear() {
    return spec.supports().riser() instanceof Riser.ThreadedRods rods
        ? rods.ear()
        : Optional.empty();
  }

  private static List<Double> distances(List<StationPlace> places, double from) {
    return places.stream().map(place -> place.at() - from).toList();
  }

  /** Where the piece's frame lies: see {@link PieceKind}. */
  private Pose pose(List<Edge> part, double cutFrom) {
    if (part.size() == 1 && ear().isEmpty()) {
      if (part.get(0) instanceof Arc arc) {
        double bisector = arc.startAngle() + arc.sweep() / 2;
        return new Pose(arc.centre().x(), arc.centre().y(), bisector);
      }
      Segment straight = (Segment) part.get(0);
      Point middle = straight.start().plus(straight.end()).times(0.5);
      return new Pose(middle.x(), middle.y(), line.at(cutFrom).heading());
    }
    Waypoint begin = line.at(cutFrom);
    return new Pose(begin.point().x(), begin.point().y(), begin.heading());
  }

  /**
   * What it is made of, in the order of climb, for example {@code straight of 300 mm, arc of 60°}.
   */
  private String name(List<Edge> part, boolean ears) {
    String with = ears ? ", with ears" : "";
    if (part.size() == 1) {
      return (part.get(0) instanceof Arc ? "segment" : "straight")
          + " of "
          + extent(part.get(0))
          + with;
    }
    if (part.size() > MOST_PARTS_NAMED) {
      return "end piece with its easement" + with;
    }
    return part.stream()
            .map(edge -> (edge instanceof Arc ? "arc of " : "straight of ") + extent(edge))
            .collect(Collectors.joining(", "))
        + with;
  }

  private String extent(Edge edge) {
    return edge instanceof Arc arc
        ? Angle.ofRadians(Math.abs(arc.sweep())).toString()
        : style.formatMade(Length.ofMillimetres(edge.length()));
  }
}

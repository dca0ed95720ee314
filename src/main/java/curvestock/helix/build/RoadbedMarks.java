package curvestock.helix.build;

import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import java.util.ArrayList;
import java.util.List;

/** What is to be drawn on each piece of roadbed, taken from the plan: see {@link RoadbedMark}. */
public final class RoadbedMarks {

  /** Lines end this far inside the roadbed's edge, so that no cut runs over them. */
  private static final double INSIDE = 1;

  /** A support whose middle lies at a piece's end is marked there, one beyond it is not. */
  private static final double EDGE = 1e-3;

  private static final double LONGEST_TICK = 9;

  /** Of the roadbed's width. */
  private static final double TICK_SHARE = 1.0 / 12;

  private static final double CROSS = 3;

  /** How far words are moved along where they have no room beside their mark, in millimetres. */
  private static final double[] ALONG = {0, 22, -22, 36, -36};

  private final HelixSpec spec;
  private final CentreLine line;
  private final int joints;
  private final SupportTable supports;
  private final double half;

  /**
   * @param joints of all layers
   * @param supports which of a station's two stand
   */
  public RoadbedMarks(HelixSpec spec, CentreLine line, Joints joints, SupportTable supports) {
    this.spec = spec;
    this.supports = supports;
    this.line = line;
    this.joints = joints.all().size();
    half = spec.ground().width().millimetres() / 2;
  }

  /** The marks of one piece, in the frame of its kind. */
  public List<RoadbedMark> on(BedPiece piece) {
    List<RoadbedMark> marks = new ArrayList<>();
    for (BedPiece.StationPlace place : piece.stations()) {
      if (place.at() > piece.cutFrom() - EDGE && place.at() < piece.cutTo() + EDGE) {
        marks.add(station(place));
      }
    }
    if (spec.construction() instanceof Construction.HalfLap joint) {
      double reach = joint.lap().millimetres() / 2;
      piece.lower().ifPresent(at -> marks.add(shoulder(at, reach, LapEnd.LOWER)));
      piece.upper().ifPresent(at -> marks.add(shoulder(at, -reach, LapEnd.UPPER)));
    } else if (spec.construction() instanceof Construction.ButtWithPlate butt) {
      SplicePlates plates = new SplicePlates(butt, spec.ground(), joints);
      piece.lower().ifPresent(at -> marks.addAll(screws(plates, at, 1)));
      piece.upper().ifPresent(at -> marks.addAll(screws(plates, at, -1)));
    }
    Pose home = piece.pose().inverse();
    return marks.stream().map(mark -> mark.at(home)).toList();
  }

  /**
   * Where a plate's screws go through a piece, seen from above in plan.
   *
   * @param into +1 for the piece that begins at the joint, −1 for the one that ends there
   */
  public List<Point> screwsOf(SplicePlates plates, Joint joint, int into) {
    Waypoint here = line.at(joint.at());
    Point ahead = Point.polar(into, here.heading());
    Pose pose = plates.pose(line, joint);
    return plates.screwPositions().stream()
        .map(pose::apply)
        .filter(screw -> screw.minus(here.point()).dot(ahead) > 0)
        .toList();
  }

  private RoadbedMark station(BedPiece.StationPlace place) {
    double at = place.at();
    double tick = Math.min(LONGEST_TICK, 2 * half * TICK_SHARE);
    List<Segment> ticks = new ArrayList<>();
    // A rod's own hole shows where it goes.
    boolean drilled = spec.supports().riser() instanceof Riser.ThreadedRods;
    Edges held = supports.edgesAt(place);
    if (!drilled && held.atInner()) {
      ticks.add(across(at, -half + INSIDE, -half + tick));
    }
    if (!drilled && held.atOuter()) {
      ticks.add(across(at, half - tick, half - INSIDE));
    }
    if (!drilled && held == Edges.MIDDLE) {
      ticks.add(across(at, -tick / 2, tick / 2));
    }
    List<Point> words = new ArrayList<>();
    for (double along : ALONG) {
      words.add(beside(at + along, -half / 2));
      words.add(beside(at + along, half / 2));
    }
    return new RoadbedMark(RoadbedMark.Sort.STATION, ticks, place.station().name(), words);
  }

  private RoadbedMark shoulder(Joint joint, double reach, LapEnd end) {
    List<Point> words = new ArrayList<>();
    for (double place : new double[] {-reach * 0.5, reach * 0.5, 0, reach * 2}) {
      words.add(beside(joint.at() + place, half / 2));
      words.add(beside(joint.at() + place, -half / 2));
    }
    return new RoadbedMark(
        RoadbedMark.Sort.SHOULDER,
        List.of(across(joint.at() + reach, -half + INSIDE, half - INSIDE)),
        "cut away " + end.side(),
        words);
  }

  private List<RoadbedMark> screws(SplicePlates plates, Joint joint, int into) {
    return screwsOf(plates, joint, into).stream().map(RoadbedMarks::cross).toList();
  }

  private static RoadbedMark cross(Point middle) {
    Point right = new Point(CROSS, 0);
    Point up = new Point(0, CROSS);
    return new RoadbedMark(
        RoadbedMark.Sort.SCREW,
        List.of(
            new Segment(middle.minus(right), middle.plus(right)),
            new Segment(middle.minus(up), middle.plus(up))),
        "",
        List.of());
  }

  private Segment across(double at, double from, double to) {
    return new Segment(beside(at, from), beside(at, to));
  }

  /** So far outwards of the centre line, in plan. */
  private Point beside(double at, double outwards) {
    return line.at(at).toLeft(-line.inwards() * outwards);
  }
}

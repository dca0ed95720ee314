package curvestock.helix.build;

import curvestock.helix.course.Climb;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.SegmentRun;
import curvestock.helix.spec.Segmentation;
import java.util.ArrayList;
import java.util.List;

/** The joints of every layer, from the bottom up. */
public final class Joints {

  /** A remainder below a thousandth of a degree is rounding, not a piece. */
  private static final double NEGLIGIBLE_TURNS = 1e-3 / 360;

  private final List<List<Joint>> layers;
  private final HelixSpec spec;
  private final double ringLength;
  private final double run;

  public Joints(HelixSpec spec, Climb climb) {
    this.spec = spec;
    ringLength = climb.ringLength();
    run = climb.runPerTurn().millimetres();
    layers = new ArrayList<>();
    for (int layer = 1; layer <= spec.construction().layers(); layer++) {
      List<Double> places =
          spec.ground().isOval() ? ovalPlaces(spec, layer) : circlePlaces(spec, layer);
      layers.add(named(places, layer, spec.construction()));
    }
  }

  private List<Joint> named(List<Double> places, int layer, Construction construction) {
    List<Joint> joints = new ArrayList<>();
    for (double at : places) {
      String prefix = construction.layers() == 1 ? "J" : "J" + layer + "-";
      joints.add(new Joint(prefix + (joints.size() + 1), layer, at));
    }
    return List.copyOf(joints);
  }

  /** The second layer's joints lie in the middle of the first layer's pieces. */
  private List<Double> circlePlaces(HelixSpec spec, int layer) {
    if (spec.segmentation().lower().isPresent()) {
      return mixedPlaces(spec.segmentation(), layer);
    }
    double segment = spec.segmentation().segment().degrees() / 360 * run;
    double at = spec.segmentation().first().degrees() / 360 * run;
    if (layer == 2) {
      at += at > segment / 2 * (1 + 1e-9) ? -segment / 2 : segment / 2;
    }
    List<Double> places = new ArrayList<>();
    for (int i = 0; at + i * segment < ringLength - NEGLIGIBLE_TURNS * run; i++) {
      places.add(at + i * segment);
    }
    return places;
  }

  /** Lower pieces of another angle, then segments to the end. */
  private List<Double> mixedPlaces(Segmentation segmentation, int layer) {
    List<Double> ends = new ArrayList<>(List.of(0.0));
    SegmentRun lower = segmentation.lower().orElseThrow();
    double end = ringLength - NEGLIGIBLE_TURNS * run;
    for (int i = 0; ends.get(ends.size() - 1) < end; i++) {
      double degrees =
          i < lower.count() ? lower.segment().degrees() : segmentation.segment().degrees();
      ends.add(ends.get(ends.size() - 1) + degrees / 360 * run);
    }
    List<Double> places = new ArrayList<>();
    for (int i = 1; i < ends.size(); i++) {
      places.add(layer == 1 ? ends.get(i) : (ends.get(i - 1) + ends.get(i)) / 2);
    }
    places.removeIf(at -> at >= end);
    return places;
  }

  /**
   * Each half turn is so many segments and a straight; the second layer is moved by half of each.
   */
  private List<Double> ovalPlaces(HelixSpec spec, int layer) {
    double straight = spec.ground().straight().millimetres();
    double halfCircle = run / 2 - straight;
    int perHalf = (int) Math.rint(180 / spec.segmentation().segment().degrees());
    double segment = halfCircle / perHalf;
    List<Double> places = new ArrayList<>();
    for (double begin = 0; begin < ringLength - NEGLIGIBLE_TURNS * run; begin += run / 2) {
      for (int i = 0; i < perHalf; i++) {
        places.add(begin + (layer == 1 ? i + 1 : i + 0.5) * segment);
      }
      places.add(begin + halfCircle + (layer == 1 ? straight : straight / 2));
    }
    places.removeIf(at -> at > ringLength - NEGLIGIBLE_TURNS * run);
    return places;
  }

  /** How many layers there are. */
  public int layers() {
    return layers.size();
  }

  /** The joints of a layer (from 1) in order of climb. */
  public List<Joint> ofLayer(int layer) {
    return layers.get(layer - 1);
  }

  /** All joints, lower layer first. */
  public List<Joint> all() {
    return layers.stream().flatMap(List::stream).toList();
  }

  /**
   * Where no hole may come near: joints, both ends of a half-lap, and the ends of the leads.
   *
   * @return distances along the line in millimetres, in no particular order
   */
  public List<Double> placesToAvoid() {
    List<Double> places = new ArrayList<>();
    places.add(-spec.bottom().leadIn().millimetres());
    for (Joint joint : all()) {
      places.add(joint.at());
      if (spec.construction() instanceof Construction.HalfLap halved) {
        places.add(joint.at() - halved.lap().millimetres() / 2);
        places.add(joint.at() + halved.lap().millimetres() / 2);
      }
    }
    places.add(ringLength + spec.top().leadIn().millimetres());
    return places;
  }

  /** The joints of all layers on one turn (from 1). */
  public List<Joint> ofTurn(int turn) {
    return all().stream().filter(joint -> Math.floor(joint.at() / run + 1e-9) == turn - 1).toList();
  }

  /**
   * How far a joint lies at least from the joints of the turn above and below in its own layer, in
   * millimetres along the line; zero if joints stand in line, infinite if there is no such turn.
   */
  public double stagger() {
    double least = Double.POSITIVE_INFINITY;
    for (List<Joint> layer : layers) {
      for (Joint lower : layer) {
        for (Joint upper : layer) {
          if (Math.abs(upper.at() - lower.at() - run) < run / 2) {
            least = Math.min(least, Math.abs(upper.at() - lower.at() - run));
          }
        }
      }
    }
    return least < 1e-6 ? 0 : least;
  }
}

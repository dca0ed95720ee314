package curvestock.drawing;

import curvestock.geometry.Point;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.Joint;
import java.util.ArrayList;
import java.util.List;

/** The joints of a helix seen from above: those of several turns often lie over each other. */
public final class JointPlaces {

  /** Joints nearer than this in plan, in millimetres, lie over each other. */
  private static final double SAME_PLACE = 1;

  /** Longer lists of names would make a figure small or run over the roadbed's edges. */
  private static final int MOST_NAMES = 4;

  private JointPlaces() {}

  /** Joints that lie over each other, from the bottom up. */
  public static List<List<Joint>> of(HelixPlan plan) {
    List<List<Joint>> places = new ArrayList<>();
    for (Joint joint : plan.joints().all()) {
      Point point = plan.line().at(joint.at()).point();
      places.stream()
          .filter(here -> point.distance(plan.line().at(here.get(0).at()).point()) < SAME_PLACE)
          .findFirst()
          .ifPresentOrElse(
              here -> here.add(joint), () -> places.add(new ArrayList<>(List.of(joint))));
    }
    return places;
  }

  /**
   * All by name, or of many the first two and the last of each layer: they follow in even steps.
   */
  public static String names(List<Joint> joints) {
    List<String> names = new ArrayList<>();
    for (int layer = 1; layer <= 2; layer++) {
      int each = layer;
      List<String> own =
          joints.stream().filter(joint -> joint.layer() == each).map(Joint::name).toList();
      if (own.size() > MOST_NAMES) {
        names.addAll(List.of(own.get(0), own.get(1), "...", own.get(own.size() - 1)));
      } else {
        names.addAll(own);
      }
    }
    return String.join(" ", names);
  }
}

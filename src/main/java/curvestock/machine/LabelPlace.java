package curvestock.machine;

import curvestock.geometry.Clearance;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.layout.Placement;
import curvestock.piece.AnnularSector;
import curvestock.piece.Bend;
import curvestock.piece.Drilled;
import curvestock.piece.FreeShape;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a piece's number is engraved: on a bend between centre line and outer edge, its foot
 * towards the inner edge; on any other piece where most room is, in the direction that takes the
 * largest letters.
 */
final class LabelPlace {

  /** Steps of the grid in which the roomiest place is looked for. */
  private static final int GRID = 24;

  private static final double LARGEST = 12;
  private static final double SMALLEST = 1.5;

  /** Letters keep this far from outline, holes and centre line, in millimetres. */
  private static final double CLEAR = 0.8;

  private static final double STEP = Math.PI / 12;

  /** Where along a sector room is sought, in half sweeps from the middle. */
  private static final double[] ALONG = {0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75};

  /** Along the edges of a course, in shares of each. */
  private static final double[] OF_COURSE = {0.5, 0.25, 0.75};

  private final boolean level;
  private final List<DrawnLine> lines;

  /**
   * A search for places.
   *
   * @param lines that are drawn on the sheet
   */
  LabelPlace(boolean level, List<DrawnLine> lines) {
    this.level = level;
    this.lines = lines;
  }

  /** The words as large as they fit, at most 12 mm; nothing if they would be unreadable. */
  Optional<Engraving> on(Placement placement, String words) {
    if (words.isBlank()) {
      return Optional.empty();
    }
    Tries tries = new Tries(words);
    Optional<Bend> bend = Bend.of(placement.piece().shape());
    if (bend.isPresent()) {
      onSector(bend.get(), placement, tries);
    } else {
      Outline outline = placement.outline();
      Point middle = outline.roomiest(GRID);
      double first = placement.pose().rotation();
      for (int i = 0; i < (level ? 1 : 12); i++) {
        double angle = level ? 0 : upright(first + i * STEP);
        tries.add(outline, middle, angle);
      }
      if (placement.piece().shape().blank() instanceof FreeShape free) {
        free.course().forEach(edge -> beside(edge.at(placement.pose()), outline, tries));
      }
    }
    return tries.best.filter(engraving -> engraving.height() >= SMALLEST);
  }

  /** Between a part of the course and either edge of the roadbed. */
  private void beside(Edge course, Outline outline, Tries tries) {
    for (double share : OF_COURSE) {
      Edge rest = course.part(share, 1);
      Point along = rest.startDirection();
      double room =
          outline.outer().edges().stream()
              .mapToDouble(edge -> edge.distanceTo(rest.start()))
              .min()
              .orElse(0);
      for (int side = 1; side >= -1; side -= 2) {
        Point aside = new Point(-along.y(), along.x()).times(side * room / 2);
        tries.add(outline, rest.start().plus(aside), level ? 0 : upright(along.angle()));
      }
    }
  }

  private void onSector(Bend bend, Placement placement, Tries tries) {
    AnnularSector sector = bend.sector();
    Pose pose = bend.pose().then(placement.pose());
    Length half = sector.width().times(0.5);
    Length radius = sector.radius().plus(half.times(0.5));
    Outline band = new AnnularSector(radius, half, sector.sweep()).outline().at(pose);
    List<Loop> holes = new ArrayList<>(band.holes());
    if (placement.piece().shape() instanceof Drilled piece) {
      piece.drilled().forEach(hole -> holes.add(hole.at(placement.pose())));
    }
    Outline region = new Outline(band.outer(), holes);
    for (double along : ALONG) {
      double direction = along * sector.sweep().radians() / 2;
      Point middle = pose.apply(Point.polar(radius.millimetres(), direction));
      double tangent = pose.rotation() + direction - Math.PI / 2;
      tries.add(region, middle, level ? 0 : tangent);
    }
  }

  /** The angle or its opposite, whichever is read without turning one's head over. */
  private static double upright(double angle) {
    double turned = angle - 2 * Math.PI * Math.floor(angle / (2 * Math.PI));
    return turned > Math.PI / 2 + 1e-9 && turned <= 1.5 * Math.PI + 1e-9
        ? turned - Math.PI
        : turned;
  }

  /** The first of the places that take the largest letters. */
  private final class Tries {

    private final String words;
    private Optional<Engraving> best = Optional.empty();
    private double highest;

    Tries(String words) {
      this.words = words;
    }

    /** Nothing is measured where letters as large as the best do not fit. */
    void add(Outline region, Point middle, double angle) {
      if (highest >= LARGEST || (highest > 0 && !fits(region, middle, angle, words, highest))) {
        return;
      }
      Engraving here = fitted(region, middle, angle, words);
      if (best.isEmpty() || here.height() > highest) {
        best = Optional.of(here);
        highest = here.height();
      }
    }
  }

  /** The largest letters, by halving, whose box with some air lies in the region. */
  private Engraving fitted(Outline region, Point middle, double angle, String words) {
    double low = 0;
    double high = LARGEST;
    for (int i = 0; i < 10 && low < high; i++) {
      double height = i == 0 ? high : (low + high) / 2;
      if (fits(region, middle, angle, words, height)) {
        low = height;
      } else {
        high = height;
      }
    }
    Point corner =
        new Pose(middle.x(), middle.y(), angle)
            .apply(new Point(-Engraving.width(words, low) / 2, -low / 2));
    return new Engraving(words, corner, low, angle);
  }

  /** The height of the letters, and as much below as above where a line runs under them. */
  private static double room(String words, double height) {
    return Engraving.isUnderlined(words) ? 1.5 * height : height;
  }

  private boolean fits(Outline region, Point middle, double angle, String words, double letters) {
    double width = Engraving.width(words, letters);
    double height = room(words, letters);
    Outline box =
        Outline.rectangle(width, height)
            .at(new Pose(-width / 2, -height / 2, 0))
            .at(new Pose(middle.x(), middle.y(), angle));
    return Clearance.within(box, region) >= CLEAR
        && lines.stream().noneMatch(line -> line.runsThrough(box, CLEAR));
  }
}

package curvestock.drawing;

import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.build.RoadbedMark;
import curvestock.layout.Placement;
import curvestock.piece.AnnularSector;
import curvestock.piece.Bend;
import curvestock.piece.Drilled;
import curvestock.piece.FreeShape;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/**
 * Finds where a piece's number and name fit inside it, in level text (turned text would need a
 * transform, which importers drop). On a sector the number stands outside the centre line and the
 * name inside it, so that neither is struck through.
 */
final class PieceLabel {

  /**
   * A line of text: the middle of its capitals, in the sheet's frame, and its font size.
   *
   * @param backed whether it stands on the centre line, which is then hidden behind it
   */
  record Text(String words, Point middle, double size, boolean bold, boolean backed) {

    Text saying(String other) {
      return new Text(other, middle, size, bold, backed);
    }

    /** Whether the boxes of the two overlap, a little air included. */
    boolean meets(Text other) {
      return Math.abs(middle.x() - other.middle.x()) < (width() + other.width()) / 2 + size / 2
          && Math.abs(middle.y() - other.middle.y()) < (size + other.size) / 2;
    }

    private double width() {
      return size * (bold ? TextWidth.boldEms(words) : TextWidth.ems(words));
    }

    Text onLine() {
      return new Text(words, middle, size, bold, true);
    }
  }

  /** A band along a sector, in widths outwards from its centre line. */
  private record Span(double from, double to) {}

  /** Steps of the grid in which the roomiest place is looked for. */
  private static final int GRID = 32;

  private static final Span OUTSIDE = new Span(0.1, 0.47);
  private static final Span INSIDE = new Span(-0.47, -0.1);
  private static final Span ACROSS = new Span(-0.44, 0.44);

  /** Away from number and name. */
  private static final double[] ASIDE = {0.45, -0.45, 0.6, -0.6};

  private static final double LARGEST_NOTE = 11;
  private static final double SMALLEST_NOTE = 5;
  private static final double LARGEST_MARK = 10;
  private static final double LARGEST_NUMBER = 40;
  private static final double LARGEST_NAME = 18;

  /** A name that would come out smaller gives way to the piece's id, or is left out. */
  private static final double SMALLEST = 7;

  /** A number that would come out smaller beside the centre line is written across it. */
  private static final double SMALL_NUMBER = 14;

  /** A fallback to the id must not outshine the number. */
  private static final double ID_TO_NUMBER = 0.7;

  /** From the middle of two lines to either, in font sizes. */
  private static final double HALF_LINE = 0.5;

  /** Where along a sector text is tried, in half sweeps from the middle; the middle first. */
  private static final double[] ALONG = {0, 0.2, -0.2, 0.4, -0.4, 0.6, -0.6};

  /** The same for text across the centre line, which keeps clear of the tick at the middle. */
  private static final double[] OFF_MIDDLE = {0.3, -0.3, 0.45, -0.45, 0.6, -0.6};

  /** The middle is preferred even if another place takes letters larger by this factor. */
  private static final double PREFERENCE = 1.3;

  private PieceLabel() {}

  /** The texts for a piece, its number and its name; the first is its number. */
  static List<Text> of(Placement placement, String number, String widest) {
    return of(placement, number, widest, placement.piece().name(), List.of(), 0);
  }

  /**
   * The texts for a piece; the first is its number.
   *
   * @param widest the widest number of the sheet, which must fit too, so that all come out alike
   * @param name what is said besides
   * @param marks what is drawn on the piece, whose words are written where they meet no others
   * @param readable font size below which the number gives up the name, then its own beginning
   */
  static List<Text> of(
      Placement placement,
      String number,
      String widest,
      String name,
      List<RoadbedMark> marks,
      double readable) {
    Optional<Bend> bend = Bend.of(placement.piece().shape());
    if (bend.isPresent()) {
      return onBend(bend.get(), placement, number, widest, name, marks, readable);
    }
    Outline outline = placement.outline();
    Point middle = outline.roomiest(GRID);
    // Which side is up matters where something is marked on it.
    String said = marks.isEmpty() ? name : name + ", up";
    Text both = fit(outline, middle, number + "  " + said, LARGEST_NAME, true);
    boolean fits = both.size() >= Math.max(SMALLEST, readable) && !name.isBlank();
    List<Text> texts = new ArrayList<>();
    List<Text> lines = fits ? List.of(both) : shortened(outline, middle, number, readable);
    boolean onLine =
        placement.piece().shape().blank() instanceof FreeShape free && !free.course().isEmpty();
    lines.forEach(text -> texts.add(onLine ? text.onLine() : text));
    addMarks(texts, outline, marks);
    return texts;
  }

  /** The number, or what of {@link ShortName} can be read: 34-2, or 34 above 2. */
  private static List<Text> shortened(
      Outline outline, Point middle, String number, double readable) {
    double largest = Math.max(LARGEST_NAME, readable);
    Text whole = fit(outline, middle, number, largest, true);
    String name = ShortName.of(number);
    if (whole.size() >= readable || name.equals(number)) {
      return List.of(whole);
    }
    Text line = fit(outline, middle, name, largest, true);
    int dash = name.indexOf('-');
    if (line.size() >= readable || dash < 0) {
      return List.of(line);
    }
    Point up = new Point(0, readable * HALF_LINE);
    Text first = fit(outline, middle.plus(up), name.substring(0, dash), readable, false);
    Text second = fit(outline, middle.minus(up), name.substring(dash + 1), readable, true);
    boolean inTwoLines = Math.min(first.size(), second.size()) >= readable;
    return inTwoLines ? List.of(second, first) : List.of(line);
  }

  /** The number alone, as large as it fits at the roomiest place. */
  static Text numberOnly(Placement placement, String number) {
    Outline outline = placement.outline();
    return fit(outline, outline.roomiest(GRID), number, LARGEST_NUMBER, true);
  }

  private static List<Text> onBend(
      Bend bend,
      Placement placement,
      String number,
      String widest,
      String name,
      List<RoadbedMark> marks,
      double readable) {
    AnnularSector sector = bend.sector();
    Pose pose = bend.pose().then(placement.pose());
    List<Loop> holes = drilled(placement);
    Text above = onBand(sector, pose, holes, OUTSIDE, ALONG, widest, LARGEST_NUMBER, true);
    if (above.size() < Math.max(SMALL_NUMBER, readable)) {
      Text across = onBand(sector, pose, holes, ACROSS, OFF_MIDDLE, widest, LARGEST_NUMBER, true);
      List<Text> small = new ArrayList<>();
      small.add((across.size() > above.size() ? across.onLine() : above).saying(number));
      addMarks(small, placement.outline(), marks);
      return small;
    }
    Text below = onBand(sector, pose, holes, INSIDE, ALONG, name, LARGEST_NAME, false);
    if (below.size() < SMALLEST) {
      double largest = Math.min(LARGEST_NAME, ID_TO_NUMBER * above.size());
      below = onBand(sector, pose, holes, INSIDE, ALONG, placement.piece().id(), largest, false);
    }
    List<Text> texts = new ArrayList<>(List.of(above.saying(number), below));
    addMarks(texts, placement.outline(), marks);
    addNote(
        texts, at -> onBand(sector, pose, holes, INSIDE, at, "inner edge", LARGEST_NOTE, false));
    addNote(texts, at -> onBand(sector, pose, holes, OUTSIDE, at, "up", LARGEST_NOTE, false));
    return texts;
  }

  /** The largest note of those that meet no text, the first among equals; none if all are small. */
  private static void addNote(List<Text> texts, Function<double[], Text> fitted) {
    DoubleStream.of(ASIDE)
        .mapToObj(place -> fitted.apply(new double[] {place}))
        .filter(note -> note.size() >= SMALLEST_NOTE && texts.stream().noneMatch(note::meets))
        .reduce((a, b) -> b.size() > a.size() ? b : a)
        .ifPresent(texts::add);
  }

  /** Words of the marks, each at the first of its places where it is readable and meets no text. */
  private static void addMarks(List<Text> texts, Outline outline, List<RoadbedMark> marks) {
    for (RoadbedMark mark : marks) {
      if (!mark.words().isEmpty()) {
        mark.wordsAt().stream()
            .map(at -> fit(outline, at, mark.words(), LARGEST_MARK, false))
            .filter(text -> text.size() >= SMALLEST_NOTE && texts.stream().noneMatch(text::meets))
            .findFirst()
            .ifPresent(texts::add);
      }
    }
  }

  private static List<Loop> drilled(Placement placement) {
    return placement.piece().shape() instanceof Drilled piece
        ? piece.drilled().stream().map(hole -> hole.at(placement.pose())).toList()
        : List.of();
  }

  /** Fits text in the part of a sector between two radii, given in widths from the centre line. */
  private static Text onBand(
      AnnularSector sector,
      Pose pose,
      List<Loop> holes,
      Span span,
      double[] places,
      String words,
      double largest,
      boolean bold) {
    Length radius = sector.radius().plus(sector.width().times((span.from() + span.to()) / 2));
    AnnularSector band =
        new AnnularSector(radius, sector.width().times(span.to() - span.from()), sector.sweep());
    Outline plain = band.outline().at(pose);
    List<Loop> inside = new ArrayList<>(plain.holes());
    inside.addAll(holes);
    Outline region = new Outline(plain.outer(), inside);
    List<Text> tries = new ArrayList<>();
    for (double along : places) {
      Point local = Point.polar(radius.millimetres(), along * sector.sweep().radians() / 2);
      tries.add(fit(region, pose.apply(local), words, largest, bold));
    }
    Text best = tries.stream().max(Comparator.comparingDouble(Text::size)).orElseThrow();
    Text middle = tries.get(0);
    return middle.size() * PREFERENCE >= best.size() ? middle : best;
  }

  private static Text fit(
      Outline region, Point middle, String words, double largest, boolean bold) {
    double size = Legible.within(region, middle, words, largest, bold);
    return new Text(words, middle, Math.max(size, 1), bold, false);
  }
}

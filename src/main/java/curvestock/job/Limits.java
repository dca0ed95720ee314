package curvestock.job;

import curvestock.bound.Bound;
import curvestock.bound.InflatedArea;
import curvestock.piece.Demand;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.List;
import java.util.Optional;

/**
 * How big a job may be, so that a slip of the pen is told at once and does not keep the machine
 * busy for hours. A job may raise them by {@code limits:}. They change no result.
 *
 * @param piecesOnASheet most pieces of one kind that one sheet might hold, by the proven bound
 * @param sheets most sheets that the pieces must take at least
 * @param combinations most pairs of a kind of piece and a kind of sheet
 */
record Limits(int piecesOnASheet, int sheets, int combinations) {

  /** Some minutes of work and a gigabyte of memory, on the machine of a builder. */
  static final Limits USUAL = new Limits(4_000, 500, 1_000);

  private static final int MOST = 1_000_000;

  static Optional<Limits> read(Field field) {
    return field.block("pieces-on-a-sheet", "sheets", "combinations").flatMap(Limits::read);
  }

  private static Optional<Limits> read(Block block) {
    Optional<Integer> pieces =
        block.find("pieces-on-a-sheet").flatMap(given -> given.whole(1, MOST));
    Optional<Integer> sheets = block.find("sheets").flatMap(given -> given.whole(1, MOST));
    Optional<Integer> combinations =
        block.find("combinations").flatMap(given -> given.whole(1, MOST));
    return block.build(
        () ->
            new Limits(
                pieces.orElse(USUAL.piecesOnASheet),
                sheets.orElse(USUAL.sheets),
                combinations.orElse(USUAL.combinations)));
  }

  /** What is too big about the job, and what to do about it; nothing if it is of usual size. */
  Optional<String> objection(Job job) {
    List<Demand> demands = job.demands();
    long pairs = (long) demands.size() * job.sheets().size();
    if (pairs > combinations) {
      return Optional.of(
          "has "
              + demands.size()
              + " kinds of pieces and "
              + job.sheets().size()
              + " kinds of sheets, so "
              + pairs
              + " combinations"
              + advice(combinations, "combinations", pairs, "split it into several jobs"));
    }
    return tooSmall(job, demands).or(() -> tooMany(job, demands));
  }

  private Optional<String> tooSmall(Job job, List<Demand> demands) {
    for (SheetStock sheet : job.sheets()) {
      for (Demand demand : demands) {
        int bound = Bound.quick(demand.piece(), sheet, job.cutting()).count();
        if (bound > piecesOnASheet) {
          return Optional.of(
              "has pieces so small ("
                  + demand.piece().name()
                  + ") that up to "
                  + bound
                  + " might lie on one sheet of "
                  + sheet.name()
                  + advice(
                      piecesOnASheet, "pieces-on-a-sheet", bound, "give a smaller part of it"));
        }
      }
    }
    return Optional.empty();
  }

  /** Planning says at once, and better, what is wrong then. */
  private static boolean fitsNowhere(Demand demand, Job job) {
    return job.sheets().stream()
        .allMatch(sheet -> Bound.quick(demand.piece(), sheet, job.cutting()).count() == 0);
  }

  private Optional<String> tooMany(Job job, List<Demand> demands) {
    double largest = 0;
    for (SheetStock sheet : job.sheets()) {
      largest = Math.max(largest, InflatedArea.ofSheet(sheet, job.cutting()));
    }
    long least = (long) Math.ceil(area(demands, job.cutting()) / largest);
    boolean usual = largest == 0 || least <= sheets;
    return usual || demands.stream().anyMatch(demand -> fitsNowhere(demand, job))
        ? Optional.empty()
        : Optional.of(
            "takes at least "
                + least
                + " sheets"
                + advice(sheets, "sheets", 2 * least, "split it into several jobs"));
  }

  private static double area(List<Demand> demands, Cutting cutting) {
    double area = 0;
    for (Demand demand : demands) {
      area += demand.count() * InflatedArea.ofPiece(demand.piece(), cutting);
    }
    return area;
  }

  private static String advice(int limit, String key, long enough, String instead) {
    return "; more than "
        + limit
        + " would take long and much memory: "
        + instead
        + ", or raise the limit by `limits: {"
        + key
        + ": "
        + Math.min(MOST, enough)
        + "}`";
  }
}

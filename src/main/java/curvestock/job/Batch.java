package curvestock.job;

import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Several jobs whose pieces share sheets. Each job has a letter, which stands before the ids of its
 * pieces: {@code B.S} is the piece S of the second job.
 *
 * @param members the jobs with their letters, in the order given
 */
public record Batch(List<Member> members) {

  private static final int LONGEST_TITLE = 120;

  /**
   * One job of the batch.
   *
   * @param tag its letter
   */
  public record Member(String tag, Job job) {

    /** Its pieces with the letter before their ids. */
    public List<Demand> demands() {
      return tagged(job.demands());
    }

    /** Any of its pieces with the letter before their ids. */
    public List<Demand> tagged(List<Demand> demands) {
      return demands.stream()
          .map(
              demand -> {
                Piece piece = demand.piece();
                Piece named =
                    new Piece(
                        tag + "." + piece.id(),
                        piece.name(),
                        piece.shape(),
                        piece.grain(),
                        piece.thickness());
                return new Demand(named, demand.count());
              })
          .toList();
    }

    /** Whether a piece of this id is one of this job's. */
    public boolean owns(String pieceId) {
      return pieceId.startsWith(tag + ".");
    }
  }

  public Batch {
    members = List.copyOf(members);
  }

  /**
   * The jobs together.
   *
   * @throws BatchException if they cannot share sheets: other ways of cutting, other thickness,
   *     other currency, or two sheets of one name that differ
   */
  public static Batch of(List<Job> jobs) {
    List<String> tags = PieceReader.letters(jobs.size());
    List<Member> members = new ArrayList<>();
    for (int i = 0; i < jobs.size(); i++) {
      members.add(new Member(tags.get(i), jobs.get(i).marked()));
    }
    Batch batch = new Batch(members);
    batch.requireShared();
    return batch;
  }

  /** One job that asks for the pieces of all; it has no helix of its own. */
  public Job together() {
    return together(members.stream().flatMap(member -> member.demands().stream()).toList());
  }

  /** One job on the sheets of all that asks for these pieces. */
  public Job together(List<Demand> pieces) {
    Job first = members.get(0).job();
    return new Job(
        title(),
        "",
        members.stream().anyMatch(member -> member.job().invented()),
        first.style(),
        first.currency(),
        sheets(),
        first.cutting(),
        Optional.empty(),
        Optional.empty(),
        pieces,
        first.search(),
        first.rates(),
        terms(),
        // Each job's own spares are among its pieces already.
        Spares.NONE,
        first.machine(),
        first.paper(),
        List.of(),
        sources(),
        members);
  }

  /** Those of all jobs, or none if one has none. */
  private List<JobSource> sources() {
    boolean all = members.stream().noneMatch(member -> member.job().sources().isEmpty());
    return all
        ? members.stream().flatMap(member -> member.job().sources().stream()).toList()
        : List.of();
  }

  private String title() {
    String all =
        members.stream().map(member -> member.job().title()).collect(Collectors.joining(", "));
    String title = members.size() + " jobs: " + all;
    return title.length() <= LONGEST_TITLE ? title : title.substring(0, LONGEST_TITLE - 3) + "...";
  }

  /** The sheets of all jobs, each once, in the order of first mention. */
  private List<SheetStock> sheets() {
    Map<String, SheetStock> sheets = new LinkedHashMap<>();
    for (Member member : members) {
      member.job().sheets().forEach(sheet -> sheets.putIfAbsent(sheet.name(), sheet));
    }
    return List.copyOf(sheets.values());
  }

  private Terms terms() {
    Map<String, SheetTerms> sheets = new TreeMap<>();
    members.forEach(member -> sheets.putAll(member.job().terms().sheets()));
    Terms first = members.get(0).job().terms();
    return new Terms(sheets, first.storeCuts(), first.tax(), first.unit());
  }

  private static void requireSameTerms(Member first, Member other) {
    Terms a = first.job().terms();
    Terms b = other.job().terms();
    if (!a.tax().equals(b.tax()) || !a.storeCuts().equals(b.storeCuts())) {
      throw new BatchException(
          "Jobs that share sheets must be bought on one set of terms, but tax or store cuts of "
              + called(first)
              + " and "
              + called(other)
              + " differ. Write the same in both, or plan them apart.");
    }
  }

  private void requireShared() {
    Member first = members.get(0);
    Map<String, Member> owners = new LinkedHashMap<>();
    Map<String, SheetStock> sheets = new LinkedHashMap<>();
    for (Member member : members) {
      requireSameCutting(first, member);
      if (!member.job().currency().equals(first.job().currency())) {
        throw new BatchException(
            "Jobs that share sheets must have one currency, but "
                + called(first)
                + " has '"
                + first.job().currency()
                + "' and "
                + called(member)
                + " '"
                + member.job().currency()
                + "'. Write the same `currency:` in both.");
      }
      requireSameTerms(first, member);
      requireSameThickness(first, member);
      for (SheetStock sheet : member.job().sheets()) {
        SheetStock known = sheets.putIfAbsent(sheet.name(), sheet);
        Member owner = owners.putIfAbsent(sheet.name(), member);
        if (known != null && !alike(known, sheet)) {
          throw new BatchException(
              "The sheet '"
                  + sheet.name()
                  + "' is not the same in "
                  + called(owner)
                  + " and "
                  + called(member)
                  + " (size, thickness, price, number, defects or grain). Correct one, or give them two"
                  + " names.");
        }
      }
    }
  }

  /** Outlines are compared by what they say, not by which objects they are. */
  private static boolean alike(SheetStock a, SheetStock b) {
    return a.equals(b) || a.toString().equals(b.toString());
  }

  private static void requireSameCutting(Member first, Member other) {
    Cutting a = first.job().cutting();
    Cutting b = other.job().cutting();
    if (!a.equals(b)) {
      throw new BatchException(
          "Jobs that share sheets must be cut alike, but "
              + called(first)
              + " has "
              + shown(first)
              + " and "
              + called(other)
              + " has "
              + shown(other)
              + ". Write the same `cutting:` in both, or plan them apart.");
    }
  }

  private static void requireSameThickness(Member first, Member other) {
    SheetStock a = first.job().sheets().get(0);
    for (SheetStock sheet : other.job().sheets()) {
      double apart = Math.abs(sheet.thickness().minus(a.thickness()).millimetres());
      if (apart > SAME_THICKNESS) {
        throw new BatchException(
            "Jobs that share sheets must be of one thickness, but "
                + called(first)
                + " is cut from "
                + first.job().style().formatGiven(a.thickness())
                + " and "
                + called(other)
                + " from "
                + first.job().style().formatGiven(sheet.thickness())
                + ". Plan them apart, those of one thickness together.");
      }
    }
  }

  /** 1/32 in, as for the sheets of one job. */
  private static final double SAME_THICKNESS = 25.4 / 32;

  private static String shown(Member member) {
    Cutting cutting = member.job().cutting();
    return "kerf "
        + member.job().style().formatGiven(cutting.kerf())
        + ", gap "
        + member.job().style().formatGiven(cutting.spacing())
        + ", margin "
        + member.job().style().formatGiven(cutting.margin());
  }

  private static String called(Member member) {
    return "job " + member.tag() + " (" + member.job().title() + ")";
  }
}

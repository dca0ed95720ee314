package curvestock.plan;

import curvestock.bound.Fit;
import curvestock.job.Job;
import curvestock.machine.MachineSetup.Bed;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.purchase.Panel;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What to tell a person whose piece fits on none of the sheets. */
final class Advice {

  private final Job job;

  Advice(Job job) {
    this.job = job;
  }

  /**
   * Why the pieces fit nowhere, and what would; in one message where one cause, segments too long
   * for any sheet, makes all of them too large.
   */
  List<Told> forUnfit(List<Piece> pieces) {
    Set<String> ids = pieces.stream().map(Piece::id).collect(Collectors.toSet());
    Optional<FinerCut> finer =
        FinerCut.isAboutSegments(job, ids) ? FinerCut.of(job) : Optional.empty();
    return finer
        .map(cut -> List.of(forSegments(pieces, cut)))
        .orElseGet(() -> pieces.stream().flatMap(piece -> forUnfit(piece).stream()).toList());
  }

  private Told forSegments(List<Piece> pieces, FinerCut finer) {
    Piece segment =
        pieces.stream()
            .filter(piece -> piece.shape().blank() instanceof AnnularSector)
            .findFirst()
            .orElseThrow();
    String ends = pieces.size() == 1 ? "" : ", nor do the end pieces with their straights";
    String why =
        "Segments of "
            + job.structure().orElseThrow().plan().spec().segmentation().segment()
            + " fit on no sheet ("
            + describe(segment)
            + ")"
            + ends
            + ": "
            + sheets(segment)
            + ". Fix: ";
    String tried = "; then every piece of the roadbed fits (tried).";
    return new Told(
        why + "write `segments-per-turn: " + finer.perTurn() + "`" + tried,
        why + "set Segments per turn to " + finer.perTurn() + tried);
  }

  /** Why the piece fits nowhere, and the largest piece of its kind that would. */
  private List<Told> forUnfit(Piece piece) {
    List<Told> sentences = new ArrayList<>();
    boolean proven =
        offered(piece).stream().allMatch(sheet -> Fit.isImpossible(piece, sheet, job.cutting()));
    sentences.add(
        Told.alike(
            "Piece "
                + piece.id()
                + " ("
                + describe(piece)
                + (proven ? ") does not fit on " : ") was not found to fit on ")
                + sheets(piece)
                + ", whichever way it is turned."));
    if (piece.shape().blank() instanceof AnnularSector sector) {
      sentences.add(Told.alike(forSector(piece, sector)));
    } else {
      sentences.add(ShorterLead.of(job, piece).map(this::joinedOn).orElseGet(this::inParts));
    }
    return sentences;
  }

  /** That the piece is larger than what the machine reaches, and what makes it smaller. */
  Told forBed(Piece piece, Bed bed) {
    LengthStyle style = job.style();
    String margin = style.formatGiven(job.cutting().margin());
    String why =
        "Piece "
            + piece.id()
            + " ("
            + describe(piece)
            + ") is too large for the machine's bed of "
            + style.number(bed.length())
            + " x "
            + style.format(bed.width())
            + ", however it is turned ("
            + margin
            + " margin). ";
    String bedInFile = "write the bed of a larger machine under `machine:` as `bed:`.";
    if (!hasRoadbed()) {
      String parts = "List it under `pieces:` as two or more smaller pieces, or ";
      return new Told(why + parts + bedInFile, why + "Make it smaller, or use a larger machine.");
    }
    boolean lead = hasLead(piece);
    return new Told(
        why
            + "Fix: cut a turn into more pieces (`segments-per-turn:`)"
            + (lead ? ", shorten the straight (`lead-in:` under `bottom:` or `top:`)" : "")
            + ", or "
            + bedInFile,
        why
            + "Fix: set a larger number of Segments per turn"
            + (lead ? ", a shorter Lead under Entry or Exit" : "")
            + ", or use a larger machine.");
  }

  private boolean hasRoadbed() {
    return job.structure().isPresent() || job.helix().isPresent();
  }

  private static boolean hasLead(Piece piece) {
    return !(piece.shape().blank() instanceof AnnularSector) && piece.name().contains("straight");
  }

  /** What makes any piece smaller, if nothing better is known. */
  private Told inParts() {
    return hasRoadbed()
        ? new Told(
            "Offer a larger sheet, or cut a turn into more pieces (`segments-per-turn:`).",
            "Offer a larger sheet, or set a larger number of Segments per turn.")
        : new Told(
            "Offer a larger sheet, or list it under `pieces:` as two or more smaller pieces.",
            "Offer a larger sheet, or make the piece smaller.");
  }

  /** That the straight may be shorter, and how to have the rest cut too. */
  private Told joinedOn(ShorterLead lead) {
    LengthStyle style = job.style();
    String width = style.formatGiven(job.structure().orElseThrow().plan().spec().ground().width());
    String end = lead.entry() ? "entry" : "exit";
    int count = job.structure().orElseThrow().plan().spec().construction().layers();
    String then = style.formatGiven(lead.then());
    String rest = style.formatGiven(lead.rest());
    String why =
        "The straight lead at the %s makes it so large. With %s of straight in one it fits (tried): "
            .formatted(end, then);
    String joint = ", with a splice plate under the joint and a support beside it";
    return new Told(
        why
            + "write `lead-in: %s` under `%s:`, and join the rest on as a piece of its own, under `pieces:` `- {name: rest of the %s lead, count: %s, strip: {length: %s, width: %s}}`"
                .formatted(then, lead.entry() ? "bottom" : "top", end, count, rest, width)
            + joint
            + (lead.works()
                ? "."
                : "; the slope then runs over that joint, see `curvestock helix`."),
        why
            + "set Lead to %s under %s, and join on %s of %s x %s"
                .formatted(
                    then,
                    lead.entry() ? "Entry, bottom" : "Exit, top",
                    count == 1 ? "a strip" : count + " strips",
                    rest,
                    width)
            + joint
            + (lead.works() ? "." : "; the slope then runs over that joint: see the checks."));
  }

  /** That no sheet has the piece's thickness. */
  String forThickness(Piece piece) {
    return "Piece "
        + piece.id()
        + " ("
        + piece.name()
        + ") must be "
        + job.style().formatGiven(piece.thickness().orElse(job.sheets().get(0).thickness()))
        + " thick, but no sheet is: add one to `sheets:`.";
  }

  /** That no sheet for the piece can be brought home. */
  String forCarrying(Piece piece) {
    if (job.machine().bed().isPresent()) {
      return "No sheet for piece "
          + piece.id()
          + " ("
          + piece.name()
          + ") can be ripped so that its panels fit the machine's bed: check `bed:` of `machine:`, or"
          + " offer smaller sheets. Remnants of odd shape and sheets with defects must fit the bed"
          + " as they are.";
    }
    return "No sheet for piece "
        + piece.id()
        + " ("
        + piece.name()
        + ") yields a panel that you can take home, however the store rips it: raise `carry:` of `store-cuts:`, or"
        + " offer smaller sheets.";
  }

  private String describe(Piece piece) {
    LengthStyle style = job.style();
    if (piece.shape().blank() instanceof AnnularSector sector) {
      String size =
          sector.isRing()
              ? "a full ring of " + style.format(sector.outerRadius().times(2)) + " outer diameter"
              : piece.name() + ", " + style.format(sector.chord()) + " across its ends";
      return size + ", " + style.format(sector.width()) + " wide";
    }
    double[] box = {piece.shape().outline().box().width(), piece.shape().outline().box().height()};
    return piece.name()
        + ", "
        + style.format(Length.ofMillimetres(box[0]))
        + " x "
        + style.format(Length.ofMillimetres(box[1]));
  }

  /** What the piece could be cut from: panels where the store rips the sheets. */
  private List<SheetStock> offered(Piece piece) {
    return job.products().stream()
        .filter(product -> job.suits(piece, product.stock()))
        .flatMap(product -> product.breakdowns().stream())
        .flatMap(breakdown -> breakdown.panels().stream())
        .map(Panel::stock)
        .toList();
  }

  private String sheets(Piece piece) {
    LengthStyle style = job.style();
    List<String> names = new ArrayList<>();
    for (SheetStock sheet : offered(piece)) {
      names.add(
          sheet.name()
              + " ("
              + style.format(sheet.length())
              + " x "
              + style.format(sheet.width())
              + ", "
              + style.formatGiven(job.cutting().margin())
              + " margin)");
    }
    return String.join(" or ", names);
  }

  private String forSector(Piece piece, AnnularSector sector) {
    int degrees = 0;
    for (int angle = (int) Math.ceil(sector.sweep().degrees()) - 1; angle >= 1; angle--) {
      Piece shorter =
          Piece.of(
              piece.id(),
              piece.name(),
              new AnnularSector(sector.radius(), sector.width(), Angle.ofDegrees(angle)));
      if (offered(piece).stream().anyMatch(s -> !Fit.isImpossible(shorter, s, job.cutting()))) {
        degrees = angle;
        break;
      }
    }
    return degrees == 0
        ? "No segment of this radius and width fits: offer a larger sheet or make it narrower."
        : "Cut it as shorter segments: up to about "
            + degrees
            + "° of this radius and width can lie on one sheet. Thirds (120°), quarters (90°) or sixths"
            + " (60°) of a turn are typical.";
  }
}

package curvestock.job;

/**
 * A small whole helix, invented: N, two turns and a quarter, on rods, plates of the same sheets.
 */
public final class HelixJob {

  public static final String TEXT =
      """
      curvestock: 1
      title: Window seat helix
      units: mm
      sheets:
        - name: birch 6 mm
          size: 800x1200 mm
          thickness: 6.2
          price: 20
      cutting: {kerf: 3, margin: 5}
      helix:
        scale: N
        turns: 2 1/4
        radius: 330
        width: 70
        rise-per-turn: 60
        segments-per-turn: 6
        joint: {plate: {length: 60, inset: 12, screws-each-side: 2}}
        heights: {underlay: 0, ties: 1.6, rail: 1.4}
        bottom: {vertical-curve: 300, climb-lead: 200, lead-in: 220}
        top: {vertical-curve: 300, climb-lead: 200, lead-in: 220}
        supports:
          per-turn: 12
          foot-height: 40
          rods: {thread: M8, inset: 12, fit: 0.4}
        trains: {tallest: 30, spare: 2, opening: 500}
        prices: {nut: 0.05, washer: 0.03}
      search: {seed: 1, effort: quick}
      """;

  private HelixJob() {}

  /** The job with one place replaced. */
  public static String with(String find, String put) {
    if (!TEXT.contains(find)) {
      throw new IllegalStateException("the helix job does not hold " + find);
    }
    return TEXT.replace(find, put);
  }

  public static Job read() {
    return JobReader.read(TEXT, "helix.yaml");
  }
}

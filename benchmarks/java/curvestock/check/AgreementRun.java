package curvestock.check;

/** The long run of {@link PosePairs}: {@code AgreementRun [pairs] [seed]}. */
public final class AgreementRun {

  private AgreementRun() {}

  public static void main(String[] args) {
    int count = args.length > 0 ? Integer.parseInt(args[0]) : 100_000;
    long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
    PosePairs pairs = new PosePairs(seed);
    int faults = 0;
    for (int i = 0; i < count; i++) {
      try {
        pairs.next();
      } catch (AssertionError e) {
        faults++;
        System.out.println("pair " + i + ": " + e.getMessage());
      }
      if (i % 10_000 == 9_999) {
        System.err.println((i + 1) + " pairs: " + pairs);
      }
    }
    System.out.println(count + " pairs, seed " + seed + ": " + pairs + "; " + faults + " faults");
    System.exit(faults == 0 ? 0 : 1);
  }
}

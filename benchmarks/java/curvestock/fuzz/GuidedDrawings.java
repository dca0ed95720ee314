package curvestock.fuzz;

import curvestock.check.Expectation;
import curvestock.drawing.SampleLayouts;
import java.nio.charset.StandardCharsets;

/** Drawings grown by a fuzzer that watches which branches are taken (Jazzer). */
public final class GuidedDrawings {

  private static final Expectation EXPECTATION = Expectation.of(SampleLayouts.mixed());

  private GuidedDrawings() {}

  /** Called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] bytes) {
    Trial.check(new String(bytes, StandardCharsets.UTF_8), EXPECTATION);
  }
}

package curvestock.cli;

import picocli.CommandLine.Option;

/** The option that all commands share which can fail. */
final class DebugOption {

  @Option(
      names = "--debug",
      description =
          "If Curvestock has a bug, print where it happened, so that you can send it with your bug report.")
  private boolean debug;

  boolean isGiven() {
    return debug;
  }
}

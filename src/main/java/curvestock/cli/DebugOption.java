package curvestock.cli;

import picocli.CommandLine.Option;

/** The option that all commands share which can fail. */
final class DebugOption {

  @Option(
      names = "--debug",
      description = "Print where in the program a bug happened, for a report.")
  private boolean debug;

  boolean isGiven() {
    return debug;
  }
}

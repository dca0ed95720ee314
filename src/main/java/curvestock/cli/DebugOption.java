package curvestock.cli;

import picocli.CommandLine.Option;

/** The option that all commands share which can fail. */
final class DebugOption {

  @Option(names = "--debug", description = "Print stack traces of faults.")
  private boolean debug;

  boolean isGiven() {
    return debug;
  }
}

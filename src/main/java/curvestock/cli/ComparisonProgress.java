package curvestock.cli;

import curvestock.compare.CompareListener;

/** Shows on the terminal how far a comparison has come, and how long it will still take. */
class ComparisonProgress implements CompareListener {

  private final Terminal terminal;

  ComparisonProgress(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public void step(String what) {
    terminal.step(what);
  }

  @Override
  public void worked(long done, long budget) {
    terminal.worked(done, budget);
  }

  @Override
  public boolean stopped() {
    return terminal.stopped();
  }

  @Override
  public void overall(double share) {
    terminal.overall(share);
  }
}

package curvestock.compare;

import curvestock.plan.PlanListener;

/** Passes on what planning says, each step with the name of the option that is planned. */
record Named(String name, PlanListener to) implements PlanListener {

  @Override
  public void step(String what) {
    to.step(name + ": " + what);
  }

  @Override
  public void worked(long done, long budget) {
    to.worked(done, budget);
  }

  @Override
  public boolean stopped() {
    return to.stopped();
  }
}

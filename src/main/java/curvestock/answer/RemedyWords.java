package curvestock.answer;

import curvestock.helix.HelixPlan;
import curvestock.helix.Remedies;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Whole helixes that would work where one does not, with what they change. */
public final class RemedyWords {

  private final HelixPlan plan;
  private final HelixSpec spec;
  private final Figures figures;

  public RemedyWords(Building helix, Figures figures) {
    this.plan = helix.plan();
    this.spec = plan.spec();
    this.figures = figures;
  }

  /** A line for each, or one that says that there is none. */
  public List<String> lines() {
    List<HelixPlan> others = Remedies.of(plan);
    if (others.isEmpty()) {
      return List.of(
          "No other number of turns, radius or width works with all else as stated, even with tracks"
              + " and plates changed; fix the checks one by one.");
    }
    List<String> lines = new ArrayList<>();
    others.forEach(other -> lines.add(remedy(other)));
    return lines;
  }

  private String remedy(HelixPlan other) {
    List<String> changes = new ArrayList<>();
    if (Math.abs(other.climb().turns() - plan.climb().turns()) > 1e-9) {
      changes.add(
          Figures.decimal(other.climb().turns(), 3)
              + " turns (now "
              + Figures.decimal(plan.climb().turns(), 3)
              + ")");
    }
    GroundPlan ground = other.spec().ground();
    change(changes, "climb", other.climb().climb(), plan.climb().climb());
    change(changes, "radius", ground.bedRadius(), spec.ground().bedRadius());
    change(changes, "roadbed width", ground.width(), spec.ground().width());
    if (ground.trackSpacing().isPresent()) {
      Length before = spec.ground().trackSpacing().orElseThrow();
      change(changes, "track spacing", ground.trackSpacing().get(), before);
    }
    if (other.spec().construction() instanceof Construction.ButtWithPlate now
        && spec.construction() instanceof Construction.ButtWithPlate before) {
      change(changes, "inset of the splice plates", now.plate().inset(), before.plate().inset());
    }
    if (!other.spec().construction().title().equals(spec.construction().title())) {
      changes.add(other.spec().construction().title());
    }
    if (other.spec().construction() instanceof Construction.PlatesBeside now
        && spec.construction() instanceof Construction.PlatesBeside before) {
      change(changes, "height of the side plates", now.height(), before.height());
    }
    end(changes, "entry", other.spec().bottom(), spec.bottom());
    end(changes, "exit", other.spec().top(), spec.top());
    if (!other.spec().supports().firstAt().equals(spec.supports().firstAt())) {
      changes.add(
          other
              .spec()
              .supports()
              .firstAt()
              .map(place -> "first support " + figures.length(place) + " from the ring's entry")
              .orElse("first support placed by Curvestock (leave out `first-at`)"));
    }
    if (other.spec().supports().perTurn() != spec.supports().perTurn()) {
      changes.add(other.spec().supports().perTurn() + " supports per turn");
    }
    return "%s: %s a turn, grade %s, clearance %s; track leaves at %s%s"
        .formatted(
            String.join(", ", changes),
            figures.length(other.climb().risePerTurn()),
            other.trackGrades().get(0),
            figures.length(other.budgets().get(0).free()),
            figures.bearing(other.line().bearing(other.climb().ringLength())),
            marginal(other));
  }

  private void end(List<String> changes, String end, EndPlan now, EndPlan before) {
    change(changes, "climb lead at the " + end, now.climbLead(), before.climbLead());
    change(changes, "lead at the " + end, now.leadIn(), before.leadIn());
    change(changes, "vertical curve at the " + end, now.verticalCurve(), before.verticalCurve());
    change(changes, "easement at the " + end, now.easement(), before.easement());
  }

  private static String marginal(HelixPlan other) {
    List<String> rules =
        other.verdicts().stream()
            .filter(verdict -> verdict.state() == State.MARGINAL)
            .map(VerdictWords::title)
            .toList();
    return rules.isEmpty() ? "" : "; marginal: " + String.join(", ", rules);
  }

  private void change(List<String> changes, String what, Length now, Length before) {
    if (Math.abs(now.minus(before).millimetres()) > 1e-9) {
      changes.add(what + " " + figures.length(now) + " (now " + figures.length(before) + ")");
    }
  }
}

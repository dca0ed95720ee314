package curvestock.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.app.Workshop;
import curvestock.compare.Division;
import curvestock.job.Job;
import curvestock.layout.LaidSheet;
import curvestock.packing.Effort;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The answer to a job: the sizes by regular patterns at once, then a first plan of the job, a quick
 * one, quick plans of the other segment sizes, and the plan at the job's own effort. What was found
 * before is not searched for again, and nothing found is given back for something worse.
 */
final class PlanWork extends Work {

  private final Optional<List<LaidSheet>> byHand;
  private final boolean further;
  private Optional<SizeDesk> desk = Optional.empty();
  private Optional<Plan> told = Optional.empty();

  /**
   * @param byHand layouts that the user has laid himself; the search then leaves them alone
   * @param further whether to search on where an earlier search has ended
   */
  PlanWork(
      String id, Asked asked, Shared shared, Optional<List<LaidSheet>> byHand, boolean further) {
    super(id, asked, shared);
    this.byHand = byHand;
    this.further = further;
  }

  @Override
  void atOnce() {
    if (job().helix().isPresent() || job().structure().isPresent()) {
      desk = Optional.of(new SizeDesk(asked(), shared()));
      tellDecision();
    }
  }

  @Override
  void answer() throws Infeasible {
    Effort before = best(asked()).flatMap(KnownPlans.Known::searched).orElse(Effort.QUICK);
    Effort wanted = further && best(asked()).isPresent() ? after(before) : job().search().effort();
    try {
      own();
    } catch (Infeasible e) {
      desk.ifPresent(sizes -> sizes.impossible(sizes.own(), e));
      tellDecision();
      others();
      throw e;
    }
    others();
    deepen(wanted);
  }

  private static Effort after(Effort done) {
    return done == Effort.QUICK ? Effort.NORMAL : Effort.THOROUGH;
  }

  private Optional<KnownPlans.Known> best(Asked which) {
    return shared().plans().find(which.planned(), which.job());
  }

  /**
   * The job in its own size: what is known, else a first plan within a second, then a quick one.
   */
  private void own() throws Infeasible {
    progress().stage("First layout");
    if (best(asked()).isEmpty()) {
      first();
    }
    if (best(asked()).isPresent()) {
      tellBest("first", "");
    }
    if (byHand.isPresent() && best(asked()).isPresent()) {
      tellByHand(best(asked()).orElseThrow().plan(), byHand.get());
      return;
    }
    progress().stage("Quick search");
    search(asked(), Effort.QUICK);
    if (best(asked()).isEmpty()) {
      // Stopped before a search had found room for a piece that no pattern lays.
      throw new Infeasible(
          List.of("No plan was found before the search was stopped: continue searching."));
    }
    tellBest("quick", "");
    byHand.ifPresent(laid -> tellByHand(best(asked()).orElseThrow().plan(), laid));
  }

  /** Pieces that no regular pattern lays may be laid by a search: that is tried next. */
  private void first() {
    try {
      Plan plan = planned(job(), new AtOnce());
      shared().plans().keep(asked().planned(), job(), plan, Optional.empty());
    } catch (Infeasible e) {
      progress().step(e.onPage());
    }
  }

  /** Asks the first plan to be made without a search; given up like all others. */
  private final class AtOnce implements PlanListener {
    @Override
    public boolean stopped() {
      progress().stopped();
      return true;
    }
  }

  private Plan planned(Job job, PlanListener listener) throws Infeasible {
    return Workshop.plan(job, listener, shared().packers());
  }

  /** Searches, unless that was done, and keeps what is found if it is better. */
  private void search(Asked which, Effort effort) throws Infeasible {
    if (best(which).filter(known -> known.isSearched(effort)).isPresent() || progress().stopped()) {
      return;
    }
    Plan found = planned(which.job().with(which.job().search().at(effort)), progress());
    Optional<Effort> searched = found.stopped() ? Optional.empty() : Optional.of(effort);
    shared().plans().keep(which.planned(), which.job(), found, searched);
  }

  private void others() {
    if (desk.isEmpty()) {
      return;
    }
    SizeDesk sizes = desk.get();
    progress().stage("Planning the other sizes");
    ClassLoader loader = Thread.currentThread().getContextClassLoader();
    sizes.others().parallelStream()
        .forEach(
            division -> {
              Thread.currentThread().setContextClassLoader(loader);
              if (!progress().stopped()) {
                plan(sizes, division);
                progress().overall((double) sizes.done() / sizes.all());
                tellDecision();
              }
            });
    sizes.comparison().ifPresent(this::keep);
  }

  private void plan(SizeDesk sizes, Division division) {
    try {
      Asked other = sizes.asked(division);
      search(other, Effort.QUICK);
      best(other).ifPresent(known -> sizes.planned(division, known.plan()));
    } catch (Infeasible e) {
      sizes.impossible(division, e);
    }
  }

  private void deepen(Effort wanted) {
    Plan quick = best(asked()).orElseThrow().plan();
    if (byHand.isPresent() || wanted == Effort.QUICK || progress().stopped()) {
      return;
    }
    if (!isProvenBest(quick)) {
      progress().stage("Longer search");
      try {
        search(asked(), wanted);
      } catch (Infeasible e) {
        // Broken off before it had as much as the quick plan, which stands.
        progress().step(e.onPage());
      }
      Plan deep = best(asked()).orElseThrow().plan();
      tellBest(wanted.name().toLowerCase(Locale.ROOT), Gain.words(quick, deep, job().currency()));
      desk.flatMap(SizeDesk::comparison).ifPresent(this::keep);
    }
  }

  private static boolean isProvenBest(Plan plan) {
    return plan.cost().isProvenLeast() && plan.cost().leastSheets() >= plan.purchase().sheets();
  }

  /**
   * Tells the best plan known of the job in its own size, and the decision that follows from it.
   */
  private void tellBest(String stage, String gained) {
    KnownPlans.Known known = best(asked()).orElseThrow();
    desk.ifPresent(sizes -> sizes.planned(sizes.own(), known.plan()));
    if (!told.equals(Optional.of(known.plan())) || !gained.isEmpty()) {
      told = Optional.of(known.plan());
      boolean open = !isProvenBest(known.plan()) && !known.isSearched(Effort.THOROUGH);
      tell(known.plan(), stage, gained, open);
    }
    tellDecision();
  }

  private void tellDecision() {
    desk.ifPresent(sizes -> events().tell("decision", Json.text(sizes.view().json())));
  }

  private void tellByHand(Plan basis, List<LaidSheet> layouts) {
    try {
      tell(Workshop.laid(basis, layouts), "hand", "", false);
    } catch (IllegalArgumentException e) {
      events().tell("unfit", Json.text(Json.object().put("message", e.getMessage())));
    }
  }

  /** What is known of the job's helix at once, for the page's first picture. */
  static ObjectNode look(Asked asked, Shared shared) {
    ObjectNode root = Json.object().put("fingerprint", asked.fingerprint());
    if (asked.job().structure().isPresent()) {
      root.set("helix", HelixView.of(Workshop.helix(asked.job(), false, PlanListener.NONE)));
    }
    if (asked.job().helix().isPresent() || asked.job().structure().isPresent()) {
      root.set("decision", new SizeDesk(asked, shared).view().json());
    }
    return root;
  }
}

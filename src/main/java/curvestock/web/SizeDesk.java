package curvestock.web;

import curvestock.answer.DecisionWords;
import curvestock.app.Workshop;
import curvestock.compare.Comparison;
import curvestock.compare.Division;
import curvestock.compare.Recommendation;
import curvestock.compare.Refusal;
import curvestock.compare.SegmentOption;
import curvestock.compare.SizeLook;
import curvestock.compare.Sizes;
import curvestock.job.Job;
import curvestock.job.JobException;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The segment sizes of one question side by side: by regular patterns at first, by plans as they
 * become known.
 */
final class SizeDesk {

  private final Asked asked;
  private final Sizes sizes;
  private final Shared shared;
  private final List<Division> divisions;
  private final Map<Division, SizeLook> looks = new LinkedHashMap<>();
  private final Map<Division, SegmentOption> planned = new LinkedHashMap<>();
  private final Map<Division, String> refused = new LinkedHashMap<>();

  /**
   * @throws IllegalArgumentException if the job has no helix
   */
  SizeDesk(Asked asked, Shared shared) {
    this.asked = asked;
    this.shared = shared;
    this.sizes = Sizes.of(asked.job(), shared.packers());
    this.divisions = sizes.divisions();
    look();
  }

  /** What was known before counts at once; of the others a pattern, as many at a time as cores. */
  private void look() {
    ClassLoader loader = Thread.currentThread().getContextClassLoader();
    divisions.parallelStream()
        .forEach(
            division -> {
              Thread.currentThread().setContextClassLoader(loader);
              try {
                Optional<Plan> known = shared.plans().find(JobTrees.planned(tree(division)));
                if (known.isPresent()) {
                  put(division, sizes.planned(division, known.get()));
                } else {
                  put(division, sizes.look(division));
                }
              } catch (Infeasible e) {
                refuse(division, e.onPage());
              }
            });
  }

  private synchronized void put(Division division, SizeLook look) {
    looks.put(division, look);
  }

  private synchronized void put(Division division, SegmentOption option) {
    planned.put(division, option);
  }

  private synchronized void refuse(Division division, String why) {
    planned.remove(division);
    looks.remove(division);
    refused.put(division, why.lines().findFirst().orElse(""));
  }

  boolean isOwn(Division division) {
    return sizes.isOwn(division);
  }

  /** The sizes but the job's own, the one that looks cheapest first. */
  synchronized List<Division> others() {
    List<Division> others = new ArrayList<>(divisions);
    others.removeIf(division -> isOwn(division) || refused.containsKey(division));
    others.sort(java.util.Comparator.comparingLong(this::guess));
    return others;
  }

  private long guess(Division division) {
    SizeLook look = looks.get(division);
    return look == null || look.sheets() == 0 ? Long.MAX_VALUE : look.paid().minorUnits();
  }

  /** The job's tree in that size; its own as it stands. */
  Map<String, Object> tree(Division division) {
    return isOwn(division) ? asked.tree() : JobTrees.divided(asked.tree(), division);
  }

  /**
   * The job in that size.
   *
   * @throws Infeasible if there cannot be one
   */
  Asked asked(Division division) throws Infeasible {
    Map<String, Object> tree = tree(division);
    try {
      Job job = Workshop.readJob(Json.text(Json.tree(tree)), "job");
      return new Asked(asked.fingerprint(), tree, job.with(asked.job().search()));
    } catch (JobException e) {
      throw new Infeasible(List.of(e.problems().get(0).message()));
    }
  }

  /** A plan of the job in that size is known now. */
  void planned(Division division, Plan plan) {
    try {
      SegmentOption option = sizes.planned(division, plan);
      put(division, option);
    } catch (Infeasible e) {
      refuse(division, e.onPage());
    }
  }

  /** It cannot be cut in that size. */
  void impossible(Division division, Infeasible why) {
    refuse(division, why.onPage());
  }

  Division own() {
    return divisions.stream().filter(this::isOwn).findFirst().orElseThrow();
  }

  /** How many sizes need no more planning, of all. */
  synchronized int done() {
    return planned.size() + refused.size();
  }

  int all() {
    return divisions.size();
  }

  /** All sizes as a comparison; nothing while one of them has no plan. */
  synchronized Optional<Comparison> comparison() {
    return done() < divisions.size() || planned.isEmpty()
        ? Optional.empty()
        : Optional.of(sizes.compared(options(), refusals(), false));
  }

  private List<SegmentOption> options() {
    return divisions.stream().filter(planned::containsKey).map(planned::get).toList();
  }

  private List<Refusal> refusals() {
    return divisions.stream()
        .filter(refused::containsKey)
        .map(each -> new Refusal(each.largest(), refused.get(each)))
        .toList();
  }

  /** What the page shows of it. */
  synchronized DecisionView view() {
    List<SizeLook> open =
        divisions.stream()
            .filter(each -> looks.containsKey(each) && !planned.containsKey(each))
            .map(looks::get)
            .toList();
    Optional<Recommendation> best = sizes.best(open, options());
    DecisionView view =
        new DecisionView(
            asked, sizes.joint(), best.map(Recommendation::best), comparison().isPresent());
    for (Division division : divisions) {
      if (planned.containsKey(division)) {
        view.planned(planned.get(division), isOwn(division));
      } else if (looks.containsKey(division)) {
        view.look(looks.get(division), isOwn(division));
      } else {
        view.refused(division, refused.getOrDefault(division, ""), isOwn(division));
      }
    }
    DecisionWords words = new DecisionWords(asked.job());
    Optional<Comparison> whole = comparison();
    if (whole.isPresent()) {
      words.whole(whole.get()).forEach(view::say);
    } else {
      best.flatMap(choice -> soFar(words, choice.best())).ifPresent(view::say);
    }
    return view;
  }

  private Optional<String> soFar(DecisionWords words, Division best) {
    Optional<SegmentOption> option =
        options().stream().filter(each -> each.division().equals(best)).findFirst();
    if (option.isPresent()) {
      return Optional.of(
          words.soFar(best, option.get().sheets(), option.get().sheetCost(), done(), all()));
    }
    return looks.values().stream()
        .filter(look -> look.division().equals(best))
        .findFirst()
        .map(look -> words.soFar(best, look.sheets(), look.paid(), done(), all()));
  }
}

package curvestock.app;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What the job alone decides is made once, while its sheets are searched, and is the same. */
class JobFilesTest {

  private static final PlanListener ATONCE =
      new PlanListener() {
        @Override
        public boolean stopped() {
          return true;
        }
      };

  @Test
  void of_jobBegunBeforeItsPlan_takesWhatWasBegun() throws Exception {
    Job job = Workshop.readJob(Optional.empty());
    JobFiles begun = JobFiles.begin(job, true);
    Plan plan = Workshop.plan(job, ATONCE);

    assertThat(JobFiles.of(plan.job(), true, Optional.of(begun)))
        .isSameAs(JobFiles.of(plan.job(), true, Optional.of(begun)));
    assertThat(JobFiles.of(plan.job(), true, Optional.of(begun)).contents())
        .containsExactlyInAnyOrderEntriesOf(JobFiles.of(plan.job(), true).contents());
  }

  @Test
  void of_anotherJobOrWithoutPapers_isMadeAnew() throws Exception {
    Job job = Workshop.readJob(Optional.empty());
    JobFiles begun = JobFiles.begin(job, false);
    Job other = job.with(job.search().at(Effort.THOROUGH));

    assertThat(JobFiles.of(job, true, Optional.of(begun)).paths()).contains("footprint.pdf");
    assertThat(new TreeSet<>(JobFiles.of(other, false, Optional.of(begun)).paths()))
        .isEqualTo(new TreeSet<>(JobFiles.of(job, false, Optional.of(begun)).paths()));
  }
}

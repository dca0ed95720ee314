package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WorkEventsTest {

  private final WorkEvents events = new WorkEvents();

  @Test
  void listener_thatIsSlow_holdsUpNobodyElse() throws Exception {
    CountDownLatch busy = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    events.listen(
        event -> {
          busy.countDown();
          await(go);
        });
    Thread teller = new Thread(() -> events.tell("progress", "{}"));
    teller.start();
    assertThat(busy.await(10, TimeUnit.SECONDS)).isTrue();

    // With the lock held while the slow one is told, none of these would come back.
    CountDownLatch others = new CountDownLatch(1);
    Thread other =
        new Thread(
            () -> {
              events.tell("plan", "{}");
              events.isOver();
              others.countDown();
            });
    other.start();

    assertThat(others.await(10, TimeUnit.SECONDS)).isTrue();
    go.countDown();
    teller.join(10_000);
    other.join(10_000);
  }

  private static void await(CountDownLatch latch) {
    try {
      assertThat(latch.await(20, TimeUnit.SECONDS)).isTrue();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void events_toldByManyThreads_areHeardOnceAndTheLastOneLast() throws Exception {
    List<String> heard = Collections.synchronizedList(new ArrayList<>());
    events.listen(event -> heard.add(event.name()));
    List<Thread> tellers =
        IntStream.range(0, 8)
            .mapToObj(
                t ->
                    new Thread(
                        () -> IntStream.range(0, 200).forEach(i -> events.tell(t + "-" + i, "{}"))))
            .toList();
    tellers.forEach(Thread::start);
    for (Thread teller : tellers) {
      teller.join(20_000);
    }
    events.end("done", "{}");
    events.tell("after", "{}");

    assertThat(heard).hasSize(8 * 200 + 1).doesNotHaveDuplicates().endsWith("done");
  }

  @Test
  void listener_whoComesLate_hearsTheLastOfEachName() {
    events.tell("progress", "1");
    events.tell("plan", "2");
    events.tell("progress", "3");
    List<String> heard = new ArrayList<>();
    events.listen(event -> heard.add(event.json()));

    assertThat(heard).containsExactly("2", "3");
    assertThat(events.listening()).isEqualTo(1);
  }
}

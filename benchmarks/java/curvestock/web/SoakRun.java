package curvestock.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.job.JobText;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.LongAdder;

/**
 * Many impatient clients at once on the page's server: {@code SoakRun [clients] [minutes] [seed]}.
 *
 * <p>Each starts computations, follows some to their end, cancels some, leaves some alone, and now
 * and then sends nonsense. Prints the heap after collection each minute, and at the end what was
 * answered and how evenly the plans fell to the clients. Exits with 1 on any answer that should not
 * be.
 */
public final class SoakRun {

  private static final Set<String> ENDS = Set.of("done", "refused", "cancelled", "failed");

  private final PageServer server;
  private final AtomicBoolean over = new AtomicBoolean();
  private final Map<String, LongAdder> counts = new ConcurrentSkipListMap<>();
  private final AtomicInteger faults = new AtomicInteger();
  private final AtomicInteger[] plans;

  private SoakRun(PageServer server, int clients) {
    this.server = server;
    this.plans = new AtomicInteger[clients];
    Arrays.setAll(plans, k -> new AtomicInteger());
  }

  public static void main(String[] args) throws Exception {
    int clients = args.length > 0 ? Integer.parseInt(args[0]) : 50;
    int minutes = args.length > 1 ? Integer.parseInt(args[1]) : 10;
    long seed = args.length > 2 ? Long.parseLong(args[2]) : 1;
    try (PageServer server = PageServer.start(Binding.loopback(0))) {
      SoakRun soak = new SoakRun(server, clients);
      soak.run(clients, minutes, seed);
      System.exit(soak.faults.get() == 0 ? 0 : 1);
    }
  }

  private void run(int clients, int minutes, long seed) throws InterruptedException {
    List<Thread> threads = new ArrayList<>();
    for (int k = 0; k < clients; k++) {
      int number = k;
      Thread thread = new Thread(() -> behave(number, seed), "client-" + k);
      thread.setDaemon(true);
      thread.start();
      threads.add(thread);
    }
    for (int minute = 1; minute <= minutes; minute++) {
      Thread.sleep(Duration.ofMinutes(1).toMillis());
      System.gc();
      Runtime machine = Runtime.getRuntime();
      System.out.printf(
          Locale.ROOT,
          "minute %d: heap after collection %d MB, %d threads, %s%n",
          minute,
          (machine.totalMemory() - machine.freeMemory()) >> 20,
          Thread.activeCount(),
          counts);
    }
    over.set(true);
    for (Thread thread : threads) {
      thread.join(Client.PATIENCE.toMillis());
      if (thread.isAlive()) {
        fault(thread.getName() + " got no answer to the end");
      }
    }
    int[] each = Arrays.stream(plans).mapToInt(AtomicInteger::get).sorted().toArray();
    System.out.println(
        clients
            + " clients, "
            + minutes
            + " minutes, seed "
            + seed
            + ": "
            + counts
            + "; plans a client: least "
            + each[0]
            + ", middle "
            + each[each.length / 2]
            + ", most "
            + each[each.length - 1]
            + "; "
            + faults
            + " faults");
  }

  private void behave(int number, long seed) {
    SplittableRandom random = new SplittableRandom(seed * 1000 + number);
    Client client = new Client(server);
    while (!over.get()) {
      try {
        if (random.nextInt(8) == 0) {
          nonsense(client, random);
        } else {
          compute(client, number, random);
        }
      } catch (InterruptedException e) {
        return;
      } catch (IOException | RuntimeException e) {
        fault("client " + number + ": " + e);
      }
    }
  }

  private void compute(Client client, int number, SplittableRandom random)
      throws IOException, InterruptedException {
    String text = Jobs.PIECES.replace("count: 8", "count: " + random.nextInt(1, 30));
    ObjectNode request = Json.object().put("client", "client-" + number).put("fingerprint", "soak");
    request.set("job", Json.tree(JobText.tree(text, "job")));
    HttpResponse<String> answer = client.post("/api/work", request.toString());
    if (answer.statusCode() == 503) {
      count("busy");
      Thread.sleep(random.nextInt(200, 2_000));
      return;
    }
    if (!expect(answer, 202)) {
      return;
    }
    count("started");
    String id = Json.own(answer.body()).get("id").textValue();
    switch (random.nextInt(5)) {
      case 0 -> {
        Thread.sleep(random.nextInt(1_500));
        expect(client.delete("/api/work/" + id), 204, 404);
        count("cancelled");
      }
      case 1 -> count("left alone");
      default -> follow(client, number, id);
    }
  }

  private void follow(Client client, int number, String id)
      throws IOException, InterruptedException {
    List<WorkEvents.Event> events = client.events(id, ENDS::contains);
    if (events.isEmpty()) {
      // Forgotten meanwhile, as the oldest of too many.
      count("forgotten");
      return;
    }
    String end = events.get(events.size() - 1).name();
    count("ended " + end);
    if (end.equals("done")) {
      plans[number].incrementAndGet();
    }
    if (end.equals("failed") || !ENDS.contains(end)) {
      fault("client " + number + ": ended by " + events.get(events.size() - 1));
    }
  }

  private void nonsense(Client client, SplittableRandom random) throws IOException {
    count("nonsense");
    switch (random.nextInt(6)) {
      case 0 -> expect(client.post("/api/work", "{\"client\":"), 400);
      case 1 -> expect(client.post("/api/work", "{\"client\": \"x\", \"job\": {}}"), 422);
      case 2 -> expect(client.get("/api/work/nobody/events"), 404);
      case 3 -> expect(client.get("/../../etc/hostname"), 400, 404);
      case 4 -> expect(client.get("/api/start", "Origin", "http://example.org"), 403);
      default -> expect(client.post("/api/open", "[".repeat(100_000)), 400);
    }
  }

  private boolean expect(HttpResponse<String> answer, int... allowed) {
    boolean fine = Arrays.stream(allowed).anyMatch(code -> code == answer.statusCode());
    if (!fine) {
      fault(answer + " where " + Arrays.toString(allowed) + " was due: " + answer.body());
    }
    return fine;
  }

  private void count(String what) {
    counts.computeIfAbsent(what, key -> new LongAdder()).increment();
  }

  private void fault(String what) {
    faults.incrementAndGet();
    System.out.println("FAULT " + what);
  }
}

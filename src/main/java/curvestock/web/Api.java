package curvestock.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.app.Workshop;
import curvestock.app.WrongLayoutException;
import curvestock.job.DefaultJob;
import curvestock.job.Job;
import curvestock.job.JobException;
import curvestock.job.JobText;
import curvestock.layout.LaidSheet;
import curvestock.piece.Demand;
import curvestock.plan.Plan;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.ServiceUnavailableResponse;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Semaphore;

/** The JSON API: each route reads a request, asks the workshop, and writes the answer. */
final class Api {

  /** What the job is called in messages; the page shows the field instead of a line. */
  private static final String JOB = "job";

  /** Where a job file has its sheets laid by hand. */
  private static final String LAID = "laid";

  private static final int LONGEST_TEXT = 1_000_000;
  private static final int LONGEST_CLIENT = 64;

  /** More pieces are work for the command line. */
  private static final int MOST_PIECES = 3000;

  /** Streams of events of one computation: a page and what a reload leaves open for a while. */
  private static final int MOST_LISTENERS = 8;

  /** Each open stream keeps a connection; the page's other requests need some too. */
  private static final int MOST_STREAMS = 96;

  private final Works works;
  private final Optional<Runnable> stop;
  private final SecureRandom random = new SecureRandom();
  private final Semaphore packing = new Semaphore(1);

  /**
   * @param stop ends the program; nothing where a visitor must not do that
   */
  Api(Works works, Optional<Runnable> stop) {
    this.works = works;
    this.stop = stop;
  }

  List<Route> routes() {
    return List.of(
        Route.get("/api/openapi.json", this::openApi),
        Route.get("/api/alive", this::alive),
        Route.get("/api/start", this::start),
        Route.post("/api/open", this::open),
        Route.post("/api/save", this::save),
        Route.post("/api/gaps", this::gaps),
        Route.post("/api/look", this::look),
        Route.post("/api/work", this::work),
        Route.post("/api/work/{id}/improve", this::improve),
        Route.post("/api/work/{id}/enough", this::enough),
        Route.delete("/api/work/{id}", this::cancel),
        Route.post("/api/work/{id}/packet", this::packet),
        Route.post("/api/stop", this::stop));
  }

  private void openApi(Context ctx) {
    ctx.contentType("application/json").result(PageFiles.bytes("openapi.json"));
  }

  /** Whether the program is there. */
  private void alive(Context ctx) {
    ctx.status(204);
  }

  /** What a first visit shows: the embedded job, and what the trade usually takes. */
  private void start(Context ctx) {
    ObjectNode answer = Json.object();
    answer.put("text", DefaultJob.text());
    answer.set(JOB, Json.tree(JobText.tree(DefaultJob.text(), JOB)));
    answer.set("usual", Json.own(PageFiles.text("usual.json")));
    answer.put("mayStop", stop.isPresent());
    json(ctx, answer);
  }

  private void open(Context ctx) {
    String text = Json.needText(Json.request(ctx.body()), "text", LONGEST_TEXT);
    try {
      Map<String, Object> tree = new LinkedHashMap<>(JobText.tree(text, JOB));
      ObjectNode answer = Json.object();
      if (tree.remove(LAID) != null) {
        // Sheets laid by hand come apart from the job; wrong ones are told like any mistake.
        answer.set("hand", HandWork.json(Workshop.readJob(text, JOB).laid()));
      }
      answer.set(JOB, Json.tree(tree));
      json(ctx, answer);
    } catch (JobException e) {
      problems(ctx, 422, e);
    }
  }

  private void save(Context ctx) {
    JsonNode request = Json.request(ctx.body());
    String original = Json.needText(request, "original", LONGEST_TEXT);
    Map<String, Object> job = Json.needJob(request);
    JsonNode hand = request.get("hand");
    if (hand != null && !hand.isNull()) {
      job.put(LAID, HandWork.inJob(hand));
    }
    try {
      json(ctx, Json.object().put("text", JobText.written(original, job)));
    } catch (JobException e) {
      problems(ctx, 422, e);
    }
  }

  private void gaps(Context ctx) {
    JsonNode request = Json.request(ctx.body());
    Optional<Job> job = job(ctx, request);
    job.ifPresent(
        known -> json(ctx, HandWork.gaps(HandWork.layout(request.path("sheet"), known), known)));
  }

  /** What regular patterns and former plans say at once of all segment sizes. */
  private void look(Context ctx) {
    asked(ctx, Json.request(ctx.body()))
        .ifPresent(asked -> json(ctx, PlanWork.look(asked, works.shared())));
  }

  private Optional<Asked> asked(Context ctx, JsonNode request) {
    String fingerprint = Json.needText(request, "fingerprint", LONGEST_CLIENT);
    return job(ctx, request).map(job -> new Asked(fingerprint, Json.needJob(request), job));
  }

  private void work(Context ctx) {
    JsonNode request = Json.request(ctx.body());
    String client = Json.needText(request, "client", LONGEST_CLIENT);
    Optional<Asked> asked = asked(ctx, request);
    if (asked.isEmpty()) {
      return;
    }
    JsonNode hand = request.get("hand");
    Optional<List<LaidSheet>> byHand =
        hand == null || hand.isNull()
            ? Optional.empty()
            : Optional.of(HandWork.sheets(hand, asked.get().job()));
    boolean further = request.path("further").asBoolean();
    Work work = new PlanWork(newId(), asked.get(), works.shared(), byHand, further);
    works.start(client, work);
    ctx.status(202);
    json(ctx, Json.object().put("id", work.id()));
  }

  /**
   * The job of the request; nothing, and the problems told, if it is not right. The page asks while
   * a number is half typed, so mistakes are an answer like another (200), not an error of the
   * protocol.
   */
  private Optional<Job> job(Context ctx, JsonNode request) {
    try {
      Job job = Workshop.readJob(Json.text(Json.tree(Json.needJob(request))), JOB);
      int pieces = job.demands().stream().mapToInt(Demand::count).sum();
      if (pieces > MOST_PIECES) {
        problem(
            ctx,
            200,
            "the job has "
                + pieces
                + " pieces; the page plans at most "
                + MOST_PIECES
                + ", `curvestock plan` on the command line more");
        return Optional.empty();
      }
      return Optional.of(job);
    } catch (JobException e) {
      problems(ctx, 200, e);
      return Optional.empty();
    }
  }

  private void improve(Context ctx) {
    Work former = find(ctx);
    JsonNode request = Json.request(ctx.body());
    String client = Json.needText(request, "client", LONGEST_CLIENT);
    Plan basis = former.plan().orElseThrow(() -> new NotFoundResponse("there is no plan yet"));
    Work work = new ImproveWork(newId(), former, basis, HandWork.sheets(request, former.job()));
    works.start(client, work);
    ctx.status(202);
    json(ctx, Json.object().put("id", work.id()));
  }

  private void enough(Context ctx) {
    find(ctx).enough();
    ctx.status(204);
  }

  private void cancel(Context ctx) {
    works.stop(find(ctx));
    ctx.status(204);
  }

  private void packet(Context ctx) {
    Work work = find(ctx);
    JsonNode request = Json.request(ctx.body());
    Plan plan = work.plan().orElseThrow(() -> new NotFoundResponse("there is no plan yet"));
    JsonNode hand = request.get("hand");
    if (!packing.tryAcquire()) {
      throw new ServiceUnavailableResponse(
          "another packet is being made; try again in a few seconds");
    }
    works.shared().pause().begin();
    try {
      Plan chosen =
          hand == null || hand.isNull()
              ? plan
              : Workshop.laid(plan, HandWork.sheets(hand, plan.job()));
      String text = Json.needText(request, "text", LONGEST_TEXT);
      byte[] zip = Packet.zip(chosen, work.comparison(), text);
      ctx.contentType("application/zip");
      ctx.header("Content-Disposition", "attachment; filename=\"curvestock-packet.zip\"");
      ctx.result(zip);
    } catch (IllegalArgumentException | WrongLayoutException e) {
      problem(ctx, 422, e.getMessage());
    } finally {
      works.shared().pause().end();
      packing.release();
    }
  }

  private void stop(Context ctx) {
    stop.orElseThrow(() -> new ForbiddenResponse("whoever serves this page ends it")).run();
    ctx.status(204);
  }

  /** Refuses a stream of events where too many are open already, for one computation or in all. */
  void admitListener(Context ctx) {
    if (find(ctx).events().listening() >= MOST_LISTENERS || works.listening() >= MOST_STREAMS) {
      throw new ServiceUnavailableResponse("too many pages listen already; close some of them");
    }
  }

  Work find(Context ctx) {
    return works
        .find(ctx.pathParam("id"))
        .orElseThrow(() -> new NotFoundResponse("this computation is no longer kept"));
  }

  private String newId() {
    byte[] bytes = new byte[16];
    random.nextBytes(bytes);
    return HexFormat.of().formatHex(bytes);
  }

  private static void json(Context ctx, JsonNode node) {
    ctx.contentType("application/json").result(Json.text(node));
  }

  private static void problems(Context ctx, int status, JobException e) {
    ObjectNode answer = Json.object();
    ArrayNode problems = answer.putArray("problems");
    e.problems()
        .forEach(
            problem ->
                problems
                    .addObject()
                    .put("path", problem.path())
                    .put("line", problem.line())
                    .put("message", problem.message()));
    ctx.status(status);
    json(ctx, answer);
  }

  private static void problem(Context ctx, int status, String message) {
    ObjectNode answer = Json.object();
    answer.putArray("problems").addObject().put("path", "").put("line", 1).put("message", message);
    ctx.status(status);
    json(ctx, answer);
  }
}

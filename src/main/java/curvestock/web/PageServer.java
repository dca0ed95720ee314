package curvestock.web;

import curvestock.app.Workshop;
import curvestock.job.DefaultJob;
import curvestock.job.Job;
import curvestock.packing.Packers;
import curvestock.plan.PlanListener;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.sse.SseClient;
import io.javalin.util.JavalinException;
import java.net.BindException;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;

/**
 * The server of the page. It answers this machine alone unless its {@link Binding} says otherwise;
 * see {@link Guard}.
 */
public final class PageServer implements AutoCloseable {

  private static final long MOST_BODY_BYTES = 4_000_000;

  private final Binding binding;
  private final Works works;
  private final CountDownLatch ended = new CountDownLatch(1);
  private final Api api;
  private final Javalin javalin;

  private PageServer(Binding binding, Packers packers) {
    this.binding = binding;
    this.works = new Works(packers);
    boolean own = binding.token().isEmpty();
    this.api = new Api(works, own ? Optional.of(ended::countDown) : Optional.empty());
    this.javalin = Javalin.create(this::configure);
    routes();
  }

  /**
   * Starts to serve.
   *
   * @throws BindException if the port is taken or the address is not this machine's
   */
  public static PageServer start(Binding binding) throws BindException {
    return start(binding, Packers.FORGETFUL);
  }

  /** The same, with packers that may remember what was packed in earlier runs. */
  public static PageServer start(Binding binding, Packers packers) throws BindException {
    PageServer server = new PageServer(binding, packers);
    try {
      server.javalin.start(binding.address(), binding.port());
    } catch (JavalinException e) {
      server.close();
      BindException told = new BindException(e.getMessage());
      told.initCause(e);
      throw told;
    }
    return server;
  }

  /** Makes ready what the first visitor will ask for, while his browser still opens. */
  public void warmUp() {
    works.prepare(
        () -> {
          Job job = DefaultJob.read();
          Workshop.helix(job, false, PlanListener.NONE);
          Workshop.glance(job);
        });
  }

  private void configure(JavalinConfig config) {
    config.showJavalinBanner = false;
    config.useVirtualThreads = false;
    config.http.maxRequestSize = MOST_BODY_BYTES;
    config.http.prefer405over404 = true;
    config.http.gzipOnlyCompression();
    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
  }

  private void routes() {
    Guard guard = new Guard(binding, this::port);
    javalin.before(guard::admit);
    javalin.before("/api/*", PageServer::requireJson);
    PageFiles files = new PageFiles();
    files.paths().forEach((path, name) -> javalin.get(path, ctx -> files.send(ctx, name)));
    for (Route route : api.routes()) {
      javalin.addHttpHandler(route.method(), route.path(), ctx -> route.answer().to(ctx));
    }
    // Asked before the stream opens, when it can still be said that there is none.
    javalin.before("/api/work/{id}/events", api::find);
    javalin.sse("/api/work/{id}/events", this::events);
    javalin.exception(HttpResponseException.class, PageServer::tell);
  }

  /** A form of another site cannot send this type without asking first, which is refused. */
  private static void requireJson(Context ctx) {
    boolean sends = ctx.method() == HandlerType.POST;
    String type = ctx.contentType();
    if (sends && (type == null || !type.startsWith("application/json"))) {
      throw new BadRequestResponse("send application/json");
    }
  }

  private void events(SseClient client) {
    Work work = api.find(client.ctx());
    client.keepAlive();
    Consumer<WorkEvents.Event> listener =
        event -> {
          client.sendEvent(event.name(), event.json());
          if (work.events().isLast(event)) {
            client.close();
          }
        };
    client.onClose(
        () -> {
          work.events().leave(listener);
          works.stopIfAbandoned(work);
        });
    work.events().listen(listener);
  }

  private static void tell(HttpResponseException e, Context ctx) {
    ctx.status(e.getStatus());
    ctx.contentType("application/json")
        .result(Json.text(Json.object().put("message", e.getMessage())));
  }

  public int port() {
    return javalin.port();
  }

  /** Where the page is, with the access token if there is one. */
  public String url() {
    String host =
        binding.address().contains(":") ? "[" + binding.address() + "]" : binding.address();
    return "http://"
        + host
        + ":"
        + port()
        + "/"
        + binding.token().map(t -> "?token=" + t).orElse("");
  }

  /** Waits until a visitor of this machine ends the program from the page. */
  public void await() throws InterruptedException {
    ended.await();
  }

  @Override
  public void close() {
    works.close();
    javalin.stop();
    ended.countDown();
  }
}

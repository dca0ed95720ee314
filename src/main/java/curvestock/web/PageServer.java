package curvestock.web;

import curvestock.job.DefaultJob;
import curvestock.job.JobText;
import curvestock.packing.Packers;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import io.javalin.http.sse.SseClient;
import io.javalin.util.JavalinException;
import java.net.BindException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/**
 * The server of the page. It answers this machine alone unless its {@link Binding} says otherwise;
 * see {@link Guard}.
 */
public final class PageServer implements AutoCloseable {

  private static final long MOST_BODY_BYTES = 4_000_000;

  private static final Pattern JSON =
      Pattern.compile("application/json(\\s*;\\s*charset=\"?utf-8\"?)?", Pattern.CASE_INSENSITIVE);

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
          Map<String, Object> tree = JobText.tree(DefaultJob.text(), "job");
          PlanWork.look(new Asked("", tree, DefaultJob.read()), works.shared());
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
    javalin.before("/api/work/{id}/events", api::admitListener);
    javalin.sse("/api/work/{id}/events", this::events);
    javalin.exception(HttpResponseException.class, PageServer::tell);
  }

  /**
   * A form of another site cannot send this type without asking first, which is refused. Only a
   * body of stated length can be held to the limit: Javalin would read one in chunks, or of 3 GB,
   * to its end.
   */
  private static void requireJson(Context ctx) {
    if (ctx.method() != HandlerType.POST) {
      return;
    }
    String type = Optional.ofNullable(ctx.contentType()).orElse("");
    if (!JSON.matcher(type.strip()).matches()) {
      throw new BadRequestResponse("send application/json in UTF-8");
    }
    long length = ctx.req().getContentLengthLong();
    if (length < 0) {
      throw new HttpResponseException(
          HttpStatus.LENGTH_REQUIRED.getCode(), "state the length of what you send");
    }
    if (length > MOST_BODY_BYTES) {
      throw new ContentTooLargeResponse("at most " + MOST_BODY_BYTES + " bytes are read");
    }
    readWhole(ctx);
  }

  /** Javalin keeps what was read; and calls it our fault, with 500, if the sender breaks off. */
  private static void readWhole(Context ctx) {
    try {
      ctx.bodyAsBytes();
    } catch (HttpResponseException e) {
      throw e;
    } catch (Exception e) {
      throw new BadRequestResponse("the request broke off");
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

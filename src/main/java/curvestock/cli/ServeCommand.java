package curvestock.cli;

import curvestock.web.Binding;
import curvestock.web.PageServer;
import java.io.PrintWriter;
import java.net.BindException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Serves the page in the browser until it is ended. */
@Command(
    name = "serve",
    mixinStandardHelpOptions = true,
    description = {
      "Opens a page in your browser. Change a number there, and the sheets, the cost and the pictures change with it.",
      "The page needs no network. Unless you use --bind, only this computer can open it. To stop, press Ctrl-C or use 'Quit Curvestock'"
          + " on the page."
    })
final class ServeCommand implements Callable<Integer>, Faults.Debuggable {

  private static final int TOKEN_BYTES = 18;

  @Spec private CommandSpec spec;

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "Port number of the page. Default: any free one.")
  private int port;

  @Option(names = "--no-browser", description = "Print the address, but do not open a browser.")
  private boolean noBrowser;

  @Option(
      names = "--bind",
      paramLabel = "ADDRESS",
      description = {
        "Let other computers open the page. ADDRESS is this computer's address on your network, or 0.0.0.0 for all"
            + " of its addresses. Anyone with the printed address and its access token can use the page. Nothing is"
            + " encrypted: use it only on a network you trust."
      })
  private String address = Binding.LOOPBACK;

  @Option(
      names = "--token",
      paramLabel = "TOKEN",
      description = "Access token for --bind. Default: a new random one each time.")
  private String token;

  @Option(
      names = "--no-cache",
      description =
          "Start from scratch: use no saved layouts from earlier runs, and save none. Slower; the answers are the same.")
  private boolean noCache;

  @Mixin private DebugOption debug;

  @Override
  public boolean debug() {
    return debug.isGiven();
  }

  @Override
  public Integer call() throws Exception {
    Binding binding = binding();
    try (PageServer server = PageServer.start(binding, JobOptions.packers(noCache))) {
      Runtime.getRuntime().addShutdownHook(new Thread(server::close, "close-page"));
      server.warmUp();
      print(server, binding);
      if (!noBrowser && Browser.exists()) {
        Browser.open(server.url());
      }
      server.await();
      return 0;
    } catch (BindException e) {
      PrintWriter err = spec.commandLine().getErr();
      err.println(
          "The page cannot be served at "
              + address
              + " port "
              + port
              + ": the port is taken, or the address is not this computer's. Leave --port out to take"
              + " any free one.");
      err.flush();
      return Main.WRONG_INPUT;
    }
  }

  private Binding binding() {
    boolean here = Binding.isLoopback(address);
    Optional<String> access =
        token != null ? Optional.of(token) : here ? Optional.empty() : Optional.of(freshToken());
    try {
      return new Binding(address, port, access);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage(), e);
    }
  }

  private static String freshToken() {
    byte[] bytes = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  private void print(PageServer server, Binding binding) {
    PrintWriter out = spec.commandLine().getOut();
    out.println("The page is at " + server.url());
    if (!Binding.isLoopback(binding.address())) {
      out.println(
          "Other computers on your network can open that whole address. It ends with the access"
              + " token: share it only with people you trust. Nothing is encrypted.");
    }
    out.println("To stop: Ctrl-C. What you typed stays in your browser.");
    out.flush();
  }
}

package curvestock.web;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.UnauthorizedResponse;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntSupplier;
import java.util.regex.Pattern;

/**
 * Decides whether a request may be answered at all. Pages of other sites must not be able to use
 * this one: not by asking it directly (Origin, Sec-Fetch-Site) and not by renaming this machine
 * (Host).
 */
final class Guard {

  static final String TOKEN = "token";
  private static final String COOKIE = "curvestock-token";

  /** Names cannot be trusted, since anybody's name server may point one here; numbers can. */
  private static final Pattern NUMERIC =
      Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}|\\[[0-9a-f:.%]+\\]");

  private static final Map<String, String> HEADERS =
      Map.of(
          "Content-Security-Policy",
          "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src"
              + " 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'none';"
              + " require-trusted-types-for 'script'",
          "X-Content-Type-Options",
          "nosniff",
          "X-Frame-Options",
          "DENY",
          "Referrer-Policy",
          "no-referrer",
          "Cross-Origin-Opener-Policy",
          "same-origin",
          "Cross-Origin-Resource-Policy",
          "same-origin",
          "Permissions-Policy",
          "camera=(), microphone=(), geolocation=(), payment=(), usb=()");

  private final Binding binding;
  private final IntSupplier port;

  /**
   * @param port the port that was found free in the end
   */
  Guard(Binding binding, IntSupplier port) {
    this.binding = binding;
    this.port = port;
  }

  /** Sets the safety headers, and refuses what must not be answered. */
  void admit(Context ctx) {
    HEADERS.forEach(ctx::header);
    ctx.header("Cache-Control", "no-store");
    String host = Optional.ofNullable(ctx.header("Host")).orElse("").toLowerCase(Locale.ROOT);
    if (!isOurs(host)) {
      throw new ForbiddenResponse("this page answers only under its own address");
    }
    String origin = ctx.header("Origin");
    if (origin != null && !origin.toLowerCase(Locale.ROOT).equals("http://" + host)) {
      throw new ForbiddenResponse("this page answers only its own scripts");
    }
    String site = ctx.header("Sec-Fetch-Site");
    if (site != null && !site.equals("same-origin") && !site.equals("none")) {
      throw new ForbiddenResponse("this page answers only its own scripts");
    }
    binding.token().ifPresent(token -> requireToken(ctx, token));
  }

  private boolean isOurs(String host) {
    String suffix = ":" + port.getAsInt();
    if (!host.endsWith(suffix)) {
      return false;
    }
    String name = host.substring(0, host.length() - suffix.length());
    boolean here = name.equals("localhost") || name.equals("127.0.0.1") || name.equals("[::1]");
    return here || (binding.token().isPresent() && NUMERIC.matcher(name).matches());
  }

  /** The first visit brings the token in the address; from then on a cookie carries it. */
  private static void requireToken(Context ctx, String token) {
    String brought = ctx.queryParam(TOKEN);
    if (brought != null && same(brought, token) && ctx.path().equals("/")) {
      ctx.header(
          "Set-Cookie",
          COOKIE + "=" + token + "; Path=/; HttpOnly; SameSite=Strict; Max-Age=604800");
      return;
    }
    String cookie = ctx.cookie(COOKIE);
    if (cookie == null || !same(cookie, token)) {
      throw new UnauthorizedResponse(
          "open the whole address that the program printed: it ends with the access token");
    }
  }

  /** In a time that does not tell how much of it is right. */
  private static boolean same(String a, String b) {
    return MessageDigest.isEqual(
        a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
  }
}

package curvestock.web;

import java.util.Optional;

/**
 * Where the page is served.
 *
 * @param address of the interface; {@value #LOOPBACK} for this machine alone
 * @param port 0 for any free one
 * @param token what a visitor must bring; needed for any other address than this machine's own
 */
public record Binding(String address, int port, Optional<String> token) {

  public static final String LOOPBACK = "127.0.0.1";

  private static final int HIGHEST_PORT = 65_535;
  private static final int SHORTEST_TOKEN = 12;

  /**
   * @throws IllegalArgumentException if the port is out of range, or other machines could reach the
   *     page without a token worth the name
   */
  public Binding {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new IllegalArgumentException(
          "port must be from 0 (any free one) to " + HIGHEST_PORT + ", but was " + port);
    }
    if (!isLoopback(address) && token.isEmpty()) {
      throw new IllegalArgumentException(
          "an address that other machines can reach needs an access token, but "
              + address
              + " has none");
    }
    if (token.isPresent() && !token.get().matches("[A-Za-z0-9_-]{" + SHORTEST_TOKEN + ",128}")) {
      throw new IllegalArgumentException(
          "the access token must be "
              + SHORTEST_TOKEN
              + " to 128 letters, digits, - or _, but has "
              + token.get().length()
              + " characters, or others");
    }
  }

  /** This machine alone, no token. */
  public static Binding loopback(int port) {
    return new Binding(LOOPBACK, port, Optional.empty());
  }

  public static boolean isLoopback(String address) {
    return address.equals(LOOPBACK) || address.equals("localhost") || address.equals("::1");
  }
}

package curvestock.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;

/**
 * One address of the API; the same as in {@code openapi.json}, which a test compares.
 *
 * @param path with parameters in braces
 */
record Route(HandlerType method, String path, Answer answer) {

  /** What answers a request. */
  @FunctionalInterface
  interface Answer {
    void to(Context ctx) throws Exception;
  }

  static Route get(String path, Answer answer) {
    return new Route(HandlerType.GET, path, answer);
  }

  static Route post(String path, Answer answer) {
    return new Route(HandlerType.POST, path, answer);
  }

  static Route delete(String path, Answer answer) {
    return new Route(HandlerType.DELETE, path, answer);
  }
}

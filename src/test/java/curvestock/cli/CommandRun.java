package curvestock.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * One run of the command line in this machine.
 *
 * @param code exit code
 * @param out what it printed
 * @param err what it complained of
 */
record CommandRun(int code, String out, String err) {

  static CommandRun of(String... args) {
    System.setProperty("curvestock.cache", "off");
    PrintStream out = System.out;
    PrintStream err = System.err;
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    ByteArrayOutputStream complained = new ByteArrayOutputStream();
    try {
      System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
      System.setErr(new PrintStream(complained, true, StandardCharsets.UTF_8));
      int code = Main.run(args);
      return new CommandRun(
          code, said.toString(StandardCharsets.UTF_8), complained.toString(StandardCharsets.UTF_8));
    } finally {
      System.setOut(out);
      System.setErr(err);
    }
  }
}

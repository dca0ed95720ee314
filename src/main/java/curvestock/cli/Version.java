package curvestock.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version from the jar's manifest. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {line()};
  }

  static String line() {
    String version = Main.class.getPackage().getImplementationVersion();
    return "curvestock " + Optional.ofNullable(version).orElse("(not packaged)");
  }
}

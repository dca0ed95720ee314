package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The page's scripts by themselves: unit tests in Node, and their types, written as comments,
 * checked by the TypeScript compiler (from its web jar) against the API's own description. Where
 * Node is not installed these tests are skipped and say so.
 */
class ScriptsTest {

  private static final Path TESTS = Path.of("src/test/js");
  private static final String COMPILER = "META-INF/resources/webjars/typescript/";

  @BeforeAll
  static void nodeIsThere() throws Exception {
    boolean there;
    try {
      there = run(List.of("node", "--version")).code() == 0;
    } catch (IOException e) {
      there = false;
    }
    Assumptions.assumeTrue(there, "no tests of the page's scripts: install Node 18 or newer");
  }

  /** What a command says, and how it ends. */
  private record Said(int code, String words) {}

  private static Said run(List<String> command) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String words = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).as("it ends").isTrue();
    return new Said(process.exitValue(), words);
  }

  @Test
  void unitTests_ofTheScripts_pass() throws Exception {
    List<String> command = new ArrayList<>(List.of("node", "--test"));
    try (Stream<Path> files = Files.list(TESTS)) {
      files.map(Path::toString).filter(name -> name.endsWith(".test.mjs")).forEach(command::add);
    }

    Said said = run(command);

    assertThat(said.code()).as(said.words()).isZero();
    assertThat(command).hasSizeGreaterThan(4);
  }

  /** What the page reads for its sliders is what the program reads. */
  @Test
  void lengths_readByTheScripts_areReadAlikeByTheProgram() throws IOException {
    JsonNode table = Json.own(Files.readString(TESTS.resolve("lengths.json"))).get("lengths");
    for (JsonNode row : table) {
      LengthUnit bare =
          row.get(1).textValue().equals("in") ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
      assertThat(Length.parse(row.get(0).textValue(), bare).millimetres())
          .as(row.get(0).textValue())
          .isCloseTo(row.get(2).doubleValue(), within(1e-9));
    }
    assertThat(table).hasSizeGreaterThan(10);
  }

  @Test
  void types_ofTheScripts_agreeWithTheApi() throws Exception {
    Path compiler = unpacked(Path.of("target/typescript"));
    Path types = Files.createDirectories(Path.of("target/page-types"));
    JsonNode described = Json.own(PageFiles.text("openapi.json"));
    Files.writeString(types.resolve("api.d.ts"), SchemaTypes.of(described));

    Said said =
        run(List.of("node", compiler.toString(), "-p", TESTS.resolve("tsconfig.json").toString()));

    assertThat(said.words()).isEmpty();
    assertThat(said.code()).isZero();
  }

  /** The compiler's files, from the jar on the class path. */
  private static Path unpacked(Path into) throws Exception {
    Path jar =
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
            .filter(path -> path.matches(".*typescript-[0-9.]+\\.jar"))
            .map(Path::of)
            .findFirst()
            .orElseThrow();
    Files.createDirectories(into);
    try (JarFile file = new JarFile(jar.toFile())) {
      for (Enumeration<JarEntry> all = file.entries(); all.hasMoreElements(); ) {
        JarEntry entry = all.nextElement();
        String name = entry.getName().replaceFirst(".*/", "");
        boolean wanted = name.matches("_?tsc\\.js|lib\\..*d\\.ts");
        if (entry.getName().startsWith(COMPILER) && wanted && !Files.exists(into.resolve(name))) {
          try (InputStream in = file.getInputStream(entry)) {
            Files.copy(in, into.resolve(name));
          }
        }
      }
    }
    // Its scripts are of Node's older kind, whatever a folder above may say.
    Files.writeString(into.resolve("package.json"), "{}");
    return into.resolve("tsc.js");
  }
}

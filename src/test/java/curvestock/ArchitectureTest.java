package curvestock;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The order of packages and who may use what, held by the class files themselves. */
class ArchitectureTest {

  /** Each imports only those before it. */
  private static final List<String> ORDER =
      List.of(
          "units",
          "geometry",
          "piece",
          "sheet",
          "layout",
          "handwork",
          "helix",
          "packing",
          "bound",
          "purchase",
          "check",
          "machine",
          "dxf",
          "drawing",
          "job",
          "plan",
          "compare",
          "answer",
          "report",
          "printing",
          "files",
          "app",
          "web",
          "cli");

  /** Packages that calculate; what they do follows from their inputs alone. */
  private static final String[] CORE = {
    "curvestock.units..",
    "curvestock.geometry..",
    "curvestock.piece..",
    "curvestock.sheet..",
    "curvestock.layout..",
    "curvestock.handwork..",
    "curvestock.helix..",
    "curvestock.packing..",
    "curvestock.bound..",
    "curvestock.purchase..",
    "curvestock.check..",
    "curvestock.machine..",
    "curvestock.dxf..",
    "curvestock.drawing..",
    "curvestock.job..",
    "curvestock.plan..",
    "curvestock.compare..",
    "curvestock.answer..",
    "curvestock.report..",
    "curvestock.printing.."
  };

  /**
   * Those of the core that need no stream either; check, drawing, job and printing read and write
   * XML or PDF.
   */
  private static final String[] WITHOUT_STREAMS = {
    "curvestock.units..",
    "curvestock.geometry..",
    "curvestock.piece..",
    "curvestock.sheet..",
    "curvestock.layout..",
    "curvestock.handwork..",
    "curvestock.helix..",
    "curvestock.packing..",
    "curvestock.bound..",
    "curvestock.purchase..",
    "curvestock.machine..",
    "curvestock.dxf..",
    "curvestock.plan..",
    "curvestock.compare..",
    "curvestock.answer..",
    "curvestock.report.."
  };

  private static JavaClasses main;

  @BeforeAll
  static void importClasses() {
    main =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_JARS)
            .importPackages("curvestock");
  }

  @Test
  void classes_ofTheProject_areFoundInNumbers() {
    assertThat(main.size()).isGreaterThan(180);
    assertThat(sections())
        .contains("units", "geometry", "packing", "purchase", "check", "app", "cli");
  }

  @Test
  void packages_ofTheProject_allHaveAPlaceInTheOrder() {
    assertThat(ORDER).containsAll(sections());
  }

  @Test
  void packages_inTheOrder_importOnlyThoseBefore() {
    List<String> wrong = new ArrayList<>();
    for (JavaClass from : main) {
      from.getDirectDependenciesFromSelf().stream()
          .map(dependency -> dependency.getTargetClass())
          .filter(to -> to.getPackageName().startsWith("curvestock."))
          .filter(to -> ORDER.indexOf(section(to)) > ORDER.indexOf(section(from)))
          .forEach(to -> wrong.add(from.getName() + " -> " + to.getName()));
    }
    assertThat(wrong).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "org.locationtech.jts..,         geometry check machine",
    "org.optaplanner..,              purchase.solver",
    "org.ojalgo..,                   purchase purchase.solver bound",
    "org.apache.batik..,             drawing check",
    "com.fasterxml.jackson..,        job report web",
    "io.javalin..,                   web",
    "org.yaml.snakeyaml..,           job",
    "picocli..,                      cli",
    "me.tongfei.progressbar..,       cli",
    "java.awt..,                     drawing report printing",
    "org.apache.pdfbox..,            printing",
    "org.jfree..,                    report"
  })
  void library_ofOnePurpose_isUsedByItsOwnersAlone(String library, String owners) {
    String[] allowed =
        Stream.of(owners.split(" ")).map(name -> "curvestock." + name).toArray(String[]::new);

    assertThat(
            main.stream()
                .flatMap(from -> from.getDirectDependenciesFromSelf().stream())
                .filter(to -> inPackage(library).test(to.getTargetClass())))
        .as("the rule is about something that is used")
        .isNotEmpty();
    noClasses()
        .that()
        .resideOutsideOfPackages(allowed)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(main);
  }

  private static DescribedPredicate<JavaClass> inPackage(String pattern) {
    return JavaClass.Predicates.resideInAPackage(pattern);
  }

  @Test
  void core_whereItCalculates_knowsNoFiles() {
    noClasses()
        .that()
        .resideInAnyPackage(CORE)
        .should()
        .dependOnClassesThat()
        .resideInAPackage("java.nio.file..")
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching("java\\.io\\.(File|RandomAccess).*")
        .check(main);
  }

  @Test
  void core_whereItNeedsNoText_knowsNoStreams() {
    noClasses()
        .that()
        .resideInAnyPackage(WITHOUT_STREAMS)
        .and()
        // Tables are resources of the program, read as text.
        .resideOutsideOfPackages("curvestock.helix.standard", "curvestock.packing.atlas")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("java.io..")
        .check(main);
  }

  /**
   * Nothing is fetched, sent or looked up: the page's server alone listens, on the machine itself.
   */
  @Test
  void program_butForItsPage_knowsNoNetwork() {
    noClasses()
        .that()
        .resideOutsideOfPackage("curvestock.web..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.net.http..", "java.nio.channels.spi..", "javax.net..")
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching(
            "java\\.net\\.(Socket|ServerSocket|DatagramSocket|URLConnection|HttpURLConnection"
                + "|InetAddress|InetSocketAddress)"
                + "|java\\.nio\\.channels\\.(Asynchronous)?(Server)?SocketChannel")
        .orShould()
        .callMethod(java.net.URL.class, "openStream")
        .orShould()
        .callMethod(java.net.URL.class, "openConnection")
        .check(main);
  }

  /** Job files are read into a tree of texts; no class is ever named by a file. */
  @Test
  void files_neverNameClasses() {
    noClasses()
        .that()
        .resideInAPackage("curvestock.job..")
        .should()
        .dependOnClassesThat()
        .haveNameMatching(
            "org\\.yaml\\.snakeyaml\\.constructor\\.(C\\w*onstructor)|.*\\.ObjectMapper|java\\.lang\\.Class"
                + "Loader|java\\.io\\.ObjectInputStream")
        .check(main);
    noClasses()
        .should()
        .dependOnClassesThat()
        .haveNameMatching("java\\.io\\.ObjectInputStream|java\\.beans\\.XMLDecoder")
        .check(main);
  }

  @Test
  void core_knowsNoClockAndNoUnseededRandomness() {
    noClasses()
        .that()
        .resideInAnyPackage(CORE)
        .should()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(Math.class, "random")
        .orShould()
        .callConstructor(Random.class)
        .orShould()
        .callConstructor(java.util.SplittableRandom.class)
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching(
            "java\\.time\\..*Clock|java\\.time\\.(Instant|LocalDate|LocalDateTime|ZonedDateTime)"
                + "|java\\.util\\.Date|java\\.util\\.UUID"
                + "|java\\.util\\.concurrent\\.ThreadLocalRandom|java\\.security\\.SecureRandom")
        .check(main);
  }

  @Test
  void check_asASecondOpinion_sharesNoGeometryWithThePacker() {
    noClasses()
        .that()
        .resideInAPackage("curvestock.check")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "curvestock.packing..",
            "curvestock.bound..",
            "curvestock.drawing..",
            "curvestock.machine..",
            "curvestock.dxf..")
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching(
            "curvestock\\.geometry\\.(Clearance|EdgeDistance|Flattening|OutlineOffset|Crossing)")
        .orShould()
        .callMethod("curvestock.geometry.Loop", "encloses", "curvestock.geometry.Point")
        .orShould()
        .callMethod("curvestock.geometry.Outline", "contains", "curvestock.geometry.Point")
        .check(main);
  }

  @Test
  void names_saysWhatAThingIs_notThatItHelps() {
    classes()
        .should()
        .haveSimpleNameNotEndingWith("Util")
        .andShould()
        .haveSimpleNameNotEndingWith("Utils")
        .andShould()
        .haveSimpleNameNotEndingWith("Manager")
        .andShould()
        .haveSimpleNameNotEndingWith("Helper")
        .andShould()
        .haveSimpleNameNotEndingWith("Impl")
        .check(main);
  }

  @Test
  void package_withSource_saysWhatItIsFor() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      Set<Path> folders = new TreeSet<>();
      files
          .filter(file -> file.toString().endsWith(".java"))
          .forEach(file -> folders.add(file.getParent()));

      assertThat(folders).hasSizeGreaterThan(15);
      assertThat(folders)
          .allSatisfy(
              folder ->
                  assertThat(Files.readString(folder.resolve("package-info.java")))
                      .startsWith("/**"));
    }
  }

  private static Set<String> sections() {
    Set<String> found = new TreeSet<>();
    main.forEach(one -> found.add(section(one)));
    return found;
  }

  private static String section(JavaClass one) {
    return one.getPackageName().split("\\.", -1)[1];
  }
}

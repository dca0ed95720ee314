package curvestock.cli;

import curvestock.packing.Effort;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/**
 * Entry point of the command line.
 *
 * <p>Exit codes: 0 done; 1 the answer is no (the job cannot be cut from its sheets, or a drawing
 * failed its check); 2 the input is wrong; 3 a fault of this program.
 */
@Command(
    name = "curvestock",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    subcommands = {
      PlanCommand.class,
      HelixCommand.class,
      CompareCommand.class,
      PacketCommand.class,
      CheckCommand.class,
      SchemaCommand.class,
      ServeCommand.class,
      CompletionCommand.class
    },
    description =
        "Works out how to cut curved model-railway roadbed from plywood: how many sheets to buy, what"
            + " they cost, and how to lay out the pieces.",
    footerHeading = "%nTo start:%n",
    footer = {
      "  curvestock schema --example > my-helix.yaml   a job file to start from",
      "  curvestock helix my-helix.yaml                does it work?",
      "  curvestock compare my-helix.yaml              which segment size?",
      "  curvestock plan my-helix.yaml --out my-helix  what to buy, and how to cut it",
      "  curvestock packet my-helix.yaml --out shop    everything for the shop",
      "  curvestock serve                              do all of this in your browser",
      "",
      "Help on one command: curvestock plan --help"
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:the answer is no: the job cannot be cut, a check fails, a piece has too few tabs to hold it, or a drawing is wrong",
      "2:the input is wrong; the message says where, and what to write instead",
      "3:Curvestock has a bug, or there is too little memory"
    })
public final class Main {

  static final int ANSWER_IS_NO = 1;
  static final int WRONG_INPUT = 2;
  static final int OUR_FAULT = 3;

  private static final String TOO_LITTLE_MEMORY =
      "There is too little memory for this job, so nothing was written. Give Java more memory, for"
          + " example with `java -Xmx4g -jar curvestock.jar ...`, or split the job into smaller ones.";

  /** Counts of a library's runs, of which it complains where several run; held, or it is lost. */
  private static final class Counts {
    static final Logger LIBRARY = Logger.getLogger("io.micrometer");
  }

  private Main() {}

  public static void main(String[] args) {
    if (args.length == 1 && args[0].equals("--version")) {
      // Known without reading what all commands take.
      System.out.println(Version.line());
      return;
    }
    int code = runOrSayThatMemoryIsShort(args);
    if (code != 0) {
      System.exit(code);
    }
  }

  /** With so little memory hardly anything can be made, not even a message. */
  private static int runOrSayThatMemoryIsShort(String... args) {
    try {
      OptionalInt earlier = Outcome.ofEarlier(args);
      return earlier.isPresent() ? earlier.getAsInt() : runInAMachineOfItsOwn(args);
    } catch (OutOfMemoryError e) {
      try {
        System.err.println(TOO_LITTLE_MEMORY);
      } catch (OutOfMemoryError again) {
        Runtime.getRuntime().halt(OUR_FAULT);
      }
      return OUR_FAULT;
    }
  }

  /** What concerns the whole machine, then the command. */
  private static int runInAMachineOfItsOwn(String... args) {
    Counts.LIBRARY.setLevel(Level.OFF);
    if (args.length > 0 && !args[0].equals("serve")) {
      LightCompilation.begin();
    }
    return run(args);
  }

  /** Runs one command and gives its exit code. */
  static int run(String... args) {
    System.setProperty("java.awt.headless", "true");
    CommandLine line = new CommandLine(new Main());
    takesOneJob(line.getSubcommands().get("helix").getCommandSpec());
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExecutionExceptionHandler(new Faults());
    line.setParameterExceptionHandler(Main::wrongOption);
    line.registerConverter(Effort.class, Main::effort);
    if (args.length == 0 && isDoubleClick()) {
      return line.execute("serve");
    }
    if (args.length == 0) {
      line.usage(line.getOut());
      return WRONG_INPUT;
    }
    return line.execute(args);
  }

  /** The options that commands share take several jobs; a usage line is not to promise it. */
  private static void takesOneJob(CommandSpec command) {
    PositionalParamSpec several = command.positionalParameters().get(0);
    command.remove(several);
    command.addPositional(several.toBuilder().paramLabel("[JOB]").hideParamSyntax(true).build());
  }

  /** What is wrong and where to look it up; not a page of usage. */
  private static int wrongOption(ParameterException wrong, String[] args) {
    CommandLine line = wrong.getCommandLine();
    line.getErr().println(wrong.getMessage());
    line.getErr()
        .println(
            "`" + line.getCommandSpec().qualifiedName() + " --help` lists what you can write.");
    line.getErr().flush();
    return WRONG_INPUT;
  }

  private static Effort effort(String text) {
    try {
      return Effort.valueOf(text.strip().toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException(
          "must be quick, normal or thorough, but was \"" + text + "\"");
    }
  }

  /** Started without a terminal, but with a screen: a person has clicked on the jar. */
  private static boolean isDoubleClick() {
    return !Terminal.exists() && Browser.exists();
  }
}

package curvestock.cli;

import curvestock.job.DefaultJob;
import curvestock.job.JobSchema;
import curvestock.report.JobReference;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Prints the schema of job files, or the default job as a file to start from. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description =
        "Prints the rules for job files in a form that other programs can read (JSON Schema)."
            + " --example prints a job to start from, --reference explains every key.")
final class SchemaCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Option(names = "--example", description = "Print the built-in example job (YAML) instead.")
  private boolean example;

  @Option(names = "--reference", description = "Print every key with its meaning instead.")
  private boolean reference;

  @Override
  public Integer call() {
    PrintWriter printer = spec.commandLine().getOut();
    if (example && reference) {
      throw new ParameterException(spec.commandLine(), "--example or --reference, not both");
    }
    printer.print(example ? DefaultJob.text() : reference ? JobReference.text() : JobSchema.text());
    printer.flush();
    return 0;
  }
}

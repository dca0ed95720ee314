package curvestock.cli;

import curvestock.job.DefaultJob;
import curvestock.job.JobSchema;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints the schema of job files, or the default job as a file to start from. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description =
        "Prints the JSON Schema of job files, or with --example the default job to start from.")
final class SchemaCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Option(names = "--example", description = "Print the embedded default job (YAML) instead.")
  private boolean example;

  @Override
  public Integer call() {
    PrintWriter printer = spec.commandLine().getOut();
    printer.print(example ? DefaultJob.text() : JobSchema.text());
    printer.flush();
    return 0;
  }
}

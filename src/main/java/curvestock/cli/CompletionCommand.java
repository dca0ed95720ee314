package curvestock.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a script by which a shell completes commands and options. */
@Command(
    name = "completion",
    mixinStandardHelpOptions = true,
    description = {
      "Prints a script for bash and zsh that completes commands and options with the Tab key.",
      "To try it in this shell: source <(curvestock completion)"
    })
final class CompletionCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    PrintWriter printer = spec.commandLine().getOut();
    CommandLine root = spec.root().commandLine();
    printer.print(AutoComplete.bash(root.getCommandName(), root));
    printer.flush();
    return 0;
  }
}

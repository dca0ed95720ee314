package curvestock.cli;

import curvestock.app.WrongLayoutException;
import curvestock.check.CheckException;
import curvestock.files.FileProblem;
import curvestock.job.BatchException;
import curvestock.job.JobException;
import curvestock.plan.Infeasible;
import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Turns exceptions into messages and exit codes; stack traces only with {@code --debug}. */
final class Faults implements IExecutionExceptionHandler {

  @Override
  public int handleExecutionException(Exception fault, CommandLine line, ParseResult result) {
    PrintWriter err = line.getErr();
    boolean debug = line.getCommand() instanceof Debuggable command && command.debug();
    int code = code(fault);
    err.println(message(fault, code));
    if (debug) {
      fault.printStackTrace(err);
    } else if (code == Main.OUR_FAULT) {
      err.println("Run again with --debug to see where it happened.");
    }
    err.flush();
    return code;
  }

  private static int code(Exception fault) {
    if (fault instanceof Infeasible) {
      return Main.ANSWER_IS_NO;
    }
    boolean input =
        fault instanceof JobException
            || fault instanceof BatchException
            || fault instanceof FileProblem
            || fault instanceof CheckException;
    return input ? Main.WRONG_INPUT : Main.OUR_FAULT;
  }

  private static String message(Exception fault, int code) {
    if (code != Main.OUR_FAULT || fault instanceof WrongLayoutException) {
      return fault.getMessage();
    }
    return "Curvestock has a bug: " + fault;
  }

  /** A command that has the option {@code --debug}. */
  interface Debuggable {
    boolean debug();
  }
}

package org.ferryglide.examples.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.CharacterCodingException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.TextFormatException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Says on the error stream what is refused, a line for each problem, and with which status. */
final class Refusals implements IExecutionExceptionHandler, IParameterExceptionHandler {

  @Override
  public int handleParseException(ParameterException e, String[] args) {
    CommandLine line = e.getCommandLine();
    String message = oneLine(e);
    return refused(
        line,
        message
            + (message.endsWith(".") ? " " : "; ")
            + line.getCommandSpec().qualifiedName()
            + " --help tells more");
  }

  @Override
  public int handleExecutionException(Exception e, CommandLine line, ParseResult parsed) {
    if (e instanceof InputFormatException files) {
      files.problems().forEach(problem -> line.getErr().println(plain(problem.toString())));
      if (files.found() > files.problems().size()) {
        line.getErr()
            .println("and " + (files.found() - files.problems().size()) + " more problems");
      }
      return Status.REFUSED.code();
    }
    if (e instanceof InputRefused || e instanceof TextFormatException) {
      return refused(line, oneLine(e));
    }
    if (e instanceof NotDirectoryException broken) {
      return refused(line, broken.getFile() + ": must be a folder, but is a file");
    }
    if (e instanceof NoSuchFileException broken) {
      return refused(line, broken.getFile() + ": there is no such file or folder");
    }
    if (e instanceof FileSystemException broken) {
      String reason = broken.getReason();
      return refused(
          line, broken.getFile() + ": " + (reason == null ? "cannot be read or written" : reason));
    }
    if (e instanceof StandardStream.Closed) {
      return Status.DONE.code(); // whoever reads has enough; if not, the program's end says so
    }
    if (e instanceof CharacterCodingException) {
      return refused(line, "must be text in UTF-8, but is not");
    }
    if (e instanceof IOException) {
      return refused(line, "cannot be read or written: " + oneLine(e));
    }
    PrintWriter err = line.getErr();
    StackTraceElement[] trace = e.getStackTrace();
    err.println(
        "ferryglide: a fault of ours, please report it: "
            + e.getClass().getName()
            + ": "
            + oneLine(e)
            + (trace.length == 0 ? "" : " at " + trace[0]));
    return Status.OUR_FAULT.code();
  }

  private static int refused(CommandLine line, String message) {
    line.getErr().println(plain(message));
    return Status.REFUSED.code();
  }

  /** Without what would move a terminal's cursor: a name may hold anything. */
  private static String plain(String message) {
    return message.replaceAll("\\p{Cntrl}", "?");
  }

  private static String oneLine(Exception e) {
    String message = e.getMessage();
    return message == null ? e.getClass().getSimpleName() : message.replaceAll("\\s*\\R\\s*", "; ");
  }
}

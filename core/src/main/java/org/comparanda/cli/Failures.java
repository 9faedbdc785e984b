package org.comparanda.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.CancellationException;
import org.comparanda.storage.CollectionProblem;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** The one place where a command that failed is put into words. */
record Failures(Terminal terminal) implements IExecutionExceptionHandler {
  @Override
  public int handleExecutionException(Exception problem, CommandLine command, ParseResult words) {
    terminal.out().flush();
    if (problem instanceof CannotDo
        || problem instanceof CollectionProblem
        || problem instanceof CancellationException) {
      terminal.note(String.valueOf(problem.getMessage()));
    } else if (problem instanceof IOException || problem instanceof UncheckedIOException) {
      terminal.note(
          "A file could not be read or written: "
              + problem.getMessage()
              + ". Check that the folder is there, that you may write to it and that the disk has"
              + " room.");
    } else {
      terminal.note(
          "The program itself failed ("
              + problem
              + "). Your files were left as they were. Please report this with the lines below.");
      problem.printStackTrace(terminal.err());
    }
    return Terminal.NOT_DONE;
  }
}

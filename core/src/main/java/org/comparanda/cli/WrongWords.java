package org.comparanda.cli;

import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;

/** Answers words that make no command. */
record WrongWords(Terminal terminal) implements IParameterExceptionHandler {
  @Override
  public int handleParseException(ParameterException problem, String[] words) {
    CommandLine command = problem.getCommandLine();
    terminal.note(String.valueOf(problem.getMessage()));
    if (!CommandLine.UnmatchedArgumentException.printSuggestions(problem, terminal.err())) {
      terminal.note("Nothing was done. The words that can stand here:");
      command.usage(terminal.err());
    }
    return Terminal.NOT_DONE;
  }
}

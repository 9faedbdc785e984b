package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.exchange.json.KeptAnswerText;
import org.comparanda.storage.Collection;
import org.comparanda.tray.KeptAnswer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists kept answers. */
@Command(
    name = "list",
    description = "List kept answers: bone, when, program, shelf version, sentence.",
    mixinStandardHelpOptions = true)
final class KeptList implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private KeptArguments which = new KeptArguments();

  KeptList(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = which.open(terminal)) {
      for (KeptAnswer answer : which.answers(opened)) {
        terminal.say(
            KeptArguments.named(answer)
                + ", "
                + answer.program()
                + ", shelf "
                + answer.shelfVersion()
                + ": "
                + KeptAnswerText.read(answer.content())
                    .fold(kept -> kept.figures().sentence(), none -> none.reason()));
      }
    }
    return Terminal.FINE;
  }
}

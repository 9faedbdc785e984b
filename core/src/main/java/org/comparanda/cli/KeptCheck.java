package org.comparanda.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.exchange.json.KeptAgain;
import org.comparanda.exchange.json.KeptCheckJson;
import org.comparanda.exchange.json.ProgramVersion;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tray.KeptAnswer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Reckons kept answers again and says what differs. */
@Command(
    name = "check",
    description = {
      "Reckon kept answers again, each from its own readings by its own rules, with today's shelf",
      "and program, and say what differs. Exit code 1 where anything does."
    },
    mixinStandardHelpOptions = true)
final class KeptCheck implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private KeptArguments which = new KeptArguments();
  @Mixin private JsonArgument json = new JsonArgument();

  KeptCheck(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    ProgramVersion program = ProgramName.current();
    List<KeptAgain.Checked> checked = new ArrayList<>();
    try (Collection opened = which.open(terminal)) {
      ReferenceTables tables = HouseTables.of(opened);
      KeptAgain again =
          new KeptAgain(opened.animals().shelf(), tables.protocol(), tables.taxa(), program);
      which.answers(opened).forEach(answer -> checked.add(again.check(answer)));
    }
    if (json.file().isPresent()) {
      Path file = json.file().get();
      JsonArgument.write(file, writer -> KeptCheckJson.write(writer, program, checked));
      terminal.say("Kept answers reckoned again: " + file);
    } else {
      checked.forEach(this::say);
    }
    return checked.stream().allMatch(KeptAgain.Checked::same)
        ? Terminal.FINE
        : Terminal.PROBLEMS_FOUND;
  }

  private void say(KeptAgain.Checked one) {
    KeptAnswer answer = one.answer();
    terminal.say(
        "A"
            + KeptArguments.named(answer).substring(1)
            + (one.same() ? ": the same to the last digit." : ": differs."));
    if (!one.same()) {
      one.circumstances().forEach(c -> terminal.say("  " + c));
      one.changes().forEach(c -> terminal.say("  " + c));
    }
  }
}

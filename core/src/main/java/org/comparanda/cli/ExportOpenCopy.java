package org.comparanda.cli;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.comparanda.exchange.opencopy.OpenCopyHead;
import org.comparanda.exchange.opencopy.OpenCopyWriter;
import org.comparanda.register.Restriction;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The whole collection as JSON lines. */
@Command(
    name = "open-copy",
    description = {
      "Write the whole collection as JSON lines that any program can read; restore brings it back.",
      "Nothing is held back, so keep it as you keep the collection. Where an animal may not be",
      "exported, --stays-in-the-house must say that the copy doesn't leave."
    },
    mixinStandardHelpOptions = true)
final class ExportOpenCopy implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "OUT.jsonl", description = "The copy.")
  private Path out = Path.of("");

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  @Option(
      names = "--stays-in-the-house",
      description = "The copy doesn't leave the house: animals that may not be exported are in it.")
  private boolean staysInTheHouse;

  ExportOpenCopy(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    long[] rows = {0};
    long restricted;
    OpenCopyHead head;
    try (Collection opened = Collection.open(collection, terminal.clock())) {
      restricted = restricted(opened);
      if (restricted > 0 && !staysInTheHouse) {
        throw new CannotDo(
            Count.of(restricted, "animal")
                + " of the collection may not be exported, and an open copy holds everything. Nothing"
                + " was written. Say --stays-in-the-house for a copy that doesn't leave it.");
      }
      String dayBook = opened.dayBookHead(); // writes an entry, so it comes before the hash
      head =
          new OpenCopyHead(
              ProgramName.current().program() + " " + ProgramName.current().version(),
              opened.contentHash(),
              dayBook);
      FinishedFile.write(
          out,
          bytes -> {
            Writer text = new OutputStreamWriter(bytes, StandardCharsets.UTF_8);
            try (OpenCopyWriter copy = new OpenCopyWriter(text, head)) {
              opened.eachRow(copy::row);
              rows[0] = copy.rows();
            }
          });
    }
    terminal.say(
        "Wrote "
            + out
            + ": "
            + Count.of(rows[0], "row")
            + "; nothing was held back (exact places are in it"
            + (restricted == 0
                ? ""
                : ", and " + Count.of(restricted, "animal") + " that may not be exported")
            + "); content hash "
            + head.contentHash()
            + "; Day Book "
            + head.dayBookHead()
            + ".");
    return Terminal.FINE;
  }

  private static long restricted(Collection opened) {
    return opened.register().all().stream()
        .filter(card -> card.restriction().export() == Restriction.Export.FORBIDDEN)
        .count();
  }
}

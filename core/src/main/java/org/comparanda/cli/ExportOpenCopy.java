package org.comparanda.cli;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.comparanda.exchange.opencopy.OpenCopyHead;
import org.comparanda.exchange.opencopy.OpenCopyWriter;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The whole collection as JSON lines. */
@Command(
    name = "open-copy",
    description = {
      "Write the whole collection as JSON lines that any program can read; restore brings it back.",
      "Nothing is held back, so keep it as you keep the collection."
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

  ExportOpenCopy(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    long[] rows = {0};
    OpenCopyHead head;
    try (Collection opened = Collection.open(collection, terminal.clock())) {
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
            + "; nothing was held back (exact places are in it); content hash "
            + head.contentHash()
            + "; Day Book "
            + head.dayBookHead()
            + ".");
    return Terminal.FINE;
  }
}

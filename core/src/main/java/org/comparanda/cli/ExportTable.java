package org.comparanda.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.comparanda.dossier.HeldBack;
import org.comparanda.exchange.csv.BoneList;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Bones as one table. */
@Command(
    name = "csv",
    description = "Write bones with their latest call and values as one table.",
    mixinStandardHelpOptions = true)
final class ExportTable implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "OUT.csv", description = "The table.")
  private Path out = Path.of("");

  @Mixin private ExportedBones exported = new ExportedBones();

  ExportTable(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    HeldBack bones;
    String head;
    try (Collection opened = exported.open(terminal)) {
      bones = exported.bones(opened);
      head = opened.dayBookHead();
      String csv =
          BoneList.csv(bones.open(), bones.openness(), ExportedBones.names(opened.people()));
      FinishedFile.write(out, bytes -> bytes.write(csv.getBytes(StandardCharsets.UTF_8)));
    }
    terminal.say(
        "Wrote "
            + out
            + ": "
            + Count.of(bones.open().size(), "row")
            + "; "
            + bones.sentence()
            + "; Day Book "
            + head
            + ".");
    return Terminal.FINE;
  }
}

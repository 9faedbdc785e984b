package org.comparanda.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.comparanda.dossier.HeldBack;
import org.comparanda.exchange.dwca.ArchiveFacts;
import org.comparanda.exchange.dwca.DarwinCoreArchive;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Bones, calls and readings as a Darwin Core Archive. */
@Command(
    name = "dwca",
    description = "Write bones, calls and readings as a Darwin Core Archive.",
    mixinStandardHelpOptions = true)
final class ExportArchive implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "OUT.zip", description = "The archive.")
  private Path out = Path.of("");

  @Mixin private ExportedBones exported = new ExportedBones();

  ExportArchive(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    ReferenceTables tables = ReferenceTables.shipped();
    Map<String, Integer> rows = new LinkedHashMap<>();
    HeldBack bones;
    String head;
    try (Collection opened = exported.open(terminal)) {
      bones = exported.bones(opened);
      head = opened.dayBookHead();
      boolean simulated =
          bones.open().stream().anyMatch(d -> d.tray().provenance().contains("simulated"));
      ArchiveFacts facts =
          new ArchiveFacts(
              "Bones of " + exported.file().getFileName() + (simulated ? " (simulated)" : ""),
              ProgramName.current().program() + " " + ProgramName.current().version(),
              terminal.clock().instant(),
              head,
              bones.openness(),
              tables.protocol(),
              HouseTables.tree(opened, tables),
              ExportedBones.names(opened.people()));
      FinishedFile.write(out, bytes -> rows.putAll(DarwinCoreArchive.write(bytes, bones, facts)));
    }
    terminal.say(
        "Wrote "
            + out
            + ": "
            + rows.entrySet().stream()
                .map(e -> Count.of(e.getValue(), "row") + " in " + e.getKey())
                .collect(Collectors.joining(", "))
            + "; "
            + bones.sentence()
            + "; Day Book "
            + head
            + ".");
    return Terminal.FINE;
  }
}

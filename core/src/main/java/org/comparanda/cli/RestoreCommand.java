package org.comparanda.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.comparanda.daybook.Verdict;
import org.comparanda.exchange.opencopy.OpenCopyProblem;
import org.comparanda.exchange.opencopy.OpenCopyReader;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Brings back a backup or an open copy. */
@Command(
    name = "restore",
    description = "Make a collection from a backup or from an open copy; all of it or nothing.",
    mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "IN", description = "A backup, or an open copy (JSON lines).")
  private Path in = Path.of("");

  @Option(
      names = "--into",
      required = true,
      paramLabel = "FILE",
      description = "The new collection, ending in .comparanda; nothing may stand there yet.")
  private Path into = Path.of("");

  RestoreCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    if (!Files.isRegularFile(in)) {
      throw new CannotDo("There is no file \"" + in + "\". Nothing was restored. Check the name.");
    }
    try (Collection restored = openCopy() ? fromOpenCopy() : fromBackup()) {
      Verdict dayBook = restored.verifyDayBook();
      terminal.say(
          "Restored "
              + into
              + " from "
              + in
              + ": "
              + BackupCommand.rows(restored)
              + "; nothing was held back; content hash "
              + restored.contentHash()
              + ".");
      if (dayBook instanceof Verdict.Broken broken) {
        terminal.note("Its Day Book does not hold: " + broken.sentence());
        return Terminal.PROBLEMS_FOUND;
      }
      return BackupCommand.pictures(restored.takePhotosBeside(in.toAbsolutePath()), terminal);
    }
  }

  private boolean openCopy() throws IOException {
    try (InputStream bytes = Files.newInputStream(in)) {
      return bytes.read() == '{';
    }
  }

  private Collection fromOpenCopy() throws IOException {
    try (BufferedReader lines = Files.newBufferedReader(in, StandardCharsets.UTF_8)) {
      OpenCopyReader copy = new OpenCopyReader(lines);
      return Collection.rebuild(
          into, terminal.clock(), copy.head().contentHash(), taker -> copy.rows(taker));
    } catch (OpenCopyProblem problem) {
      throw new CannotDo(String.valueOf(problem.getMessage()));
    }
  }

  private Collection fromBackup() throws IOException {
    try (Collection backup = Collection.open(in, terminal.clock())) {
      return Collection.rebuild(
          into, terminal.clock(), backup.contentHash(), taker -> backup.eachRow(taker));
    }
  }
}

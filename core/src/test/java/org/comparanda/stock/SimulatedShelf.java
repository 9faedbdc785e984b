package org.comparanda.stock;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.comparanda.demo.DemoFiles;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.reference.Shelf;
import org.comparanda.tables.ReferenceTables;

/** A shelf from the demo's generator with a seed of its own. */
final class SimulatedShelf {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();

  private SimulatedShelf() {}

  static Shelf of(long seed) {
    try {
      Path table = Files.createTempFile("simulated", ".csv");
      try {
        String csv = DemoFiles.made(TABLES.protocol(), seed).get("shelf.csv");
        Files.writeString(table, java.util.Objects.requireNonNull(csv));
        return TableReader.of(TABLES.protocol(), TABLES.taxa(), TableOptions.withDefaults())
            .shelf(table)
            .fold(
                TableRead::content,
                report -> {
                  throw new AssertionError(String.join("\n", report.lines()));
                });
      } finally {
        Files.delete(table);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

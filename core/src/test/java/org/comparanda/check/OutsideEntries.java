package org.comparanda.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.measurement.Protocol;
import org.comparanda.taxon.TaxonTree;

/** Outside data as rows of a shelf, read as {@code shelf check --register} reads them. */
final class OutsideEntries {
  private OutsideEntries() {}

  static ShelfEntries read(String file, Map<String, String> as, List<String> only) {
    try (InputStream in =
        Objects.requireNonNull(
            OutsideEntries.class.getResourceAsStream("/outside/data/" + file), file)) {
      Path table = Files.createTempFile("outside", ".csv");
      Files.write(table, in.readAllBytes());
      try {
        return TableReader.of(
                new Protocol(List.of(), List.of(), List.of()),
                TaxonTree.empty(),
                TableOptions.withDefaults()
                    .withAs(as)
                    .withOnly(only)
                    .withUnknown(TableOptions.Unknown.REGISTER))
            .entries(table)
            .fold(
                read ->
                    new ShelfEntries(read.content().entries(), read.protocol(), TaxonTree.empty()),
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

  static ShelfEntries voles() {
    return read("microtus_reference.csv", Map.of("taxon", "species", "animal", "id"), VOLE);
  }

  static ShelfEntries penguins() {
    return read("penguins.csv", Map.of("taxon", "species", "animal", "id"), PENGUIN);
  }

  static final List<String> PENGUIN =
      List.of("bill_length", "bill_depth", "flipper_length", "body_mass");
  static final List<String> VOLE =
      List.of("M1Left", "M2Left", "M3Left", "Foramen", "Pbone", "Length", "Height", "Rostrum");
}

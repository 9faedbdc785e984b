package org.comparanda.gui.pictures;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;

/** The demo shelf in a collection of its own. */
final class DemoCollection {
  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);

  private DemoCollection() {}

  static Collection make(ReferenceTables tables) throws IOException {
    Path folder = Files.createTempDirectory("pictures");
    Collection collection =
        Collection.create(folder.resolve("harrowmere" + Collection.ENDING), CLOCK);
    String refused =
        TableReader.of(tables.protocol(), tables.taxa(), TableOptions.withDefaults())
            .animalsFor(collection.animals().shelf(), Path.of("../demo-data/shelf.csv"))
            .fold(
                read -> {
                  collection.animals().add(read.content());
                  return "";
                },
                report -> String.join("\n", report.lines()));
    if (!refused.isEmpty()) {
      throw new IllegalStateException(refused);
    }
    return collection;
  }
}

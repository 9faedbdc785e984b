package org.comparanda.gui.pictures;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.comparanda.gui.app.DemoRoom;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;

/** The demo collection in a folder of its own. */
final class DemoCollection {
  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);

  private DemoCollection() {}

  static Collection make(ReferenceTables tables) throws IOException {
    return DemoRoom.open(Files.createTempDirectory("pictures"), tables, CLOCK);
  }
}

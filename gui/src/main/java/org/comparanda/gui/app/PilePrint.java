package org.comparanda.gui.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.comparanda.gui.pile.PileRoom;
import org.comparanda.pile.PileEntry;
import org.comparanda.slips.Slips;

/** Prints the pile with the Day Book's head on every page. */
record PilePrint(Workplace place) implements PileRoom.Printing {
  @Override
  public void to(Path file, List<PileEntry> entries) throws IOException {
    Path unfinished =
        Files.createTempFile(file.toAbsolutePath().resolveSibling(""), "unfinished", ".part");
    try {
      try (OutputStream out = Files.newOutputStream(unfinished)) {
        new Slips(PageFacts.of(place)).pile(out, entries);
      }
      Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(unfinished);
    }
  }
}

package org.comparanda.gui.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import org.comparanda.exchange.table.FileContent;
import org.comparanda.gui.shelf.ShelfRoom;
import org.comparanda.reference.ImportedTable;
import org.comparanda.reference.Progress;
import org.comparanda.reference.TableMappings;
import org.comparanda.register.AnimalCard;

/** How tables come into the open collection. */
record TableDesk(Workplace place) implements ShelfRoom.Adding {
  @Override
  public long add(Iterator<AnimalCard> cards, String origin, Progress progress) {
    return place.collection().register().addAll(cards, origin, progress);
  }

  @Override
  public Optional<ImportedTable> before(Path table) {
    try {
      return place.collection().importedTables().ofContent(FileContent.sha256(table));
    } catch (IOException unreadable) {
      return Optional.empty(); // reading it will say why
    }
  }

  @Override
  public void imported(Path table, long animals) {
    try {
      place
          .collection()
          .importedTables()
          .add(
              new ImportedTable(
                  FileContent.sha256(table),
                  String.valueOf(table.getFileName()),
                  place.clock().instant(),
                  animals));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @Override
  public Optional<TableMappings> mappings() {
    return Optional.of(place.collection().mappings());
  }
}

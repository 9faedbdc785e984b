package org.comparanda.gui.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.comparanda.exchange.table.FileContent;
import org.comparanda.gui.shelf.ShelfRoom;
import org.comparanda.reference.ImportedTable;
import org.comparanda.reference.Progress;
import org.comparanda.reference.TableMappings;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.SetDown;
import org.comparanda.register.TableIntake;

/** How tables come into the open collection. */
record TableDesk(Workplace place) implements ShelfRoom.Adding {
  private TableIntake intake() {
    return place.collection().tableIntake();
  }

  @Override
  public long add(Path table, List<AnimalCard> cards, Progress progress) {
    return intake().bringIn(content(table), String.valueOf(table.getFileName()), cards, progress);
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
  public Optional<SetDown> begun(Path table) {
    return intake().begun(content(table));
  }

  @Override
  public void forget(Path table) {
    intake().forget(content(table));
  }

  private static String content(Path table) {
    try {
      return FileContent.sha256(table);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @Override
  public Optional<TableMappings> mappings() {
    return Optional.of(place.collection().mappings());
  }
}

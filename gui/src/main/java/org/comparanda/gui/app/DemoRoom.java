package org.comparanda.gui.app;

import java.nio.file.Path;
import java.time.Clock;
import org.comparanda.demo.Harrowmere;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;

/** The demo collection in the person's data folder, made on the first start. */
public final class DemoRoom {
  private DemoRoom() {}

  /**
   * Opens it, making and filling it first where there is none.
   *
   * <p>Errors: {@link org.comparanda.storage.CollectionProblem} if the folder can't be written or
   * the file is locked or damaged.
   */
  public static Collection open(Path folder, ReferenceTables tables, Clock clock) {
    Collection collection = Collection.openOrCreate(folder.resolve(Harrowmere.FILE), clock);
    if (collection.animals().shelf().animals().isEmpty()) {
      Harrowmere.read(tables)
          .fill(
              collection.tableIntake(),
              collection.trays(),
              collection.lots(),
              collection.readings(),
              collection.people(),
              clock.instant());
    }
    return collection;
  }
}

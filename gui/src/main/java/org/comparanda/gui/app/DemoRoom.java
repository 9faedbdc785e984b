package org.comparanda.gui.app;

import java.nio.file.Path;
import java.time.Clock;
import org.comparanda.storage.Collection;

/** The demo collection in the person's data folder, made on the first start. */
final class DemoRoom {
  static final String FILE = "harrowmere" + Collection.ENDING;

  private DemoRoom() {}

  /**
   * Opens it, making it first where there is none.
   *
   * <p>Errors: {@link org.comparanda.storage.CollectionProblem} if the folder can't be written or
   * the file is locked or damaged.
   */
  static Collection open(Path folder, Clock clock) {
    return Collection.openOrCreate(folder.resolve(FILE), clock);
  }
}

package org.comparanda.gui.control;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the person where a file goes. */
public interface FilePlace {
  /**
   * The place chosen, or empty if the person thought better of it.
   *
   * @param name proposed name, with its ending
   */
  Optional<Path> choose(String name);
}

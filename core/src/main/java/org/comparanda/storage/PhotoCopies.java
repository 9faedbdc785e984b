package org.comparanda.storage;

import java.util.List;

/**
 * What came of copying the pictures of a collection.
 *
 * @param copied pictures that were copied, each equal to its hash
 * @param problems one line for each that was not
 */
public record PhotoCopies(int copied, List<String> problems) {
  public PhotoCopies {
    problems = List.copyOf(problems);
  }
}

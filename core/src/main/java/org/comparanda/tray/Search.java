package org.comparanda.tray;

import java.util.List;

/** Finds words anywhere in the collection. */
public interface Search {
  /**
   * What holds all of these words, each anywhere in it, whatever its case (accented letters as they
   * are): bones first, then calls, trays, lots, animals, people's ids. No word finds nothing.
   *
   * @param most how many hits at most
   */
  List<Hit> find(String words, int most);

  /**
   * One thing that was found.
   *
   * @param key number of the bone, tray, lot or animal
   * @param text what it says, for people to read
   */
  record Hit(Kind kind, String key, String text) {}

  /** Kinds of things that are searched. */
  enum Kind {
    BONE,
    CALL,
    TRAY,
    LOT,
    ANIMAL
  }
}

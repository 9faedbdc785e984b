package org.comparanda.tray;

import java.util.List;

/** Finds words anywhere in the collection. */
public interface Search {
  /**
   * What holds all of these words, each as it stands or as the beginning of a word, whatever its
   * case and accents; words between quotation marks stand side by side. A word may also be another
   * name of what stands there ({@link OtherNames}) or the name of the person it is by. Every part
   * of the record gets its share of the hits: bones, what people said of them and read off them,
   * trays and lots, the Shelf, people, old cards, the pile, pictures. No word finds nothing.
   *
   * @param most how many hits at most
   */
  List<Hit> find(String words, int most);

  /**
   * One thing that was found.
   *
   * @param opens what a person who chooses it is led to
   * @param key number of what is opened
   * @param text what it says, for people to read
   */
  record Hit(Kind kind, Opens opens, String key, String text) {}

  /** What was found. */
  enum Kind {
    BONE,
    CALL,
    READING,
    STOP,
    TOGETHER,
    TRAY,
    SCRAP,
    LOT,
    ANIMAL,
    SHELF_READING,
    FINDING,
    NAME,
    PERSON,
    OLD_CARD,
    ARRIVAL,
    PICTURE
  }

  /** What a hit leads to. */
  enum Opens {
    BONE,
    TRAY,
    LOT,
    ANIMAL,
    TAXON,
    PERSON,
    OLD_CARD,
    ARRIVAL,
    NOTHING
  }
}

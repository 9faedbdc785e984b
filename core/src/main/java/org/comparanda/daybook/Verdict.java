package org.comparanda.daybook;

import java.util.List;

/** What looking through a Day Book found. */
public sealed interface Verdict {
  /** Nothing was changed, dropped, cut or rebuilt up to the head; so many entries. */
  record Sound(int entries) implements Verdict {}

  /**
   * Something was.
   *
   * @param damage what
   * @param places where: number and bench of an entry (and the line that it lists), a head, or the
   *     subject of a row
   */
  record Broken(Damage damage, List<String> places) implements Verdict {
    public Broken {
      places = List.copyOf(places);
    }

    /** The same in one English sentence. */
    public String sentence() {
      return damage.sentence().formatted(places.toArray());
    }
  }

  /** What can have happened. */
  enum Damage {
    ENTRY_DROPPED(
        "Entry %s of \"%s\" does not follow the entry before it: one was dropped or changed."),
    ENTRY_CHANGED("Entry %s of \"%s\" was changed after it was written."),
    JOINED_ENTRY_GONE("Entry %s of \"%s\" lists an entry that is gone or another: \"%s\"."),
    HEAD_UNKNOWN(
        "The head %s is not in this Day Book: its end was cut off, it was rebuilt, or the head"
            + " belongs to another collection."),
    ROW_CHANGED("The row of %s is gone or not what the Day Book wrote."),
    ROW_UNKNOWN("The row of %s is not in the Day Book.");

    private final String sentence;

    Damage(String sentence) {
      this.sentence = sentence;
    }

    String sentence() {
      return sentence;
    }
  }
}

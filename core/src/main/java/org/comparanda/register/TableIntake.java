package org.comparanda.register;

import java.util.List;
import java.util.Optional;
import org.comparanda.reference.Progress;

/**
 * Brings the animals of a whole table in, all of them or none. Those of a long table are first set
 * down beside the collection, some thousands at a time, and moved in at the end in one step: an
 * import that was stopped or killed goes on from there. What is set down is no part of the
 * collection; it goes when the import is done, and after {@link #KEPT_DAYS} days.
 */
public interface TableIntake {
  /** So long an interrupted import waits to be gone on with. */
  int KEPT_DAYS = 30;

  /**
   * What an interrupted import of a file with that content has set down.
   *
   * @param content SHA-256 of the file, in hexadecimal
   */
  Optional<SetDown> begun(String content);

  /** Takes away what an interrupted import has set down. */
  void forget(String content);

  /**
   * Adds the animals, and keeps that the table was imported. What was set down before is compared
   * with the cards and used only where it is equal to them.
   *
   * <p>Errors: {@link IllegalArgumentException} if a catalogue number was given already.
   *
   * @param content SHA-256 of the file; empty where it has none, which can't be gone on with
   * @param file its name
   * @return how many were stored; 0 when progress stopped it
   */
  long bringIn(String content, String file, List<AnimalCard> cards, Progress progress);
}

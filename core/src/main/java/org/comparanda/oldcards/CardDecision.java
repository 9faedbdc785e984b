package org.comparanda.oldcards;

import java.time.Instant;
import org.comparanda.measurement.PersonId;

/**
 * What a person decided about a card. History is kept: a later decision never replaces an earlier
 * one.
 *
 * @param card number of the card
 * @param kind accepted or refused
 * @param person who
 * @param at when
 * @param note the bones made of it, or why it was refused
 */
public record CardDecision(long card, Kind kind, PersonId person, Instant at, String note) {
  /** The two ends of a card. */
  public enum Kind {
    ACCEPTED,
    REFUSED
  }
}

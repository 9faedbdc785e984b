package org.comparanda.oldcards;

import java.util.List;
import java.util.Optional;

/** Repository of the old cards. Texts and decisions are only ever added. */
public interface OldCards {
  /** All cards, in the order they came. */
  List<CardOnFile> all();

  Optional<CardOnFile> card(long number);

  /**
   * Adds the cards that are not there yet (same list, row and text), all of them or none.
   *
   * @return how many were new
   */
  int add(List<OldCard> cards);

  /**
   * Stores what a person accepted, with its tray where there is none, bones, readings and calls,
   * all of it or nothing.
   *
   * <p>Errors: {@link IllegalStateException} if one of the cards was accepted before
   */
  void accept(List<AcceptedCard> cards);

  /** Keeps that a card was refused. */
  void refuse(CardDecision decision);
}

package org.comparanda.oldcards;

import java.util.List;

/**
 * One row of the vocabulary of old cards.
 *
 * @param part what the words are about
 * @param value what they mean: a taxon, an element's key, LEFT, PROXIMAL, CAST, a unit's symbol;
 *     empty where the part says it all
 * @param words words or phrases as cards write them, upper and lower case alike, points left out
 */
public record CardWord(Part part, String value, List<String> words) {
  public CardWord {
    words = List.copyOf(words);
  }
}

package org.comparanda.oldcards;

import java.util.List;
import java.util.Optional;

/**
 * A card with its history.
 *
 * @param decisions oldest first; none while it waits
 */
public record CardOnFile(OldCard card, List<CardDecision> decisions) {
  public CardOnFile {
    decisions = List.copyOf(decisions);
  }

  /** The decision that holds; empty while the card waits. */
  public Optional<CardDecision> latest() {
    return decisions.isEmpty()
        ? Optional.empty()
        : Optional.of(decisions.get(decisions.size() - 1));
  }

  public boolean accepted() {
    return latest().filter(d -> d.kind() == CardDecision.Kind.ACCEPTED).isPresent();
  }
}

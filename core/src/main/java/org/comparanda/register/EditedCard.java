package org.comparanda.register;

import java.util.List;
import java.util.function.Function;

/** A card as it would become, or every reason why it can't. */
public sealed interface EditedCard {
  /** Both cases handled, one result. */
  <T> T fold(
      Function<AnimalCard, ? extends T> sound, Function<List<CardProblem>, ? extends T> refused);

  /** The card may be stored. */
  record Sound(AnimalCard card) implements EditedCard {
    @Override
    public <T> T fold(
        Function<AnimalCard, ? extends T> sound, Function<List<CardProblem>, ? extends T> refused) {
      return sound.apply(card);
    }
  }

  /** Nothing of it is stored. */
  record Refused(List<CardProblem> problems) implements EditedCard {
    public Refused {
      problems = List.copyOf(problems);
    }

    @Override
    public <T> T fold(
        Function<AnimalCard, ? extends T> sound, Function<List<CardProblem>, ? extends T> refused) {
      return refused.apply(problems);
    }
  }
}

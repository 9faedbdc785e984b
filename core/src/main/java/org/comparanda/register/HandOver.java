package org.comparanda.register;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import org.comparanda.reference.AnimalId;

/**
 * An animal that is to be handed over, soon or already. It reminds and decides nothing.
 *
 * @param days until the day, below zero when it is past
 */
public record HandOver(AnimalId animal, Restriction restriction, LocalDate by, long days) {
  /** So long before the day it is named (common practice, no source). */
  public static final int DAYS_BEFORE = 60;

  /** All that fall due within {@link #DAYS_BEFORE}, the earliest first. */
  public static List<HandOver> due(List<AnimalCard> cards, LocalDate today) {
    return cards.stream()
        .filter(card -> card.standing().mergedInto().isEmpty())
        .flatMap(
            card ->
                card.restriction().handOverBy().stream()
                    .map(
                        by ->
                            new HandOver(
                                card.id(),
                                card.restriction(),
                                by,
                                ChronoUnit.DAYS.between(today, by))))
        .filter(due -> due.days() <= DAYS_BEFORE)
        .sorted(Comparator.comparing(HandOver::by).thenComparing(HandOver::animal))
        .toList();
  }

  /** One quiet sentence that leaves the deciding to the permit. */
  public String sentence() {
    String permit = restriction.permit();
    String says = restriction.words().isEmpty() ? "" : " It says: \"" + restriction.words() + "\".";
    return animal
        + (days < 0 ? " was to be handed over by " : " is to be handed over by ")
        + by
        + ". "
        + (permit.isEmpty() ? "What the terms say decides." : "Permit " + permit + " decides.")
        + says;
  }
}

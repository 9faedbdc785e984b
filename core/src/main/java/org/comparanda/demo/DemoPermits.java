package org.comparanda.demo;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.Restriction;

/** Invented permits of some animals of the demo; their days count from the day it is made. */
final class DemoPermits {
  private DemoPermits() {}

  /** The cards of the animals, with their permits. */
  static List<AnimalCard> cards(List<Animal> animals, LocalDate made) {
    Map<AnimalId, Restriction> permits = new HashMap<>();
    DemoTable.rows("permits.csv")
        .forEach(
            row ->
                permits.put(
                    new AnimalId(row.getField("animal")),
                    new Restriction(
                        row.getField("permit"),
                        row.getField("permit_words"),
                        Restriction.Export.valueOf(row.getField("export").toUpperCase(Locale.ROOT)),
                        Optional.of(
                            made.plusDays(Long.parseLong(row.getField("days_until_hand_over")))))));
    return animals.stream()
        .map(
            animal -> {
              AnimalCard card = AnimalCard.of(animal);
              Restriction permit = permits.get(animal.id());
              return permit == null ? card : card.withRestriction(permit);
            })
        .toList();
  }
}

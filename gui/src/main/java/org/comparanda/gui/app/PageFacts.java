package org.comparanda.gui.app;

import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.slips.SlipFacts;
import org.comparanda.storage.Collection;

/** What every printed page says beside its subject, in the language of the screens. */
final class PageFacts {
  private PageFacts() {}

  /** As things stand now in the open collection. */
  static SlipFacts of(Workplace place) {
    Collection collection = place.collection();
    return new SlipFacts(
        place.look().paperProperty().get(),
        String.valueOf(collection.file().getFileName()).replace(Collection.ENDING, ""),
        "Comparanda " + Screens.version(),
        place.clock().instant(),
        collection.dayBookHead(),
        Simulated.of(collection) == Simulated.SIMULATED
            ? SlipFacts.DataKind.SIMULATED
            : SlipFacts.DataKind.RECORDED,
        place.tables().protocol(),
        id -> name(place, id),
        place.locale(),
        Words.of("app", place.locale())::said);
  }

  private static String name(Workplace place, PersonId id) {
    return place
        .collection()
        .people()
        .person(id)
        .map(Person::name)
        .filter(name -> !name.isBlank())
        .orElse(id.value());
  }
}

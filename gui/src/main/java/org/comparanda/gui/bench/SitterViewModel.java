package org.comparanda.gui.bench;

import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;

/** Who measures and calls here; remembered on this computer. */
final class SitterViewModel {
  private static final String KEY = "person";

  private final ObservableList<Person> people = FXCollections.observableArrayList();
  private final ObjectProperty<Person> person;

  SitterViewModel(BenchPlace place) {
    people.setAll(place.people().all());
    Optional<Person> before =
        place
            .memory()
            .recall(KEY)
            .flatMap(id -> people.stream().filter(p -> p.id().value().equals(id)).findFirst());
    person =
        new SimpleObjectProperty<>(
            before
                .or(() -> people.stream().findFirst())
                .orElse(new Person(new PersonId("bench"), "")));
    person.addListener((o, was, is) -> place.memory().remember(KEY, is.id().value()));
  }

  /** People to choose from. */
  ObservableList<Person> people() {
    return people;
  }

  ObjectProperty<Person> personProperty() {
    return person;
  }

  PersonId id() {
    return person.get().id();
  }
}

package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.AnimalId;

/** What is in hand, as typed: the reading, further ones of the animal, and whose bone it is. */
public final class ReadingsViewModel {
  private final SizeDeskViewModel desk;
  private final Words words;
  private final TypedReading reading = new TypedReading();
  private final StringProperty own = new SimpleStringProperty("");
  private final StringProperty problem = new SimpleStringProperty("");
  private final ObservableList<FurtherReading> further = FXCollections.observableArrayList();

  ReadingsViewModel(SizeDeskViewModel desk, Words words) {
    this.desk = desk;
    this.words = words;
  }

  /** The bone's value as typed. */
  public StringProperty readingProperty() {
    return reading.textProperty();
  }

  /** Catalogue number of the shelf animal that the bone belongs to, as typed. */
  public StringProperty ownProperty() {
    return own;
  }

  /** What is wrong with what was typed; empty when nothing is. */
  public ReadOnlyStringProperty problemProperty() {
    return problem;
  }

  /** Further measurements of the animal. */
  public ObservableList<FurtherReading> further() {
    return further;
  }

  /** One line more, with a measurement that is not asked from yet. */
  public void addFurther() {
    Set<String> asked = new HashSet<>();
    desk.askProperty().get().ifPresent(a -> asked.addAll(a.allFrom()));
    desk.quantities().stream()
        .filter(q -> !q.ofBody() && !asked.contains(q.key()))
        .findFirst()
        .ifPresent(
            q -> {
              FurtherReading row = new FurtherReading(q);
              row.quantityProperty().addListener((o, was, is) -> read());
              further.add(row);
              read();
            });
  }

  /** Takes a line away. */
  public void remove(FurtherReading row) {
    further.remove(row);
    read();
  }

  /** Lets go what is in hand; the next question is of another kind. */
  void clear() {
    further.clear();
  }

  /**
   * Takes over what was typed: the readings and the animal that the bones belong to. Without a
   * reading, that animal's own value is filled in, and goes again with the animal.
   */
  public void read() {
    problem.set("");
    Optional<AnimalId> animal = ownAnimal();
    desk.askProperty()
        .get()
        .ifPresent(
            a -> {
              Optional<Double> first = settle(reading, a, a.from(), animal);
              List<Further> more = new ArrayList<>();
              Set<String> asked = new HashSet<>(Set.of(a.from()));
              for (FurtherReading row : further) {
                String key = row.quantityProperty().get().key();
                if (asked.add(key)) {
                  more.add(new Further(key, settle(row.reading(), a, key, animal)));
                } else {
                  problem.set(words.get("further.twice", row.quantityProperty().get().name()));
                }
              }
              desk.change(ask -> ask.withHand(first, more, animal));
            });
  }

  private Optional<Double> settle(
      TypedReading typed, SizeAsk ask, String key, Optional<AnimalId> animal) {
    return typed
        .settle(animal.flatMap(id -> desk.study().valueOf(id, ask.predict(), key)), words)
        .fold(
            value -> value,
            none -> {
              problem.set(words.said(none.reason() + " " + none.remedy()));
              return Optional.empty();
            });
  }

  private Optional<AnimalId> ownAnimal() {
    String typed = own.get().strip();
    if (typed.isEmpty()) {
      return Optional.empty();
    }
    Optional<AnimalId> animal = desk.study().shelf().animal(new AnimalId(typed)).map(a -> a.id());
    if (animal.isEmpty()) {
      problem.set(words.get("own.unknown", typed));
    }
    return animal;
  }
}

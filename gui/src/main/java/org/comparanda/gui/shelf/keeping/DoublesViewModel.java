package org.comparanda.gui.shelf.keeping;

import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.Merge;
import org.comparanda.statistics.Outcome;

/**
 * A second number of the animal whose card is open: typed, then looked at. Another number typed has
 * to be looked at first, too.
 */
public final class DoublesViewModel {
  private final KeeperRoom room;
  private final ReadOnlyObjectProperty<Optional<AnimalCard>> card;
  private final StringProperty sentence;
  private final Executor work;
  private final Executor ui;
  private final StringProperty other = new SimpleStringProperty("");
  private final ObjectProperty<Optional<Merge>> merge =
      new SimpleObjectProperty<>(Optional.empty());
  private Optional<AnimalId> looked = Optional.empty();

  DoublesViewModel(
      KeeperRoom room,
      ReadOnlyObjectProperty<Optional<AnimalCard>> card,
      StringProperty sentence,
      Executor work,
      Executor ui) {
    this.room = room;
    this.card = card;
    this.sentence = sentence;
    this.work = work;
    this.ui = ui;
    other.addListener((o, was, is) -> take(Optional.empty(), Optional.empty()));
  }

  /** The second number. */
  public StringProperty otherProperty() {
    return other;
  }

  /** What merging would give, once it was looked at. */
  public ReadOnlyObjectProperty<Optional<Merge>> mergeProperty() {
    return merge;
  }

  /** The number that was looked at and may be merged. */
  Optional<AnimalId> looked() {
    return looked;
  }

  void forget() {
    other.set("");
    take(Optional.empty(), Optional.empty());
  }

  /** Says what merging the other number into the open one would give. */
  public void look() {
    take(Optional.empty(), Optional.empty());
    String typed = other.get().strip();
    if (card.get().isPresent() && !typed.isEmpty()) {
      AnimalId kept = card.get().get().id();
      work.execute(
          () -> {
            Outcome<Merge> found = room.register().wouldMerge(kept, new AnimalId(typed));
            ui.execute(() -> show(new AnimalId(typed), found));
          });
    }
  }

  private void show(AnimalId id, Outcome<Merge> found) {
    if (found.value().isPresent() && id.value().equals(other.get().strip())) {
      take(Optional.of(id), found.value());
    }
    if (found.value().isEmpty()) {
      sentence.set(
          found.fold(m -> "", none -> room.words().said(none.reason() + " " + none.remedy())));
    }
  }

  private void take(Optional<AnimalId> id, Optional<Merge> what) {
    looked = id;
    merge.set(what);
  }
}

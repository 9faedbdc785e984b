package org.comparanda.gui.shelf.keeping;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.ObservableMap;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BoneEdit;
import org.comparanda.register.CardEdit;
import org.comparanda.register.CardField;
import org.comparanda.register.CardProblem;
import org.comparanda.register.ChangeNote;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/**
 * One animal's card being edited. What is typed is stored whole, or refused with a line at each
 * field that is wrong; until then the collection is as it was.
 */
public final class CardViewModel {
  private final KeeperRoom room;
  private final Executor work;
  private final Executor ui;
  private final Runnable afterwards;
  private final Signature signature;

  private final ObjectProperty<Optional<AnimalCard>> card =
      new SimpleObjectProperty<>(Optional.empty());
  private final StringProperty number = new SimpleStringProperty("");
  private final Map<CardField, StringProperty> texts = new EnumMap<>(CardField.class);
  private final ObservableMap<CardField, String> problems = FXCollections.observableHashMap();
  // Held, since such a view hears nothing any more once it is collected.
  private final ObservableMap<CardField, String> problemsSeen =
      FXCollections.unmodifiableObservableMap(problems);
  private final StringProperty sentence = new SimpleStringProperty("");
  private final ObservableList<DayBookEntry> history = FXCollections.observableArrayList();
  private final DoublesViewModel doubles;

  /**
   * A card that is not open yet.
   *
   * @param afterwards runs on {@code ui} after something was stored
   */
  public CardViewModel(
      KeeperRoom room, Signature signature, Executor work, Executor ui, Runnable afterwards) {
    this.room = room;
    this.signature = signature;
    this.work = work;
    this.ui = ui;
    this.afterwards = afterwards;
    this.doubles = new DoublesViewModel(room, card, sentence, work, ui);
    for (CardField field : CardField.values()) {
      texts.put(field, new SimpleStringProperty(""));
    }
  }

  /** The card as it stands in the collection; empty for a new animal. */
  public ReadOnlyObjectProperty<Optional<AnimalCard>> cardProperty() {
    return card;
  }

  /** Catalogue number of a new animal. */
  public StringProperty numberProperty() {
    return number;
  }

  public StringProperty textProperty(CardField field) {
    return Optional.ofNullable(texts.get(field)).orElseThrow();
  }

  /** What is wrong, at the fields where it is. */
  public ObservableMap<CardField, String> problems() {
    return problemsSeen;
  }

  /** What came of the last thing done. */
  public StringProperty sentenceProperty() {
    return sentence;
  }

  /** What the Day Book says of it, newest first. */
  public ObservableList<DayBookEntry> history() {
    return history;
  }

  /** A second number of the same animal. */
  public DoublesViewModel doubles() {
    return doubles;
  }

  Signature signature() {
    return signature;
  }

  KeeperRoom room() {
    return room;
  }

  /** Opens an animal's card, on the shelf or not. */
  public void open(AnimalId id) {
    sentence.set("");
    reload(id);
  }

  /** Something of the open card was changed elsewhere. */
  public void changed() {
    card.get().ifPresent(c -> reload(c.id()));
    afterwards.run();
  }

  private void reload(AnimalId id) {
    work.execute(
        () -> {
          Optional<AnimalCard> found = room.register().card(id);
          List<DayBookEntry> book = new java.util.ArrayList<>(room.register().history(id));
          Collections.reverse(book);
          ui.execute(() -> show(found, book));
        });
  }

  /** A card for an animal that has none yet. */
  public void openNew() {
    number.set("");
    sentence.set("");
    show(Optional.empty(), List.of());
  }

  private void show(Optional<AnimalCard> found, List<DayBookEntry> book) {
    problems.clear();
    doubles.forget();
    card.set(found);
    AnimalCard shown = found.orElseGet(() -> AnimalCard.blank(new AnimalId("?")));
    texts.forEach((field, text) -> text.set(field.text(shown)));
    history.setAll(book);
  }

  /** Puts the fields back as they stand in the collection. */
  public void discard() {
    sentence.set("");
    show(card.get(), List.copyOf(history));
  }

  /** Stores what was typed, or says what is wrong. */
  public void save() {
    boolean added = card.get().isEmpty();
    if (added && number.get().isBlank()) {
      sentence.set(room.words().get("card.number.missing"));
      return;
    }
    AnimalCard before =
        card.get().orElseGet(() -> AnimalCard.blank(new AnimalId(number.get().strip())));
    Map<CardField, String> typed = new EnumMap<>(CardField.class);
    texts.forEach(
        (field, text) -> {
          if (!text.get().strip().equals(field.text(before))) {
            typed.put(field, text.get());
          }
        });
    withNote(
        note ->
            work.execute(
                () -> {
                  Set<TaxonName> there = Set.copyOf(room.animals().shelf().taxa());
                  CardEdit edit = new CardEdit(room.tree(), there, room.today());
                  edit.apply(before, typed)
                      .fold(
                          after -> {
                            store(before, after, note, added, older(typed));
                            return after;
                          },
                          refused -> {
                            ui.execute(() -> refuse(refused));
                            return before;
                          });
                }));
  }

  /** What to say of a taxon that was typed under a name no longer used. */
  private String older(Map<CardField, String> typed) {
    return Optional.ofNullable(typed.get(CardField.TAXON))
        .filter(text -> !text.isBlank())
        .flatMap(text -> room.tree().standsUnder(new TaxonName(text.strip())))
        .map(said -> " " + room.words().said(said))
        .orElse("");
  }

  private void store(
      AnimalCard before, AnimalCard after, ChangeNote note, boolean added, String older) {
    if (added) {
      Outcome<AnimalCard> outcome = room.register().add(after, note);
      done(outcome, after.id(), stored -> room.words().get("card.added", stored.id()) + older);
    } else {
      done(
          room.register().change(before, after, note),
          after.id(),
          changes -> room.words().get("card.stored", changes.size()) + older);
    }
  }

  private void refuse(List<CardProblem> refused) {
    problems.clear();
    refused.forEach(
        p -> problems.put(p.field(), room.words().said(p.message() + " " + p.remedy())));
    sentence.set(room.words().get("card.refused", refused.size()));
  }

  /** Adds a bone or changes one. */
  public void put(BoneEdit edit) {
    card.get()
        .ifPresent(
            before ->
                withNote(
                    note ->
                        work.execute(
                            () ->
                                done(
                                    edit.apply(before, room.protocol())
                                        .then(after -> room.register().change(before, after, note)),
                                    before.id(),
                                    changes -> room.words().get("card.stored", changes.size())))));
  }

  /** Merges the number that was looked at into this one. */
  public void merge() {
    card.get()
        .ifPresent(
            kept ->
                doubles
                    .looked()
                    .ifPresent(
                        id ->
                            withNote(
                                note ->
                                    work.execute(
                                        () ->
                                            done(
                                                room.register().merge(kept.id(), id, note),
                                                kept.id(),
                                                m ->
                                                    room.words()
                                                        .get("card.merged", id, kept.id()))))));
  }

  /** Takes the animal off the shelf, or puts a retired one back. */
  public void retireOrReturn() {
    card.get()
        .ifPresent(
            now ->
                withNote(
                    note ->
                        work.execute(
                            () ->
                                done(
                                    now.standing().onTheShelf()
                                        ? room.register().retire(now.id(), note)
                                        : room.register().bringBack(now.id(), note),
                                    now.id(),
                                    after ->
                                        room.words()
                                            .get(
                                                after.standing().onTheShelf()
                                                    ? "card.back"
                                                    : "card.retired",
                                                after.id())))));
  }

  private void withNote(java.util.function.Consumer<ChangeNote> task) {
    signature
        .note()
        .ifPresentOrElse(task, () -> sentence.set(room.words().get("signature.missing")));
  }

  private <T> void done(Outcome<T> outcome, AnimalId id, Function<T, String> said) {
    ui.execute(
        () -> {
          sentence.set(
              outcome.fold(said, none -> room.words().said(none.reason() + " " + none.remedy())));
          if (outcome.value().isPresent()) {
            signature.used();
            reload(id);
            afterwards.run();
          }
        });
  }
}

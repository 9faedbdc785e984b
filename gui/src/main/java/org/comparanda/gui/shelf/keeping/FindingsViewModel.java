package org.comparanda.gui.shelf.keeping;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.check.AcceptedFinding;
import org.comparanda.check.AnimalChecks;
import org.comparanda.check.Correction;
import org.comparanda.check.Finding;
import org.comparanda.check.FindingKind;
import org.comparanda.check.Judgement;
import org.comparanda.check.ShelfEntries;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.Change;
import org.comparanda.register.ChangeNote;
import org.comparanda.register.HandOver;
import org.comparanda.statistics.Outcome;

/** The integrity list: looked through on {@code work}, saying how far it is. */
public final class FindingsViewModel {
  /** Which findings are listed. */
  public enum Which {
    OPEN,
    ACCEPTED,
    ALL
  }

  private final KeeperRoom room;
  private final Signature signature;
  private final Executor work;
  private final Executor idle;
  private final Executor ui;
  private final Runnable afterwards;
  private final StringProperty sentence = new SimpleStringProperty("");
  private final ObjectProperty<Which> which = new SimpleObjectProperty<>(Which.OPEN);
  private final ObservableList<Judgement> listed = FXCollections.observableArrayList();
  private final ObservableList<HandOver> due = FXCollections.observableArrayList();
  private List<Judgement> all = List.of();
  private String told = "";
  private final BooleanProperty running = new SimpleBooleanProperty();
  private final AtomicLong asked = new AtomicLong();

  /**
   * @param work stores answers
   * @param idle looks through the shelf, which may take long
   * @param afterwards runs on {@code ui} after an animal was put right
   */
  public FindingsViewModel(
      KeeperRoom room,
      Signature signature,
      Executor work,
      Executor idle,
      Executor ui,
      Runnable afterwards) {
    this.room = room;
    this.signature = signature;
    this.work = work;
    this.idle = idle;
    this.ui = ui;
    this.afterwards = afterwards;
    which.addListener((o, was, is) -> list());
  }

  /** How far it is, or how much was found. */
  public StringProperty sentenceProperty() {
    return sentence;
  }

  public ObjectProperty<Which> whichProperty() {
    return which;
  }

  public ObservableList<Judgement> listed() {
    return listed;
  }

  /** Animals that are to be handed over soon, or were; the permit decides. */
  public ObservableList<HandOver> due() {
    return due;
  }

  /** Whether the shelf is being looked through. */
  public ReadOnlyBooleanProperty runningProperty() {
    return running;
  }

  KeeperRoom room() {
    return room;
  }

  Signature signature() {
    return signature;
  }

  /** Looks through the shelf; while it does, asking again does nothing. */
  public void look() {
    if (running.get()) {
      return;
    }
    running.set(true);
    long turn = asked.incrementAndGet();
    sentence.set(room.words().get("findings.reading"));
    idle.execute(
        () -> {
          if (turn == asked.get()) {
            through(turn);
          }
        });
  }

  /** Ends looking through the shelf; the list stays as it was. */
  public void stop() {
    if (running.get()) {
      asked.incrementAndGet();
      running.set(false);
      sentence.set(room.words().get("findings.stopped"));
    }
  }

  private void through(long turn) {
    ShelfEntries entries = ShelfEntries.of(room.animals().shelf(), room.protocol(), room.tree());
    List<Finding> found = AnimalChecks.findings(entries, watcher(turn));
    List<Judgement> judged = Judgement.of(found, room.accepted().all());
    List<HandOver> soon = HandOver.due(room.register().all(), room.today());
    ui.execute(
        () -> {
          if (turn == asked.get()) {
            due.setAll(soon);
            running.set(false);
            take(judged);
          }
        });
  }

  private AnimalChecks.Watcher watcher(long turn) {
    int checks = AnimalChecks.all().size();
    return new AnimalChecks.Watcher() {
      @Override
      public void begins(int number, FindingKind kind) {
        ui.execute(
            () -> {
              if (turn == asked.get()) {
                sentence.set(
                    room.words()
                        .get("findings.running", number, checks, room.words().get("kind." + kind)));
              }
            });
      }

      @Override
      public boolean stopped() {
        return turn != asked.get();
      }
    };
  }

  private void take(List<Judgement> judged) {
    all = judged;
    list();
  }

  private void list() {
    listed.setAll(
        all.stream()
            .filter(
                j ->
                    which.get() == Which.ALL
                        || (which.get() == Which.ACCEPTED) == j.accepted().isPresent())
            .toList());
    long open = all.stream().filter(j -> j.accepted().isEmpty()).count();
    sentence.set(told + room.words().get("findings.count", open, all.size() - open));
  }

  /** Accepts a finding, by whom and why; it is remembered until the value changes. */
  public void accept(Finding finding) {
    signed(
        note -> {
          AcceptedFinding accepted =
              AcceptedFinding.of(
                  finding, note.why(), Optional.of(note.who()), room.clock().instant());
          signature.used();
          told = "";
          work.execute(
              () -> {
                room.accepted().accept(accepted);
                List<AcceptedFinding> now = room.accepted().all();
                ui.execute(
                    () -> take(Judgement.of(all.stream().map(Judgement::finding).toList(), now)));
              });
        });
  }

  /** Does what a finding proposes, by whom and why, and looks again. */
  public void correct(Finding finding) {
    Optional<AnimalId> animal = finding.animal().map(AnimalId::new);
    if (finding.correction().isEmpty() || animal.isEmpty()) {
      sentence.set(room.words().get("correction.none"));
      return;
    }
    signed(note -> work.execute(() -> correct(animal.get(), finding.correction().get(), note)));
  }

  private void correct(AnimalId id, Correction correction, ChangeNote note) {
    Outcome<List<Change>> done =
        room.register()
            .card(id)
            .map(
                card ->
                    correction
                        .apply(card.animal())
                        .then(right -> room.register().change(card, card.withAnimal(right), note)))
            .orElseGet(() -> Outcome.none(room.words().get("card.no.such", id), ""));
    ui.execute(
        () ->
            done.value()
                .ifPresentOrElse(
                    changes -> corrected(id),
                    () ->
                        sentence.set(
                            done.fold(
                                changes -> "",
                                none ->
                                    room.words()
                                        .said((none.reason() + " " + none.remedy()).strip())))));
  }

  private void corrected(AnimalId id) {
    signature.used();
    told = room.words().get("findings.corrected", id) + " ";
    look();
    afterwards.run();
  }

  private void signed(Consumer<ChangeNote> does) {
    signature
        .note()
        .ifPresentOrElse(does, () -> sentence.set(room.words().get("findings.signature.missing")));
  }
}

package org.comparanda.gui.shelf.keeping;

import java.util.List;
import java.util.concurrent.Executor;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.check.AcceptedFinding;
import org.comparanda.check.AnimalChecks;
import org.comparanda.check.Finding;
import org.comparanda.check.Judgement;
import org.comparanda.check.ShelfEntries;
import org.comparanda.register.HandOver;

/** The integrity list: looked through on {@code work}, saying how far it is. */
public final class FindingsViewModel {
  /** Which findings are listed. */
  public enum Which {
    OPEN,
    ACCEPTED,
    ALL
  }

  private final KeeperRoom room;
  private final Executor work;
  private final Executor ui;
  private final StringProperty sentence = new SimpleStringProperty("");
  private final StringProperty reason = new SimpleStringProperty("");
  private final ObjectProperty<Which> which = new SimpleObjectProperty<>(Which.OPEN);
  private final ObservableList<Judgement> listed = FXCollections.observableArrayList();
  private final ObservableList<HandOver> due = FXCollections.observableArrayList();
  private List<Judgement> all = List.of();
  private boolean running;

  public FindingsViewModel(KeeperRoom room, Executor work, Executor ui) {
    this.room = room;
    this.work = work;
    this.ui = ui;
    which.addListener((o, was, is) -> list());
  }

  /** How far it is, or how much was found. */
  public StringProperty sentenceProperty() {
    return sentence;
  }

  /** Why a finding is accepted. */
  public StringProperty reasonProperty() {
    return reason;
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

  KeeperRoom room() {
    return room;
  }

  /** Looks through the shelf; while it does, asking again does nothing. */
  public void look() {
    if (running) {
      return;
    }
    running = true;
    sentence.set(room.words().get("findings.reading"));
    work.execute(
        () -> {
          ShelfEntries entries =
              ShelfEntries.of(room.animals().shelf(), room.protocol(), room.tree());
          int checks = AnimalChecks.all().size();
          List<Finding> found =
              AnimalChecks.findings(
                  entries,
                  (number, kind) ->
                      ui.execute(
                          () ->
                              sentence.set(
                                  room.words()
                                      .get(
                                          "findings.running",
                                          number,
                                          checks,
                                          room.words().get("kind." + kind)))));
          List<Judgement> judged = Judgement.of(found, room.accepted().all());
          List<HandOver> soon = HandOver.due(room.register().all(), room.today());
          ui.execute(
              () -> {
                due.setAll(soon);
                take(judged);
              });
        });
  }

  private void take(List<Judgement> judged) {
    running = false;
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
    sentence.set(room.words().get("findings.count", open, all.size() - open));
  }

  /** Accepts a finding with the reason typed; it is remembered until the value changes. */
  public void accept(Finding finding) {
    if (reason.get().isBlank()) {
      sentence.set(room.words().get("findings.reason.missing"));
      return;
    }
    AcceptedFinding accepted =
        AcceptedFinding.of(finding, reason.get().strip(), room.clock().instant());
    reason.set("");
    work.execute(
        () -> {
          room.accepted().accept(accepted);
          List<AcceptedFinding> now = room.accepted().all();
          ui.execute(() -> take(Judgement.of(all.stream().map(Judgement::finding).toList(), now)));
        });
  }
}

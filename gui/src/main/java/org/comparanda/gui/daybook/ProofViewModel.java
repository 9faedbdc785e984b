package org.comparanda.gui.daybook;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.comparanda.daybook.Verdict;

/** The proof: looks through the whole book, off the window's thread. */
public final class ProofViewModel {
  private static final int HASH_LENGTH = 64; // SHA-256 in hexadecimal

  /** How far a proof is. */
  public enum State {
    NOT_ASKED,
    RUNNING,
    HOLDS,
    BROKEN,
    NO_HASH
  }

  private final DayBookRoom room;
  private final BookWords said;
  private final Executor work;
  private final Executor ui;
  private final StringProperty typed = new SimpleStringProperty("");
  private final StringProperty verdict = new SimpleStringProperty("");
  private final ObjectProperty<State> state = new SimpleObjectProperty<>(State.NOT_ASKED);
  private final DoubleProperty done = new SimpleDoubleProperty();

  ProofViewModel(DayBookRoom room, BookWords said, Executor work, Executor ui) {
    this.room = room;
    this.said = said;
    this.work = work;
    this.ui = ui;
  }

  /** Proves the book up to the head as typed, or, where none was typed, as far as can be told. */
  public void prove() {
    if (state.get() == State.RUNNING) {
      return;
    }
    String hash = typed.get().replaceAll("\\s", "").toLowerCase(Locale.ROOT);
    if (!hash.isEmpty() && !hash.matches("[0-9a-f]{" + HASH_LENGTH + "}")) {
      state.set(State.NO_HASH);
      verdict.set(said.get("proof.nohash", HASH_LENGTH, hash.length()));
      return;
    }
    Optional<String> head = Optional.of(hash).filter(h -> !h.isEmpty());
    state.set(State.RUNNING);
    done.set(0);
    verdict.set(said.get("proof.running"));
    work.execute(
        () -> {
          Verdict found = room.proof().of(head, part -> ui.execute(() -> done.set(part)));
          ui.execute(
              () -> {
                state.set(found instanceof Verdict.Sound ? State.HOLDS : State.BROKEN);
                verdict.set(said.verdict(found, head));
              });
        });
  }

  /** The head hash as typed or pasted. */
  public StringProperty typedProperty() {
    return typed;
  }

  /** What was found, in words. */
  public StringProperty verdictProperty() {
    return verdict;
  }

  public ReadOnlyObjectProperty<State> stateProperty() {
    return state;
  }

  /** Which part of the work is done, 0 to 1. */
  public DoubleProperty doneProperty() {
    return done;
  }
}

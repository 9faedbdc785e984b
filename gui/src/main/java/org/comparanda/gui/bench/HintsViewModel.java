package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.comparanda.capture.Passes;
import org.comparanda.capture.Place;
import org.comparanda.gui.capture.Memory;

/**
 * Short hints for whoever sits here for the first time: one at a time, beside the work and never
 * before it. A hint is read when its key was pressed or when what it speaks of was done.
 */
public final class HintsViewModel {
  /** What the hints speak of, in the order of the work. */
  public enum Hint {
    TRAY,
    STATE,
    FIRST_READING,
    FALLING_LINE,
    NOT_POSSIBLE,
    SECOND_PASS,
    CALL,
    SLIP
  }

  private static final String KEY = "hint.";
  private static final String READ = "read";

  private final Memory memory;
  private final BenchViewModel bench;
  private final ObjectProperty<Optional<Hint>> shown = new SimpleObjectProperty<>(Optional.empty());

  private Optional<Hint> last = Optional.empty();
  private Optional<Hint> stage = Optional.empty();

  HintsViewModel(Memory memory, BenchViewModel bench) {
    this.memory = memory;
    this.bench = bench;
    bench.boneProperty().addListener((o, was, is) -> look());
    bench.findingProperty().addListener((o, was, is) -> look());
    bench.readings().currentProperty().addListener((o, was, is) -> look());
    bench.state().questionsProperty().addListener((o, was, is) -> look());
    bench.call().recordedProperty().addListener((o, was, is) -> look());
    look();
  }

  /** The hint to be seen now; empty once all that fit were read. */
  public ObjectProperty<Optional<Hint>> shownProperty() {
    return shown;
  }

  /** The hint was read. */
  public void gotIt() {
    shown.get().ifPresent(this::read);
    look();
  }

  /** No hint any more, on this computer. */
  public void noMore() {
    for (Hint hint : Hint.values()) {
      read(hint);
    }
    look();
  }

  private void read(Hint hint) {
    memory.remember(KEY + hint.name(), READ);
  }

  private boolean unread(Hint hint) {
    return memory.recall(KEY + hint.name()).isEmpty();
  }

  private void look() {
    Optional<Hint> now = now();
    // What a hint speaks of lies behind once the work has gone on to something later.
    if (now.isPresent() && stage.filter(before -> now.get().compareTo(before) > 0).isPresent()) {
      last.ifPresent(this::read);
    }
    shown.set(now.flatMap(stage -> turns(stage).stream().filter(this::unread).findFirst()));
    last = shown.get().or(() -> last);
    stage = now.or(() -> stage);
  }

  /**
   * What has its turn at a stage, one after the other. A bone that somebody else began shows the
   * falling line at once: who never read of it reads that first.
   */
  private static List<Hint> turns(Hint stage) {
    return switch (stage) {
      case FALLING_LINE -> List.of(Hint.FALLING_LINE, Hint.NOT_POSSIBLE);
      case SECOND_PASS -> List.of(Hint.FALLING_LINE, Hint.SECOND_PASS);
      default -> List.of(stage);
    };
  }

  /** What the work is about now. */
  private Optional<Hint> now() {
    if (bench.boneProperty().get().isEmpty()) {
      return Optional.of(Hint.TRAY).filter(hint -> !bench.trays().isEmpty());
    }
    if (bench.state().questionsProperty().get().isPresent()) {
      return Optional.of(Hint.STATE);
    }
    if (bench.stopped()) {
      return Optional.empty();
    }
    return bench.readings().passes().flatMap(this::measuring);
  }

  private Optional<Hint> measuring(Passes passes) {
    boolean called = bench.call().called();
    int pass = passes.current().map(Place::pass).orElse(Integer.MAX_VALUE);
    if (called) {
      return Optional.of(Hint.SLIP);
    }
    if (pass == Integer.MAX_VALUE) {
      return passes.values().isEmpty() ? Optional.empty() : Optional.of(Hint.CALL);
    }
    if (pass > 1) {
      return Optional.of(Hint.SECOND_PASS);
    }
    return Optional.of(passes.values().isEmpty() ? Hint.FIRST_READING : Hint.FALLING_LINE);
  }
}

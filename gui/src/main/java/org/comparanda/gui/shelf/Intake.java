package org.comparanda.gui.shelf;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.comparanda.exchange.table.ReadingProgress;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableProblem;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.gui.shelf.ImportState.Stage;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.reference.Shelf;
import org.comparanda.register.AnimalCard;

/**
 * One table on its way onto the shelf. It is read and written on {@code work}; what the person says
 * of it (units, new names) is kept until another table is tried.
 */
final class Intake {
  private final ShelfRoom room;
  private final Executor work;
  private final Executor ui;
  private final Runnable afterwards;
  private final ObjectProperty<ImportState> state = new SimpleObjectProperty<>(ImportState.none());
  private Path table = Path.of("");
  private TableOptions options = TableOptions.withDefaults();
  private Optional<TableRead<List<AnimalCard>>> sound = Optional.empty();
  private AtomicBoolean stopped = new AtomicBoolean();

  Intake(ShelfRoom room, Executor work, Executor ui, Runnable afterwards) {
    this.room = room;
    this.work = work;
    this.ui = ui;
    this.afterwards = afterwards;
  }

  ReadOnlyObjectProperty<ImportState> stateProperty() {
    return state;
  }

  void tryTable(Path other, Shelf against) {
    table = other;
    options = TableOptions.withDefaults();
    read(against);
  }

  void tryAgain(Map<String, LengthUnit> units, TableOptions.Unknown unknown, Shelf against) {
    for (Map.Entry<String, LengthUnit> unit : units.entrySet()) {
      options = options.withUnit(unit.getKey(), unit.getValue());
    }
    if (unknown == TableOptions.Unknown.REGISTER) {
      options = options.withUnknown(unknown);
    }
    read(against);
  }

  private void read(Shelf against) {
    String name = String.valueOf(table.getFileName());
    AtomicBoolean stop = begin(Stage.READING, room.words().get("import.reading", name));
    TableReader reader =
        TableReader.of(room.protocol(), room.tree(), options).watchedBy(new Watch(name, stop));
    Path read = table;
    work.execute(
        () -> {
          try {
            var outcome = reader.cardsFor(against, read);
            ui.execute(
                () ->
                    state.set(
                        outcome.fold(
                            this::keep,
                            report ->
                                new ImportState(
                                    Stage.REFUSED,
                                    report.lines().get(0),
                                    byRow(report.problems())))));
          } catch (CancellationException asked) {
            ui.execute(this::saidStopped);
          }
        });
  }

  private AtomicBoolean begin(Stage stage, String sentence) {
    sound = Optional.empty();
    stopped = new AtomicBoolean();
    state.set(new ImportState(stage, sentence, List.of()));
    return stopped;
  }

  private static List<TableProblem> byRow(List<TableProblem> problems) {
    return problems.stream()
        .sorted(Comparator.comparingLong((TableProblem p) -> p.row().orElse(0L)))
        .toList();
  }

  private ImportState keep(TableRead<List<AnimalCard>> read) {
    sound = Optional.of(read);
    return new ImportState(
        Stage.SOUND,
        room.words().get("import.sound", read.content().size()) + " " + read.facts().sentence(),
        List.of());
  }

  void addSound() {
    sound.ifPresent(
        read -> {
          AtomicBoolean stop = begin(Stage.WRITING, room.words().get("import.writing", 0));
          work.execute(
              () -> {
                long stored =
                    room.adding()
                        .add(
                            read.content().iterator(),
                            read.facts().file(),
                            soFar -> written(soFar, stop));
                ui.execute(() -> ended(stored));
              });
        });
  }

  private boolean written(long soFar, AtomicBoolean stop) {
    ui.execute(() -> going(Stage.WRITING, room.words().get("import.writing", soFar)));
    return !stop.get();
  }

  private void ended(long stored) {
    if (stored == 0) {
      saidStopped();
    } else {
      state.set(new ImportState(Stage.ADDED, room.words().get("import.added", stored), List.of()));
    }
    afterwards.run();
  }

  private void saidStopped() {
    state.set(new ImportState(Stage.STOPPED, room.words().get("import.stopped"), List.of()));
  }

  private void going(Stage stage, String sentence) {
    if (state.get().stage() == stage) {
      state.set(new ImportState(stage, sentence, List.of()));
    }
  }

  void stop() {
    stopped.set(true);
  }

  void leave() {
    stop();
    sound = Optional.empty();
    state.set(ImportState.none());
  }

  /** Tells the screen how far the reading is. */
  private final class Watch implements ReadingProgress {
    private final String name;
    private final AtomicBoolean stop;

    Watch(String name, AtomicBoolean stop) {
      this.name = name;
      this.stop = stop;
    }

    @Override
    public void read(long bytes, long ofBytes) {
      long percent = ofBytes == 0 ? 100 : 100 * bytes / ofBytes;
      ui.execute(() -> going(Stage.READING, room.words().get("import.progress", name, percent)));
    }

    @Override
    public boolean cancelled() {
      return stop.get();
    }
  }
}

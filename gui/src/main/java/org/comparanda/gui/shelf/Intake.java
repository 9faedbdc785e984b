package org.comparanda.gui.shelf;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.comparanda.exchange.mapping.MappingText;
import org.comparanda.exchange.table.ColumnGuess;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableOutcome;
import org.comparanda.exchange.table.TablePreview;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.gui.shelf.ImportState.Stage;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.reference.ImportedTable;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.TableMappings;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.SetDown;
import org.comparanda.tables.ColumnWordTable;

/**
 * One table on its way onto the shelf. It is read and written on {@code work}; what the person says
 * of it (units, new names) is kept until another table is tried.
 */
final class Intake {
  private final ShelfRoom room;
  private final ImportWords said;
  private final Executor work;
  private final Executor ui;
  private final Runnable afterwards;
  private final ObjectProperty<ImportState> state = new SimpleObjectProperty<>(ImportState.none());
  private Path table = Path.of("");
  private TableOptions options = TableOptions.withDefaults();
  private Optional<Path> onceMore = Optional.empty();
  private Optional<TableRead<List<AnimalCard>>> sound = Optional.empty();
  private AtomicBoolean stopped = new AtomicBoolean();

  Intake(ShelfRoom room, Executor work, Executor ui, Runnable afterwards) {
    this.room = room;
    said = new ImportWords(room.words());
    this.work = work;
    this.ui = ui;
    this.afterwards = afterwards;
  }

  ReadOnlyObjectProperty<ImportState> stateProperty() {
    return state;
  }

  /** Looks at a table; one whose headers all are our own words is read at once. */
  void tryTable(Path other, Shelf against) {
    table = other;
    options = TableOptions.withDefaults();
    onceMore = Optional.empty();
    look(against);
  }

  /** Looks at a table although one with the same content was imported before. */
  void tryOnceMore(Shelf against) {
    onceMore = Optional.of(table);
    look(against);
  }

  /** Looks at this sheet of the same workbook. */
  void trySheet(String sheet, Shelf against) {
    options = options.withSheet(sheet);
    look(against);
  }

  /** Looks again, the header in this row. */
  void tryHeaderRow(long row, Shelf against) {
    options = options.withHeaderRow(row);
    look(against);
  }

  private void look(Shelf against) {
    String name = String.valueOf(table.getFileName());
    AtomicBoolean stop = begin(Stage.READING, room.words().get("import.reading", name));
    TableReader reader = TableReader.of(room.protocol(), room.tree(), options);
    Path looked = table;
    boolean known = onceMore.equals(Optional.of(table));
    work.execute(
        () -> {
          Optional<ImportedTable> before = known ? Optional.empty() : room.adding().before(looked);
          TableOutcome<TablePreview> seen = reader.preview(looked, ColumnWordTable.shipped());
          List<String> saved = room.adding().mappings().map(TableMappings::names).orElse(List.of());
          ui.execute(
              () -> {
                if (stop.get()) {
                  saidStopped();
                } else if (before.isPresent()) {
                  state.set(said.known(before.get(), name));
                } else {
                  looked(seen, saved, against);
                }
              });
        });
  }

  private void looked(TableOutcome<TablePreview> seen, List<String> saved, Shelf against) {
    seen.fold(
            read -> Optional.of(read.content()),
            report -> {
              state.set(said.refused(report));
              return Optional.<TablePreview>empty();
            })
        .ifPresent(
            preview -> {
              if (preview.belowTitle()) {
                options = options.withHeaderRow(preview.headerRow());
              }
              if (!preview.belowTitle() && preview.columns().stream().allMatch(Intake::ourWord)) {
                read(against);
              } else {
                state.set(
                    ImportState.asking(
                        room.words()
                            .get(
                                preview.belowTitle() ? "mapping.below_title" : "mapping.ask",
                                preview.layout(),
                                preview.headerRow()),
                        new MappingQuestion(preview, saved)));
              }
            });
  }

  private static boolean ourWord(ColumnGuess guess) {
    return guess.role().filter(guess.name()::equals).isPresent();
  }

  /** Reads the table as the person says of its columns. */
  void tryMapped(List<ColumnChoice> choices, TableOptions.Unknown unknown, Shelf against) {
    options = ColumnChoice.said(options, choices, unknown);
    read(against);
  }

  /** Reads the table as a saved mapping says. */
  void trySaved(String name, Shelf against) {
    work.execute(
        () -> {
          Optional<String> text = room.adding().mappings().flatMap(m -> m.text(name));
          ui.execute(
              () ->
                  text.ifPresent(
                      t ->
                          MappingText.read(name, t)
                              .fold(
                                  saved -> readAs(saved, against),
                                  none -> refusedWith(room.words().said(none.reason())))));
        });
  }

  private boolean readAs(TableOptions saved, Shelf against) {
    TableOptions said = options.sheet().map(saved::withSheet).orElse(saved);
    options = options.headerRow().map(said::withHeaderRow).orElse(said);
    read(against);
    return true;
  }

  private boolean refusedWith(String sentence) {
    state.set(new ImportState(Stage.REFUSED, sentence, List.of()));
    return false;
  }

  /** Keeps what the person says of the columns under a name. */
  void save(String name, List<ColumnChoice> choices, TableOptions.Unknown unknown) {
    String text = MappingText.write(ColumnChoice.said(options, choices, unknown));
    work.execute(() -> room.adding().mappings().ifPresent(m -> m.save(name, text)));
  }

  /** Deletes the mapping saved under a name. */
  void forgetMapping(String name) {
    work.execute(() -> room.adding().mappings().ifPresent(m -> m.remove(name)));
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
        TableReader.of(room.protocol(), room.tree(), options)
            .watchedBy(new TableWatch(stop, percent -> readSoFar(name, percent)));
    Path read = table;
    work.execute(
        () -> {
          try {
            var outcome = reader.cardsFor(against, read);
            Optional<SetDown> begun = room.adding().begun(read);
            ui.execute(
                () -> state.set(outcome.fold(content -> keep(content, begun), said::refused)));
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

  private ImportState keep(TableRead<List<AnimalCard>> read, Optional<SetDown> begun) {
    sound = Optional.of(read);
    return said.sound(read).begun(begun.map(down -> said.setDown("import.begun", down)));
  }

  void addSound() {
    sound.ifPresent(
        read -> {
          AtomicBoolean stop = begin(Stage.WRITING, room.words().get("import.writing", 0));
          Path stands = table;
          work.execute(
              () -> {
                try {
                  long stored =
                      room.adding().add(stands, read.content(), soFar -> written(soFar, stop));
                  Optional<SetDown> begun =
                      stored == 0 ? room.adding().begun(stands) : Optional.empty();
                  ui.execute(() -> ended(stored, begun));
                } catch (IllegalArgumentException givenMeanwhile) {
                  String why = room.words().said(String.valueOf(givenMeanwhile.getMessage()));
                  ui.execute(() -> refusedWith(why));
                }
              });
        });
  }

  /** Adds them without what an interrupted import has set down. */
  void addFromStart() {
    Path stands = table;
    work.execute(() -> room.adding().forget(stands));
    addSound();
  }

  private boolean written(long soFar, AtomicBoolean stop) {
    ui.execute(() -> going(Stage.WRITING, room.words().get("import.writing", soFar)));
    return !stop.get();
  }

  private void ended(long stored, Optional<SetDown> begun) {
    if (stored == 0) {
      saidStopped();
      begun.ifPresent(
          down ->
              going(
                  Stage.STOPPED,
                  room.words().get("import.stopped")
                      + " "
                      + said.setDown("import.stopped_begun", down)));
    } else {
      state.set(new ImportState(Stage.ADDED, room.words().get("import.added", stored), List.of()));
    }
    afterwards.run();
  }

  private void readSoFar(String name, long percent) {
    ui.execute(() -> going(Stage.READING, room.words().get("import.progress", name, percent)));
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
}

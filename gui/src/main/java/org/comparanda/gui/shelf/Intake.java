package org.comparanda.gui.shelf;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.comparanda.exchange.mapping.MappingText;
import org.comparanda.exchange.table.ColumnGuess;
import org.comparanda.exchange.table.ReadingProgress;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableOutcome;
import org.comparanda.exchange.table.TablePreview;
import org.comparanda.exchange.table.TableProblem;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.gui.shelf.ImportState.Stage;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.reference.ImportedTable;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.TableMappings;
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

  /** Looks at a table; one whose headers all are our own words is read at once. */
  void tryTable(Path other, Shelf against) {
    table = other;
    options = TableOptions.withDefaults();
    look(against);
  }

  /** Looks at this sheet of the same workbook. */
  void trySheet(String sheet, Shelf against) {
    options = options.withSheet(sheet);
    look(against);
  }

  private void look(Shelf against) {
    String name = String.valueOf(table.getFileName());
    AtomicBoolean stop = begin(Stage.READING, room.words().get("import.reading", name));
    TableReader reader = TableReader.of(room.protocol(), room.tree(), options);
    Path looked = table;
    work.execute(
        () -> {
          Optional<ImportedTable> before = room.adding().before(looked);
          TableOutcome<TablePreview> seen = reader.preview(looked);
          List<String> saved = room.adding().mappings().map(TableMappings::names).orElse(List.of());
          ui.execute(
              () -> {
                if (stop.get()) {
                  saidStopped();
                } else if (before.isPresent()) {
                  refusedWith(said(before.get(), name));
                } else {
                  looked(seen, saved, against);
                }
              });
        });
  }

  private String said(ImportedTable before, String name) {
    return room.words()
        .get(
            "import.before",
            name,
            before.at().toString().substring(0, 10),
            before.file(),
            before.animals());
  }

  private void looked(TableOutcome<TablePreview> seen, List<String> saved, Shelf against) {
    seen.fold(
            read -> Optional.of(read.content()),
            report -> {
              state.set(
                  new ImportState(Stage.REFUSED, report.lines().get(0), byRow(report.problems())));
              return Optional.<TablePreview>empty();
            })
        .ifPresent(
            preview -> {
              if (preview.columns().stream().allMatch(Intake::ourWord)) {
                read(against);
              } else {
                state.set(
                    new ImportState(
                        Stage.MAPPING,
                        room.words().get("mapping.ask", preview.layout()),
                        List.of(),
                        Optional.of(new MappingQuestion(preview, saved))));
              }
            });
  }

  private static boolean ourWord(ColumnGuess guess) {
    return guess.role().filter(guess.name()::equals).isPresent();
  }

  /** Reads the table as the person says of its columns. */
  void tryMapped(List<ColumnChoice> choices, TableOptions.Unknown unknown, Shelf against) {
    options = mapped(choices, unknown);
    read(against);
  }

  private TableOptions mapped(List<ColumnChoice> choices, TableOptions.Unknown unknown) {
    Map<String, String> as = new LinkedHashMap<>();
    Set<String> aside = new LinkedHashSet<>();
    TableOptions said = options;
    for (ColumnChoice choice : choices) {
      choice
          .role()
          .ifPresentOrElse(role -> as.put(role, choice.header()), () -> aside.add(choice.header()));
      if (choice.role().isPresent() && choice.unit().isPresent()) {
        said = said.withUnit(choice.role().get(), choice.unit().get());
      }
    }
    return said.withAs(as).withAside(aside).withUnknown(unknown);
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
                                  none -> refusedWith(none.reason()))));
        });
  }

  private boolean readAs(TableOptions saved, Shelf against) {
    options = options.sheet().map(saved::withSheet).orElse(saved);
    read(against);
    return true;
  }

  private boolean refusedWith(String sentence) {
    state.set(new ImportState(Stage.REFUSED, sentence, List.of()));
    return false;
  }

  /** Keeps what the person says of the columns under a name. */
  void save(String name, List<ColumnChoice> choices, TableOptions.Unknown unknown) {
    String text = MappingText.write(mapped(choices, unknown));
    work.execute(() -> room.adding().mappings().ifPresent(m -> m.save(name, text)));
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
          Path stands = table;
          work.execute(
              () -> {
                long stored =
                    room.adding()
                        .add(
                            read.content().iterator(),
                            read.facts().file(),
                            soFar -> written(soFar, stop));
                if (stored > 0) {
                  room.adding().imported(stands, stored);
                }
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

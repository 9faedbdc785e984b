package org.comparanda.gui.pile;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.measurement.PersonId;
import org.comparanda.pile.Arrival;
import org.comparanda.pile.Interest;
import org.comparanda.pile.PileEntry;
import org.comparanda.pile.PileOrder;
import org.comparanda.reference.Shelf;
import org.comparanda.stock.Wanted;
import org.comparanda.taxon.TaxonName;

/** State of the pile's screen; gains are computed on {@code work}, once for each shelf. */
public final class PileViewModel {
  private final PileRoom room;
  private final Executor work;
  private final Executor ui;
  private final ObservableList<PileEntry> entries = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<PileEntry>> open =
      new SimpleObjectProperty<>(Optional.empty());
  private final StringProperty notice = new SimpleStringProperty("");
  private final Gains gains = new Gains();
  private Optional<String> sought = Optional.empty();

  /** The wanted list of the shelf that was looked at last; used by one piece of work at a time. */
  private static final class Gains {
    private Shelf shelf = new Shelf(List.of());
    private List<Wanted.Entry> wanted = List.of();

    synchronized List<Wanted.Entry> of(Shelf now) {
      if (!now.equals(shelf)) {
        wanted = Wanted.withDefaults().of(now);
        shelf = now;
      }
      return wanted;
    }
  }

  public PileViewModel(PileRoom room, Executor work, Executor ui) {
    this.room = room;
    this.work = work;
    this.ui = ui;
  }

  /** Looks at the collection again. */
  public void refresh() {
    work.execute(this::lookAgain);
  }

  private void lookAgain() {
    List<PileEntry> now =
        PileOrder.of(
            room.pile().all(),
            room.pile().interest(),
            gains.of(room.shelf().get()),
            room.taxa().get());
    ui.execute(() -> take(now));
  }

  private void take(List<PileEntry> now) {
    Optional<String> before = sought.or(() -> open.get().map(e -> e.arrival().number()));
    sought = Optional.empty();
    entries.setAll(now);
    open(
        now.stream()
            .filter(e -> before.filter(e.arrival().number()::equals).isPresent())
            .findFirst()
            .or(() -> now.stream().findFirst()));
  }

  /** Opens this entry as soon as the pile is looked at again. */
  public void seek(String number) {
    sought = Optional.of(number);
  }

  /** The pile, the top first. */
  public ObservableList<PileEntry> entries() {
    return entries;
  }

  public ReadOnlyObjectProperty<Optional<PileEntry>> openProperty() {
    return open;
  }

  /** What came of the last step. */
  public StringProperty noticeProperty() {
    return notice;
  }

  /** Opens an entry. */
  public void open(Optional<PileEntry> entry) {
    open.set(entry);
  }

  /** Records something that came in today. */
  public void add(String number, String taxon, String what, String from, String permit) {
    if (number.isBlank() || taxon.isBlank() || from.isBlank()) {
      notice.set(room.words().get("add.missing"));
      return;
    }
    LocalDate today = LocalDate.ofInstant(room.clock().instant(), ZoneOffset.UTC);
    Arrival arrival =
        new Arrival(
            number.strip(),
            new TaxonName(taxon.strip()),
            what.isBlank() ? "carcass" : what.strip(),
            today,
            from.strip(),
            Arrival.Stage.FROZEN,
            "",
            permit.strip(),
            "");
    work.execute(
        () -> {
          boolean there = room.pile().arrival(arrival.number()).isPresent();
          if (!there) {
            room.pile().save(arrival);
            lookAgain();
          }
          String said = room.words().get(there ? "add.there" : "add.done", arrival.number());
          ui.execute(() -> notice.set(there ? said : said + older(arrival.taxon())));
        });
  }

  /** What to say of a taxon that was typed under a name no longer used. */
  private String older(TaxonName typed) {
    return room.taxa().get().standsUnder(typed).map(now -> " " + room.words().said(now)).orElse("");
  }

  /** Says how far the open arrival is. */
  public void stage(Arrival.Stage stage) {
    open.get()
        .filter(e -> e.arrival().stage() != stage)
        .ifPresent(
            e ->
                work.execute(
                    () -> {
                      room.pile().save(e.arrival().withStage(stage));
                      lookAgain();
                    }));
  }

  /** Records research that waits for the open arrival. */
  public void ask(String person, String reason) {
    if (person.isBlank() || reason.isBlank()) {
      notice.set(room.words().get("ask.missing"));
      return;
    }
    open.get()
        .ifPresent(
            e ->
                work.execute(
                    () -> {
                      room.pile()
                          .add(
                              new Interest(
                                  e.arrival().number(),
                                  new PersonId(person.strip()),
                                  reason.strip(),
                                  room.clock().instant()));
                      lookAgain();
                    }));
  }

  /** Prints the pile as it stands. */
  public void print(Path file) {
    List<PileEntry> now = List.copyOf(entries);
    work.execute(
        () -> {
          String said;
          try {
            room.printing().to(file, now);
            said = room.words().get("printed", String.valueOf(file.getFileName()));
          } catch (IOException unwritable) {
            said = room.words().get("not.printed", String.valueOf(file.getFileName()));
          }
          String text = said;
          ui.execute(() -> notice.set(text));
        });
  }
}

package org.comparanda.gui.daybook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.daybook.DayBookFilter;
import org.comparanda.daybook.DayBookPage;
import org.comparanda.measurement.Person;

/** State of the Day Book screen: one page of entries, the filter, the head, the open entry. */
public final class DayBookViewModel {
  /** Entries of a page. */
  static final int PAGE = 100;

  private final DayBookRoom room;
  private final BookWords said;
  private final Executor work;
  private final Executor ui;
  private final ProofViewModel proof;
  private final AtomicLong asked = new AtomicLong();

  private final ObservableList<EntryLine> lines = FXCollections.observableArrayList();
  private final ObservableList<Person> people = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<EntryOpen>> open =
      new SimpleObjectProperty<>(Optional.empty());
  private final StringProperty head = new SimpleStringProperty("");
  private final StringProperty place = new SimpleStringProperty("");
  private DayBookFilter filter = DayBookFilter.all();
  private Set<String> blanked = Set.of();
  private long from;
  private long all;

  public DayBookViewModel(DayBookRoom room, Executor work, Executor ui) {
    this.room = room;
    this.said = new BookWords(room);
    this.work = work;
    this.ui = ui;
    proof = new ProofViewModel(room, said, work, ui);
  }

  private record Snapshot(
      DayBookPage page, String head, List<Person> people, Set<String> blanked) {}

  /** Looks at the book again, at the page that is open. */
  public void refresh() {
    read(from);
  }

  /** Reads one page; of several asked for quickly only the last is read. */
  private void read(long first) {
    long number = asked.incrementAndGet();
    DayBookFilter now = filter;
    work.execute(
        () -> {
          if (asked.get() == number) {
            Snapshot snapshot =
                new Snapshot(
                    room.pages().page(now, first, PAGE),
                    room.head().get(),
                    room.people().all(),
                    room.pages().blanked());
            ui.execute(() -> take(snapshot, first));
          }
        });
  }

  private void take(Snapshot now, long first) {
    Map<String, String> names = BookWords.names(now.people());
    from = first;
    all = now.page().all();
    head.set(now.head());
    blanked = now.blanked();
    if (!people.equals(now.people())) {
      people.setAll(now.people());
    }
    lines.setAll(now.page().lines().stream().map(l -> said.line(l, names, now.blanked())).toList());
    place.set(
        all == 0
            ? said.get("page.none")
            : said.get("page.place", first + 1, first + lines.size(), all));
  }

  /** Asks for the changes of one person; empty for everybody's. */
  public void ofPerson(Optional<Person> person) {
    ask(filter.withPerson(person.map(p -> p.id().value()).orElse("")));
  }

  /** Asks for one kind; empty for all. */
  public void ofKind(String kind) {
    ask(filter.withKind(kind));
  }

  /** Asks for entries with this text. */
  public void withText(String text) {
    ask(filter.withText(text));
  }

  private void ask(DayBookFilter next) {
    if (!next.equals(filter)) {
      filter = next;
      read(0);
    }
  }

  /** Whether anything is asked for in particular. */
  boolean filtered() {
    return !filter.equals(DayBookFilter.all());
  }

  public void newest() {
    read(0);
  }

  public void newer() {
    read(Math.max(0, from - PAGE));
  }

  public void older() {
    if (from + PAGE < all) {
      read(from + PAGE);
    }
  }

  public void oldest() {
    read(all == 0 ? 0 : (all - 1) / PAGE * PAGE);
  }

  /** Opens an entry with its row. */
  public void open(EntryLine line) {
    work.execute(
        () -> {
          EntryOpen opened = new EntryOpen(line, room.pages().rowNow(line.entry().subject()));
          ui.execute(() -> open.set(Optional.of(opened)));
        });
  }

  /** Kinds that may be asked for. */
  List<String> kinds() {
    return room.pages().kinds();
  }

  BookWords said() {
    return said;
  }

  String person(Person person) {
    return said.person(person, blanked);
  }

  public ProofViewModel proof() {
    return proof;
  }

  /** Entries of the page, the newest first. */
  public ObservableList<EntryLine> lines() {
    return lines;
  }

  public ObservableList<Person> people() {
    return people;
  }

  public ReadOnlyObjectProperty<Optional<EntryOpen>> openProperty() {
    return open;
  }

  /** The head hash. */
  public StringProperty headProperty() {
    return head;
  }

  /** Which entries of how many are shown. */
  public StringProperty placeProperty() {
    return place;
  }
}

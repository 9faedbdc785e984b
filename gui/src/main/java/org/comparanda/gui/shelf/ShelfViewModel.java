package org.comparanda.gui.shelf;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.bone.ElementKey;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.taxon.TaxonName;

/** State of the Shelf screen. Files and the collection are read on {@code work}. */
public final class ShelfViewModel {
  private final ShelfRoom room;
  private final AnimalWords said;
  private final Executor work;
  private final Executor ui;

  private final ObservableList<Animal> listed = FXCollections.observableArrayList();
  private final ObservableList<TaxonName> taxa = FXCollections.observableArrayList();
  private final ObjectProperty<ShelfFilter> filter = new SimpleObjectProperty<>(ShelfFilter.none());
  private final ObjectProperty<Stock> stock =
      new SimpleObjectProperty<>(Stock.of(new Shelf(List.of())));
  private final ObjectProperty<Optional<AnimalCard>> card =
      new SimpleObjectProperty<>(Optional.empty());
  private final Intake intake;
  private final StringProperty underOldNames = new SimpleStringProperty("");
  private final StringProperty count = new SimpleStringProperty("");
  private Shelf shelf = new Shelf(List.of());
  private Map<AnimalId, org.comparanda.register.AnimalCard> cards = Map.of();
  private Optional<AnimalId> opened = Optional.empty();

  public ShelfViewModel(ShelfRoom room, Executor work, Executor ui) {
    this.room = room;
    this.said = new AnimalWords(room.words(), room.locale(), room.protocol());
    this.work = work;
    this.ui = ui;
    intake = new Intake(room, work, ui, this::refresh);
  }

  /** Looks at the collection again. */
  public void refresh() {
    work.execute(
        () -> {
          Shelf now = room.animals().shelf();
          Stock counted = Stock.of(now);
          Map<AnimalId, org.comparanda.register.AnimalCard> cards = new HashMap<>();
          room.cards().get().forEach(card -> cards.put(card.id(), card));
          ui.execute(() -> take(now, counted, cards));
        });
  }

  private void take(
      Shelf now, Stock counted, Map<AnimalId, org.comparanda.register.AnimalCard> known) {
    shelf = now;
    cards = known;
    stock.set(counted);
    taxa.setAll(now.taxa());
    list();
    showOpened();
  }

  /** The animals that the filter takes, in catalogue order. */
  public ObservableList<Animal> listed() {
    return listed;
  }

  /** The taxa on the shelf. */
  public ObservableList<TaxonName> taxa() {
    return taxa;
  }

  /** Whether no animal is there at all, listed or not. */
  public boolean holdsNothing() {
    return shelf.animals().isEmpty();
  }

  /** How many are listed of how many. */
  public StringProperty countProperty() {
    return count;
  }

  /** Under which name animals stand that were found by an old one; empty where none were. */
  public StringProperty underOldNamesProperty() {
    return underOldNames;
  }

  public ReadOnlyObjectProperty<ShelfFilter> filterProperty() {
    return filter;
  }

  public ReadOnlyObjectProperty<Stock> stockProperty() {
    return stock;
  }

  /** The card of the animal that was opened. */
  public ReadOnlyObjectProperty<Optional<AnimalCard>> cardProperty() {
    return card;
  }

  public ReadOnlyObjectProperty<ImportState> importProperty() {
    return intake.stateProperty();
  }

  AnimalWords said() {
    return said;
  }

  public void filterText(String text) {
    filter(filter.get().withText(text));
  }

  public void filterTaxon(Optional<TaxonName> taxon) {
    filter(filter.get().withTaxon(taxon));
  }

  public void filterElement(Optional<ElementKey> element) {
    filter(filter.get().withElement(element));
  }

  /** Lists everything again. */
  public void filterNothing() {
    filter(ShelfFilter.none());
  }

  private void filter(ShelfFilter other) {
    filter.set(other);
    list();
  }

  private void list() {
    ShelfFilter now = filter.get();
    AlsoCalled names = new AlsoCalled(room.tree());
    Stream<Animal> asked =
        now.text().isBlank()
            ? shelf.animals().stream()
            : Stream.concat(shelf.animals().stream(), offTheShelf());
    List<Animal> taken = asked.filter(animal -> names.takes(now, animal)).toList();
    listed.setAll(taken);
    underOldNames.set(room.words().said(names.said(now, taken)));
    count.set(room.words().get("count", listed.size(), shelf.animals().size()));
  }

  /** Retired animals and second numbers: found by searching, in no stock and no fit. */
  private Stream<Animal> offTheShelf() {
    return cards.values().stream()
        .filter(card -> !card.standing().onTheShelf())
        .map(org.comparanda.register.AnimalCard::animal)
        .sorted(Comparator.comparing(Animal::id));
  }

  /** Catalogue number, and whether the animal left the shelf. */
  String number(Animal animal) {
    boolean there =
        Optional.ofNullable(cards.get(animal.id()))
            .map(card -> card.standing().onTheShelf())
            .orElse(true);
    return there ? animal.id().value() : room.words().get("number.off", animal.id());
  }

  /** Every number that was ever given; none is given twice. */
  private Shelf everyNumber() {
    return new Shelf(Stream.concat(shelf.animals().stream(), offTheShelf()).toList());
  }

  /** Opens an animal's card, now or as soon as the collection is read. */
  public void open(AnimalId id) {
    opened = Optional.of(id);
    showOpened();
  }

  /** The animal whose card is open. */
  Optional<AnimalId> openedAnimal() {
    return opened;
  }

  private void showOpened() {
    card.set(
        opened.flatMap(
            id ->
                shelf
                    .animal(id)
                    .or(() -> offTheShelf().filter(a -> a.id().equals(id)).findFirst())
                    .map(animal -> said.card(animal, Optional.ofNullable(cards.get(id))))));
  }

  /**
   * Reads a table without storing anything; the state then says what is wrong, or that it is sound.
   */
  public void tryImport(Path table) {
    intake.tryTable(table, everyNumber());
  }

  /** The same table once more, its doubtful columns in these units, by their codes. */
  public void tryAgain(Map<String, LengthUnit> units, TableOptions.Unknown unknown) {
    intake.tryAgain(units, unknown, everyNumber());
  }

  /** Looks at another sheet of the same workbook. */
  public void trySheet(String sheet) {
    intake.trySheet(sheet, everyNumber());
  }

  /** Looks at the table again, its header in this row. */
  public void tryHeaderRow(long row) {
    intake.tryHeaderRow(row, everyNumber());
  }

  /** Reads the table as the person says of its columns; nothing is stored. */
  public void tryMapped(List<ColumnChoice> choices, TableOptions.Unknown unknown) {
    intake.tryMapped(choices, unknown, everyNumber());
  }

  /** Reads the table as a saved mapping says; nothing is stored. */
  public void trySaved(String mapping) {
    intake.trySaved(mapping, everyNumber());
  }

  /** Keeps what the person says of the columns under a name. */
  public void saveMapping(String name, List<ColumnChoice> choices, TableOptions.Unknown unknown) {
    intake.save(name, choices, unknown);
  }

  /** Deletes the mapping saved under a name. */
  public void forgetMapping(String name) {
    intake.forgetMapping(name);
  }

  /** Adds all animals of the table that was found sound. */
  public void addSound() {
    intake.addSound();
  }

  /** Reads the table although one with the same content was imported before. */
  public void importOnceMore() {
    intake.tryOnceMore(everyNumber());
  }

  /** The same, without what an interrupted import has set down. */
  public void addFromStart() {
    intake.addFromStart();
  }

  /** Stops what is going on; nothing is then stored. */
  public void stopImport() {
    intake.stop();
  }

  /** Leaves the import; nothing is stored. */
  public void leaveImport() {
    intake.leave();
  }
}

package org.comparanda.gui.shelf.keeping;

import java.util.List;
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
import javafx.collections.ObservableSet;
import org.comparanda.bone.ElementKey;
import org.comparanda.reference.Shelf;
import org.comparanda.stock.HardPair;
import org.comparanda.stock.Stock;
import org.comparanda.suggestion.Comparison;
import org.comparanda.taxon.TaxonName;

/** What the shelf holds, narrowed to some taxa and elements, and what it can't tell apart. */
public final class StockViewModel {
  private final KeeperRoom room;
  private final Executor work;
  private final Executor ui;
  private final ObjectProperty<Stock> stock = new SimpleObjectProperty<>(new Stock(List.of()));
  private final ObservableList<HardPair> pairs = FXCollections.observableArrayList();
  private final ObservableSet<TaxonName> hiddenTaxa = FXCollections.observableSet();
  private final ObservableSet<ElementKey> hiddenElements = FXCollections.observableSet();
  private final StringProperty sentence = new SimpleStringProperty("");
  private final AtomicLong asked = new AtomicLong();
  private List<HardPair> allPairs = List.of();

  public StockViewModel(KeeperRoom room, Executor work, Executor ui) {
    this.room = room;
    this.work = work;
    this.ui = ui;
    hiddenTaxa.addListener((javafx.collections.SetChangeListener<TaxonName>) c -> narrow());
    hiddenElements.addListener((javafx.collections.SetChangeListener<ElementKey>) c -> narrow());
  }

  public ReadOnlyObjectProperty<Stock> stockProperty() {
    return stock;
  }

  /** The pairs among the taxa and elements that are looked at, the worst first. */
  public ObservableList<HardPair> pairs() {
    return pairs;
  }

  public ObservableSet<TaxonName> hiddenTaxa() {
    return hiddenTaxa;
  }

  public ObservableSet<ElementKey> hiddenElements() {
    return hiddenElements;
  }

  public StringProperty sentenceProperty() {
    return sentence;
  }

  KeeperRoom room() {
    return room;
  }

  /** Counts at once, then tries which pairs are mixed up, off the window's thread. */
  public void look() {
    long turn = asked.incrementAndGet();
    sentence.set(room.words().get("pairs.running"));
    work.execute(
        () -> {
          if (turn != asked.get()) {
            return;
          }
          Shelf shelf = room.animals().shelf();
          Stock counted = Stock.of(shelf);
          ui.execute(() -> stock.set(counted));
          Comparison comparison =
              Comparison.of(shelf, room.protocol(), room.tree(), room.rules().get());
          List<HardPair> hard =
              HardPair.of(
                  comparison,
                  counted,
                  room.watch("pairs.trying", sentence, ui, () -> turn != asked.get()));
          ui.execute(
              () -> {
                if (turn == asked.get()) {
                  allPairs = hard;
                  narrow();
                }
              });
        });
  }

  /** Ends trying: the page was left. */
  public void stop() {
    asked.incrementAndGet();
  }

  private void narrow() {
    pairs.setAll(
        allPairs.stream()
            .filter(p -> !hiddenElements.contains(p.element()))
            .filter(p -> !hiddenTaxa.contains(p.one()) && !hiddenTaxa.contains(p.other()))
            .toList());
    sentence.set(
        stock.get().taxa().isEmpty()
            ? room.words().get("pairs.none")
            : room.words().get("pairs.count", pairs.size()));
  }

  /** The rows that are looked at. */
  List<TaxonName> taxa() {
    return seen(stock.get().taxa(), hiddenTaxa);
  }

  /** The columns that are looked at. */
  List<ElementKey> elements() {
    return seen(stock.get().elements(), hiddenElements);
  }

  private static <T> List<T> seen(List<T> all, Set<T> hidden) {
    return all.stream().filter(one -> !hidden.contains(one)).toList();
  }
}

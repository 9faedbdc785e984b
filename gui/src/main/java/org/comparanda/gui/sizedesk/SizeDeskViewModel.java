package org.comparanda.gui.sizedesk;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.UnaryOperator;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.gui.control.plot.AxisScale;
import org.comparanda.gui.text.Numbers;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.Correction;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.LineScale;
import org.comparanda.taxon.TaxonName;

/** State of the Size Desk. Fits run on {@code work}, what changes the window on {@code ui}. */
public final class SizeDeskViewModel {
  private final Room room;
  private final Executor work;
  private final Executor ui;

  private final ObservableList<Quantity> quantities = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<SizeAsk>> ask =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<TaxonBranch>> taxa =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<SizeShown> shown = new SimpleObjectProperty<>(SizeShown.blank());
  private final ObjectProperty<AxisScale> axes = new SimpleObjectProperty<>(AxisScale.LOG);
  private final BooleanProperty busy = new SimpleBooleanProperty(false);
  private final StringProperty reading = new SimpleStringProperty("");
  private final StringProperty own = new SimpleStringProperty("");
  private final StringProperty problem = new SimpleStringProperty("");
  private SizeStudy study;
  private String filled = "";
  private long asked;

  public SizeDeskViewModel(Room room, Executor work, Executor ui) {
    this.room = room;
    this.work = work;
    this.ui = ui;
    this.study = new SizeStudy(room, new Shelf(List.of()));
    axes.addListener((o, was, is) -> compute());
  }

  /** Looks at the shelf again; a question already asked stays if it still can be asked. */
  public void refresh() {
    work.execute(
        () -> {
          Shelf shelf = room.shelf().get();
          SizeStudy fresh = new SizeStudy(room, shelf);
          Optional<SizeAsk> first = fresh.first();
          ui.execute(() -> take(fresh, first));
        });
  }

  private void take(SizeStudy fresh, Optional<SizeAsk> first) {
    if (fresh.shelf().equals(study.shelf())) {
      return;
    }
    study = fresh;
    quantities.setAll(fresh.quantities());
    Optional<SizeAsk> kept = ask.get().filter(a -> fresh.shelf().taxa().containsAll(a.taxa()));
    ask.set(kept.or(() -> first));
    branches();
    if (ask.get().isEmpty()) {
      shown.set(
          SizeShown.none(
              new AnswerText(
                  room.words().get("shelf.empty"),
                  room.words().get("shelf.empty.remedy"),
                  List.of())));
    }
    compute();
  }

  /** What can be asked and asked from. */
  public ObservableList<Quantity> quantities() {
    return quantities;
  }

  /** The question as it stands; empty until a shelf with something to ask is there. */
  public ReadOnlyObjectProperty<Optional<SizeAsk>> askProperty() {
    return ask;
  }

  /** The taxa that could feed the line, as a tree. */
  public ReadOnlyObjectProperty<Optional<TaxonBranch>> taxaProperty() {
    return taxa;
  }

  /** The answer to the question. */
  public ReadOnlyObjectProperty<SizeShown> shownProperty() {
    return shown;
  }

  /** Plain or logarithmic axes of the plot. */
  public ObjectProperty<AxisScale> axesProperty() {
    return axes;
  }

  /** Whether an answer is on its way. */
  public ReadOnlyBooleanProperty busyProperty() {
    return busy;
  }

  /** The bone's value as typed. */
  public StringProperty readingProperty() {
    return reading;
  }

  /** Catalogue number of the shelf animal that the bone belongs to, as typed. */
  public StringProperty ownProperty() {
    return own;
  }

  /** What is wrong with what was typed; empty when nothing is. */
  public ReadOnlyStringProperty problemProperty() {
    return problem;
  }

  /** Asks for another quantity or from another measurement. */
  public void askFor(String predict, String from) {
    ask.get()
        .filter(a -> !a.predict().equals(predict) || !a.from().equals(from))
        .ifPresent(
            a -> {
              ask.set(
                  Optional.of(a.withPair(predict, from, study.measured(predict, from).keySet())));
              branches();
              readTyped();
              compute();
            });
  }

  /** Lets these taxa feed the line. */
  public void choose(Set<TaxonName> chosen) {
    change(a -> a.withTaxa(chosen));
  }

  /** Puts a second line beside the first. */
  public void compareWith(Beside beside) {
    change(a -> a.withBeside(beside));
  }

  /** Fits by another method. */
  public void fitBy(LineMethod method) {
    change(a -> a.withMethod(method));
  }

  /** Fits on another scale. */
  public void fitOn(LineScale scale) {
    change(a -> a.withScale(scale));
  }

  /** Corrects the estimate by another factor. */
  public void correctBy(Correction correction) {
    change(a -> a.withCorrection(correction));
  }

  /**
   * Takes over what was typed: the reading and the animal that the bone belongs to. Without a
   * reading, that animal's own value is filled in, and goes again with the animal.
   */
  public void readTyped() {
    problem.set("");
    Optional<AnimalId> animal = ownAnimal();
    if (reading.get().equals(filled)) {
      reading.set("");
    }
    Optional<Double> value = typedReading();
    if (value.isEmpty() && reading.get().isBlank()) {
      value =
          animal.flatMap(id -> ask.get().flatMap(a -> study.valueOf(id, a.predict(), a.from())));
    }
    if (reading.get().isBlank()) {
      filled = value.map(v -> new Numbers(Locale.ROOT).upTo(v, 2)).orElse("");
      reading.set(filled);
    }
    Optional<Double> settled = value;
    change(a -> a.withReading(settled).withOwn(animal));
  }

  private Optional<AnimalId> ownAnimal() {
    String typed = own.get().strip();
    if (typed.isEmpty()) {
      return Optional.empty();
    }
    Optional<AnimalId> animal = study.shelf().animal(new AnimalId(typed)).map(a -> a.id());
    if (animal.isEmpty()) {
      problem.set(room.words().get("own.unknown", typed));
    }
    return animal;
  }

  private Optional<Double> typedReading() {
    if (reading.get().isBlank()) {
      return Optional.empty();
    }
    return ReadingText.read(reading.get(), room.words())
        .fold(
            Optional::of,
            none -> {
              problem.set(none.reason() + " " + none.remedy());
              return Optional.empty();
            });
  }

  private void branches() {
    taxa.set(
        ask.get().map(a -> TaxonBranch.of(room.tree(), study.measured(a.predict(), a.from()))));
  }

  private void change(UnaryOperator<SizeAsk> how) {
    ask.get()
        .ifPresent(
            a -> {
              SizeAsk other = how.apply(a);
              if (!other.equals(a)) {
                ask.set(Optional.of(other));
                compute();
              }
            });
  }

  private void compute() {
    long ticket = ++asked;
    ask.get()
        .ifPresent(
            now -> {
              busy.set(true);
              SizeStudy of = study;
              AxisScale scale = axes.get();
              work.execute(
                  () -> {
                    SizeShown answer = of.show(now, scale);
                    ui.execute(() -> finish(ticket, answer));
                  });
            });
  }

  /** An answer that a later question has overtaken is dropped. */
  private void finish(long ticket, SizeShown answer) {
    if (ticket == asked) {
      shown.set(answer);
      busy.set(false);
    }
  }
}

package org.comparanda.gui.sizedesk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.UnaryOperator;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.gui.control.plot.AxisScale;
import org.comparanda.reference.Shelf;
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
  private final ReadingsViewModel readings;
  private final ChoicesViewModel choices;
  private final TrustViewModel trust;
  private final EquationsViewModel equations;
  private final UndecidedViewModel undecided;
  private SizeStudy study;
  private long asked;

  public SizeDeskViewModel(Room room, Executor work, Executor ui) {
    this.room = room;
    this.work = work;
    this.ui = ui;
    this.study = new SizeStudy(room, new Shelf(List.of()));
    this.readings = new ReadingsViewModel(this, room.words());
    this.choices = new ChoicesViewModel(this, room.words(), work, ui);
    this.trust = new TrustViewModel(this, room, work, ui);
    this.equations = new EquationsViewModel(this, room, work, ui);
    this.undecided = new UndecidedViewModel(this, room, work, ui);
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
    if (fresh.shelf().equals(study.shelf()) && fresh.tree() == study.tree()) {
      if (ask.get().isEmpty()) {
        shown.set(nothingToFit());
      }
      return;
    }
    study = fresh;
    quantities.setAll(fresh.quantities());
    Optional<SizeAsk> kept = ask.get().filter(a -> fresh.shelf().taxa().containsAll(a.taxa()));
    ask.set(kept.or(() -> first));
    branches();
    if (ask.get().isEmpty()) {
      shown.set(nothingToFit());
    }
    compute();
  }

  private SizeShown nothingToFit() {
    return SizeShown.none(
        new AnswerText(
            room.words().get("shelf.empty"), room.words().get("shelf.empty.remedy"), List.of()));
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

  /** What is in hand, as typed. */
  public ReadingsViewModel readings() {
    return readings;
  }

  /** How the lines are fitted. */
  public ChoicesViewModel choices() {
    return choices;
  }

  /** Whether the line can be trusted. */
  public TrustViewModel trust() {
    return trust;
  }

  /** Published equations. */
  public EquationsViewModel equations() {
    return equations;
  }

  /** A bone whose taxon is not decided. */
  public UndecidedViewModel undecided() {
    return undecided;
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
              readings.clear();
              readings.read();
              compute();
            });
  }

  /** Lets these taxa feed the line. */
  public void choose(Set<TaxonName> chosen) {
    change(a -> a.withTaxa(chosen));
  }

  SizeStudy study() {
    return study;
  }

  private void branches() {
    taxa.set(
        ask.get().map(a -> TaxonBranch.of(room.tree(), study.measured(a.predict(), a.from()))));
  }

  /** Changes the question and asks again. */
  void change(UnaryOperator<SizeAsk> how) {
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

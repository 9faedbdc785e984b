package org.comparanda.gui.sizedesk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.PublishedEquation;
import org.comparanda.statistics.Outcome;
import org.comparanda.tables.BrokenTable;
import org.comparanda.taxon.TaxonName;

/** Published equations: which one, its value for the bone, and how it does on the shelf. */
public final class EquationsViewModel {
  private final SizeDeskViewModel desk;
  private final Room room;
  private final Executor work;
  private final Executor ui;
  private final ObservableList<PublishedEquation> known = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<PublishedEquation>> chosen =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<EquationShown> shown =
      new SimpleObjectProperty<>(EquationShown.blank());
  private final TypedReading measured = new TypedReading();
  private final StringProperty problem = new SimpleStringProperty("");
  private boolean looking;

  EquationsViewModel(SizeDeskViewModel desk, Room room, Executor work, Executor ui) {
    this.desk = desk;
    this.room = room;
    this.work = work;
    this.ui = ui;
    known.setAll(room.tables().equations());
    desk.askProperty().addListener((o, was, is) -> read());
  }

  /** Somebody looks: an equation is chosen and followed. */
  public void open() {
    looking = true;
    firstThatFits();
    read();
  }

  /** Nobody looks any more. */
  public void close() {
    looking = false;
  }

  /** Equations that can be chosen: the shipped ones, then those that a person brought. */
  public ObservableList<PublishedEquation> known() {
    return known;
  }

  /** The equation chosen; empty until somebody looks. */
  public ReadOnlyObjectProperty<Optional<PublishedEquation>> chosenProperty() {
    return chosen;
  }

  /** What the equation says. */
  public ReadOnlyObjectProperty<EquationShown> shownProperty() {
    return shown;
  }

  /** The equation's measurement as typed, mm; the reading at the left stands in where it is one. */
  public StringProperty measuredProperty() {
    return measured.textProperty();
  }

  /** What is wrong with a file of equations; empty when nothing is. */
  public ReadOnlyStringProperty problemProperty() {
    return problem;
  }

  /** Takes this equation. */
  public void choose(PublishedEquation equation) {
    chosen.set(Optional.of(equation));
    read();
  }

  /** An equation whose taxon is on the shelf, if there is one. */
  private void firstThatFits() {
    if (chosen.get().isEmpty()) {
      Shelf shelf = desk.study().shelf();
      known.stream()
          .filter(e -> shelf.taxa().stream().anyMatch(t -> room.tree().within(t, e.taxon())))
          .findFirst()
          .or(() -> known.stream().findFirst())
          .ifPresent(this::choose);
    }
  }

  /** Adds the equations of a file; a row without a citation or with a fault refuses the file. */
  public void addFrom(Path file) {
    problem.set("");
    String name = String.valueOf(file.getFileName());
    work.execute(
        () -> {
          Outcome<List<PublishedEquation>> read = read(file, name);
          ui.execute(
              () -> {
                read.value().ifPresent(this::add);
                problem.set(
                    read.fold(
                        e -> "", none -> room.words().said(none.reason() + " " + none.remedy())));
              });
        });
  }

  private Outcome<List<PublishedEquation>> read(Path file, String name) {
    try {
      List<PublishedEquation> before = room.tables().equations();
      List<PublishedEquation> all =
          room.tables()
              .withTaxa(room.tree())
              .withEquations(name, Files.readString(file))
              .equations();
      return Outcome.of(all.stream().filter(e -> !before.contains(e)).toList());
    } catch (BrokenTable broken) {
      return Outcome.none(
          room.words().said(String.valueOf(broken.getMessage())),
          room.words().get("equation.file.remedy"));
    } catch (IOException e) {
      return Outcome.none(
          room.words().get("file.unreadable", name), room.words().get("file.unreadable.remedy"));
    }
  }

  private void add(List<PublishedEquation> own) {
    List<String> keys = own.stream().map(PublishedEquation::key).toList();
    known.removeIf(e -> keys.contains(e.key()));
    known.addAll(own);
    own.stream().findFirst().ifPresent(this::choose);
  }

  /** Takes over the measurement as typed. */
  public void read() {
    chosen
        .get()
        .filter(e -> looking)
        .ifPresent(
            equation -> {
              Optional<SizeAsk> ask = desk.askProperty().get();
              Outcome<Optional<Double>> mm =
                  measured.settle(
                      ask.flatMap(
                          a -> Optional.ofNullable(a.values().get(equation.predictor().name()))),
                      room.words());
              double level = ask.map(a -> a.choice().level()).orElse(0.95);
              Set<TaxonName> ticked = ask.map(SizeAsk::taxa).orElse(Set.of());
              Shelf all = desk.study().shelf();
              Shelf shelf = ask.flatMap(SizeAsk::own).map(all::without).orElse(all);
              work.execute(
                  () -> {
                    EquationShown said =
                        new EquationText(room).of(equation, mm, level, shelf, ticked);
                    ui.execute(
                        () -> {
                          if (chosen.get().equals(Optional.of(equation))) {
                            shown.set(said);
                          }
                        });
                  });
            });
  }
}

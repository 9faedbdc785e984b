package org.comparanda.gui.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.dossier.BesideCall;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Beside;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallDesk;
import org.comparanda.tray.Grounds;
import org.comparanda.tray.Qualifier;

/**
 * The call: a named person's determination. Nothing of it is filled in by the suggestion; its
 * candidates only stand first among the names to choose from.
 */
public final class CallViewModel {
  private final BenchPlace place;
  private final Supplier<PersonId> person;
  private final ObjectProperty<Qualifier> qualifier = new SimpleObjectProperty<>(Qualifier.NONE);
  private final StringProperty taxon = new SimpleStringProperty("");
  private final StringProperty basis = new SimpleStringProperty("");
  private final StringProperty why = new SimpleStringProperty("");
  private final BooleanProperty whyAsked = new SimpleBooleanProperty();
  private final StringProperty recorded = new SimpleStringProperty("");
  private final ObservableList<String> names = FXCollections.observableArrayList();
  private final ObservableList<String> bases = FXCollections.observableArrayList();
  private Optional<BoneId> bone = Optional.empty();
  private Optional<Suggestion> suggested = Optional.empty();
  private boolean called;
  private boolean sawSuggestion;
  private ReadOnlyBooleanProperty covered = new SimpleBooleanProperty();
  private Supplier<Optional<Finding>> coveredFinding = Optional::empty;
  private Runnable onMissingTaxon = () -> {};
  private Consumer<Call> onRecorded = call -> {};

  CallViewModel(BenchPlace place, Supplier<PersonId> person) {
    this.place = place;
    this.person = person;
  }

  public ObjectProperty<Qualifier> qualifierProperty() {
    return qualifier;
  }

  /** Name of the taxon as chosen or typed. */
  public StringProperty taxonProperty() {
    return taxon;
  }

  /** What the call rests on. */
  public StringProperty basisProperty() {
    return basis;
  }

  /** One line of why, where the call goes against the suggestion. */
  public StringProperty whyProperty() {
    return why;
  }

  /** Whether that line is asked for. */
  public ReadOnlyBooleanProperty whyAskedProperty() {
    return whyAsked;
  }

  /** What was recorded last for this bone, or why nothing was; empty at first. */
  public StringProperty recordedProperty() {
    return recorded;
  }

  /** Names to choose from. */
  public ObservableList<String> names() {
    return names;
  }

  /** Grounds to choose from. */
  public ObservableList<String> bases() {
    return bases;
  }

  /** What happens when a call is to be recorded and its taxon is missing. */
  void setOnMissingTaxon(Runnable action) {
    onMissingTaxon = action;
  }

  /** What is said while it is covered; it is kept beside the call and not shown. */
  void setCovered(ReadOnlyBooleanProperty now, Supplier<Optional<Finding>> finding) {
    covered = now;
    coveredFinding = finding;
  }

  /** What happens when a call was recorded. */
  void setOnRecorded(Consumer<Call> action) {
    onRecorded = action;
  }

  void open(BoneId next) {
    bone = Optional.of(next);
    sawSuggestion = false;
    qualifier.set(Qualifier.NONE);
    taxon.set("");
    basis.set("");
    why.set("");
    whyAsked.set(false);
    offer(Optional.empty());
    List<Call> calls = place.trays().callsOn(next);
    called = !calls.isEmpty();
    recorded.set(calls.isEmpty() ? "" : said(calls.get(calls.size() - 1)));
  }

  void close() {
    bone = Optional.empty();
    offer(Optional.empty());
    recorded.set("");
  }

  /** Puts the names and animals of a suggestion first. */
  void offer(Optional<Suggestion> suggestion) {
    suggested = suggestion;
    sawSuggestion = sawSuggestion || suggestion.filter(s -> !s.taxa().isEmpty()).isPresent();
    Set<String> offered = new LinkedHashSet<>();
    suggestion.ifPresent(s -> s.candidates().forEach(name -> offered.add(name.value())));
    place.tree().taxa().stream()
        .filter(t -> !t.isSynonym())
        .forEach(t -> offered.add(t.name().value()));
    String kept = taxon.get();
    replace(names, List.copyOf(offered));
    taxon.set(kept);
    List<String> grounds = new ArrayList<>();
    suggestion.ifPresent(
        s ->
            s.nearest()
                .forEach(n -> grounds.add(place.words().get("basis.beside", n.animal().value()))));
    grounds.add(place.words().get("basis.eye"));
    grounds.add(place.words().get("basis.numbers"));
    String keptBasis = basis.get();
    replace(bases, grounds);
    basis.set(keptBasis);
  }

  private static void replace(ObservableList<String> shown, List<String> now) {
    if (!shown.equals(now)) {
      shown.setAll(now);
    }
  }

  /** Whether someone has called this bone. */
  boolean called() {
    return bone.isPresent() && called;
  }

  /** Records the call; says what was recorded, or what is missing. */
  public void record() {
    if (bone.isEmpty()) {
      return;
    }
    if (taxon.get().isBlank()) {
      recorded.set(place.words().get("call.notaxon"));
      onMissingTaxon.run();
      return;
    }
    Call call =
        new Call(
                0,
                bone.get(),
                new TaxonName(taxon.get().strip()),
                qualifier.get(),
                person.get(),
                place.clock().instant(),
                basis.get().strip(),
                sawSuggestion)
            .withGrounds(Grounds.notSaid().withWhy(why.get().strip()));
    Optional<Suggestion> said =
        covered.get() ? coveredFinding.get().map(Finding::suggestion) : suggested;
    Beside beside = said.map(s -> BesideCall.of(s, call.taxon())).orElse(Beside.nothing());
    boolean against = beside.against(call.taxon(), place.tree());
    whyAsked.set(!covered.get() && against && call.grounds().why().isEmpty());
    CallDesk desk = new CallDesk(place.trays(), place.tree());
    recorded.set(
        (covered.get() ? desk.recordFirst(call, beside) : desk.record(call, beside))
            .fold(
                made -> {
                  called = true;
                  onRecorded.accept(made);
                  return said(made);
                },
                none -> place.words().said(none.reason() + " " + none.remedy())));
  }

  private String said(Call call) {
    String older =
        place.tree().standsUnder(call.taxon()).map(now -> " " + place.words().said(now)).orElse("");
    return place.words().get("call.recorded", call.written(), who(call.person())) + older;
  }

  private String who(PersonId id) {
    return place
        .people()
        .person(id)
        .map(p -> p.name())
        .filter(name -> !name.isBlank())
        .orElse(id.value());
  }
}

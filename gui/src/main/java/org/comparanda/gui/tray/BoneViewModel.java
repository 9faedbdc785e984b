package org.comparanda.gui.tray;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.tray.TrayViewModel.Done;
import org.comparanda.house.RuleName;
import org.comparanda.reference.AnimalId;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.BoneEvent;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallDesk;
import org.comparanda.tray.ElementCall;
import org.comparanda.tray.Grounds;
import org.comparanda.tray.Trait;
import org.comparanda.tray.TraitAnswer;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.WrittenName;

/** The chosen bone: its history, a call by eye, a call on the element, STOP. */
public final class BoneViewModel {
  private final TrayViewModel model;
  private final TrayRoom room;
  private final ObjectProperty<Optional<BoneLine>> shown =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObservableList<String> history = FXCollections.observableArrayList();
  private final ObservableList<Trait> traits = FXCollections.observableArrayList();
  private final Map<String, TraitAnswer.Seen> seen = new TreeMap<>();
  private final StringProperty name = new SimpleStringProperty("");
  private final StringProperty basis = new SimpleStringProperty("");
  private final StringProperty compared = new SimpleStringProperty("");
  private final StringProperty why = new SimpleStringProperty("");

  BoneViewModel(TrayViewModel model, TrayRoom room) {
    this.model = model;
    this.room = room;
  }

  /** Shows a bone anew; what was typed for another one is dropped. */
  void show(Optional<BoneLine> line) {
    boolean another = !line.map(l -> l.bone().id()).equals(shown.get().map(l -> l.bone().id()));
    if (another) {
      forget();
    }
    shown.set(line);
    traits.setAll(
        line.stream()
            .flatMap(
                l -> room.traits().stream().filter(t -> t.element().equals(l.bone().element())))
            .toList());
    history.setAll(line.map(l -> strip(l.bone())).orElse(List.of()));
  }

  private void forget() {
    name.set("");
    basis.set("");
    compared.set("");
    why.set("");
    seen.clear();
  }

  private List<String> strip(TrayBone bone) {
    return BoneEvent.strip(
            room.trays().callsOn(bone.id()),
            room.trays().elementCallsOn(bone.id()),
            room.stops().of(bone.id()))
        .stream()
        .map(model.said()::event)
        .toList();
  }

  /** Answers a trait of a look-alike pair; empty takes the answer back. */
  public void answer(Trait trait, Optional<TraitAnswer.Seen> answer) {
    answer.ifPresentOrElse(a -> seen.put(trait.key(), a), () -> seen.remove(trait.key()));
  }

  /** Records the call as typed, or says what is missing. */
  public void record() {
    Optional<TrayBone> bone = shown.get().map(BoneLine::bone);
    Optional<Tray> tray = model.openProperty().get().map(o -> o.line().tray());
    if (bone.isEmpty() || tray.isEmpty()) {
      return;
    }
    Outcome<WrittenName> written = WrittenName.read(name.get());
    Optional<WrittenName> read = written.value();
    if (read.isEmpty()) {
      model.messageProperty().set(model.said().get("said.noname"));
      return;
    }
    Call call = call(bone.get(), read.get());
    model.change(
        () -> {
          Outcome<Call> recorded =
              new CallDesk(room.trays(), room.tree())
                  .record(call, room.numbers().of(tray.get(), bone.get(), call.taxon()));
          return recorded.fold(
              c ->
                  new Done(
                      model
                          .said()
                          .get(
                              "said.called",
                              c.bone().value(),
                              c.written(),
                              model.said().who(c.person())),
                      this::forget),
              none -> Done.said(model.said().get("said.refused", none.reason(), none.remedy())));
        });
  }

  private Call call(TrayBone bone, WrittenName written) {
    List<AnimalId> animals = new ArrayList<>();
    for (String number : compared.get().split("[,;\\s]+", -1)) {
      if (!number.isBlank()) {
        animals.add(new AnimalId(number));
      }
    }
    Grounds grounds =
        new Grounds(
            Grounds.How.BY_EYE,
            animals,
            why.get().strip(),
            seen.entrySet().stream().map(e -> new TraitAnswer(e.getKey(), e.getValue())).toList(),
            name.get().strip());
    return new Call(
            0,
            bone.id(),
            written.taxon(),
            written.qualifier(),
            model.me(),
            room.clock().instant(),
            basis.get().strip(),
            false)
        .withGrounds(grounds);
  }

  /** Records which element, side and portion the bone is. */
  public void recordElement(ElementKey element, Side side, Portion portion) {
    shown
        .get()
        .ifPresent(
            line ->
                model.change(
                    () -> {
                      room.trays()
                          .record(
                              new ElementCall(
                                  0,
                                  line.bone().id(),
                                  element,
                                  side,
                                  portion,
                                  model.me(),
                                  room.clock().instant(),
                                  model.said().get("basis.eye")));
                      return Done.said(
                          model
                              .said()
                              .get(
                                  "said.element",
                                  line.bone().id().value(),
                                  model.said().element(element)));
                    }));
  }

  /** Sets the bone aside as possibly human and says whom to call. */
  public void stop() {
    shown
        .get()
        .ifPresent(
            line ->
                model.change(
                    () -> {
                      room.stops()
                          .setAside(line.bone().id(), model.me(), room.clock().instant(), "");
                      return Done.said(
                          model
                              .said()
                              .get(
                                  "said.stopped",
                                  line.bone().id().value(),
                                  room.rules().now(RuleName.CONTACT_CARD)));
                    }));
  }

  public ReadOnlyObjectProperty<Optional<BoneLine>> shownProperty() {
    return shown;
  }

  /** What was said of the bone, by date. */
  public ObservableList<String> history() {
    return history;
  }

  /** What may be looked at on this element. */
  public ObservableList<Trait> traits() {
    return traits;
  }

  /** The name, in open nomenclature. */
  public StringProperty nameProperty() {
    return name;
  }

  public StringProperty basisProperty() {
    return basis;
  }

  /** Catalogue numbers of the animals that were laid beside it. */
  public StringProperty comparedProperty() {
    return compared;
  }

  /** One line of why, where the call goes against the numbers. */
  public StringProperty whyProperty() {
    return why;
  }
}

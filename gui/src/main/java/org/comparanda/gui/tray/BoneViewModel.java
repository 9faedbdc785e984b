package org.comparanda.gui.tray;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.calling.CallFormViewModel;
import org.comparanda.gui.tray.TrayViewModel.Done;
import org.comparanda.house.RuleName;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.Beside;
import org.comparanda.tray.BoneEvent;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallDesk;
import org.comparanda.tray.CallWords;
import org.comparanda.tray.ElementCall;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/** The chosen bone: its history, a call by eye, a call on the element, STOP. */
public final class BoneViewModel {
  private final TrayViewModel model;
  private final TrayRoom room;
  private final ObjectProperty<Optional<BoneLine>> shown =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObservableList<String> history = FXCollections.observableArrayList();
  private final CallFormViewModel form = new CallFormViewModel();

  BoneViewModel(TrayViewModel model, TrayRoom room) {
    this.model = model;
    this.room = room;
  }

  /** Shows a bone anew; what was typed for another one is dropped. */
  void show(Optional<BoneLine> line) {
    boolean another = !line.map(l -> l.bone().id()).equals(shown.get().map(l -> l.bone().id()));
    if (another) {
      form.forget();
    }
    shown.set(line);
    form.offer(
        line.stream()
            .flatMap(
                l -> room.traits().stream().filter(t -> t.element().equals(l.bone().element())))
            .toList());
    history.setAll(line.map(l -> strip(l.bone())).orElse(List.of()));
  }

  private List<String> strip(TrayBone bone) {
    return BoneEvent.strip(
            room.trays().callsOn(bone.id()),
            room.trays().elementCallsOn(bone.id()),
            room.stops().of(bone.id()),
            CallWords.in(room.locale()))
        .stream()
        .map(model.said()::event)
        .toList();
  }

  /** Records the call as typed, or says what is missing. */
  public void record() {
    Optional<TrayBone> bone = shown.get().map(BoneLine::bone);
    Optional<Tray> tray = model.openProperty().get().map(o -> o.line().tray());
    if (bone.isEmpty() || tray.isEmpty()) {
      return;
    }
    Optional<Call> typed = form.call(bone.get().id(), model.me(), room.clock().instant()).value();
    if (typed.isEmpty()) {
      model.messageProperty().set(model.said().get("said.noname"));
      return;
    }
    Call call = typed.get();
    model.change(
        () -> {
          CallDesk desk = new CallDesk(room.trays(), room.tree());
          Beside beside = room.numbers().of(tray.get(), bone.get(), call.taxon());
          Outcome<Call> recorded =
              room.rules().inForce().callFirst()
                  ? desk.recordFirst(call, beside)
                  : desk.record(call, beside);
          return recorded.fold(
              c ->
                  new Done(
                      model
                              .said()
                              .get(
                                  "said.called",
                                  c.bone().value(),
                                  c.written(),
                                  model.said().who(c.person()))
                          + room.tree()
                              .standsUnder(c.taxon())
                              .map(now -> " " + room.words().said(now))
                              .orElse(""),
                      form::forget),
              none -> Done.said(model.said().refused(none.reason(), none.remedy())));
        });
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

  /** The call while it is typed. */
  public CallFormViewModel form() {
    return form;
  }
}

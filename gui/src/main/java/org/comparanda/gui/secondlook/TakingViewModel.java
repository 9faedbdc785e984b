package org.comparanda.gui.secondlook;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.calling.CallFormViewModel;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.secondlook.LookDesk;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.Call;
import org.comparanda.tray.ElementCall;
import org.comparanda.tray.TrayBone;

/** A look, or the settling of two, while it is typed. */
public final class TakingViewModel {
  private final SecondLookViewModel model;
  private final SecondLookRoom room;
  private final CallFormViewModel form = new CallFormViewModel();
  private final BooleanProperty sawBefore = new SimpleBooleanProperty();

  TakingViewModel(SecondLookViewModel model, SecondLookRoom room) {
    this.model = model;
    this.room = room;
  }

  void forget() {
    form.forget();
    form.offer(List.of());
    sawBefore.set(false);
  }

  /** Offers the traits of the element that the person chose. */
  public void offer(Optional<ElementKey> chosen) {
    form.offer(
        room.traits().stream()
            .filter(t -> chosen.filter(t.element()::equals).isPresent())
            .toList());
  }

  /** Records the open bone's look, blind; an element is said whole or not at all. */
  public void record(Optional<ElementKey> element, Optional<Side> side, Optional<Portion> portion) {
    Optional<BoneId> bone =
        model.openProperty().get().filter(Opened.Blind.class::isInstance).map(Opened::bone);
    if (bone.isEmpty()) {
      return;
    }
    if (sawBefore.get()) {
      says("said.seen");
      return;
    }
    if (element.isPresent() && (side.isEmpty() || portion.isEmpty())) {
      says("said.half");
      return;
    }
    Optional<Call> typed = typed(bone.get());
    if (typed.isEmpty()) {
      return;
    }
    PersonId me = model.me();
    Optional<ElementCall> said =
        element.map(key -> element(bone.get(), key, side.orElseThrow(), portion.orElseThrow()));
    model.change(
        bone.get(), () -> room.desk().apply(me).lookAgain(typed.get(), said), "said.recorded");
  }

  /**
   * Settles the open bone: as a consensus where the person is one of those who called it, else as a
   * third person. Another element than the bone's is recorded with it.
   */
  public void settle(Optional<ElementKey> element, Optional<Side> side, Optional<Portion> portion) {
    Optional<Opened.Both> open =
        model
            .openProperty()
            .get()
            .filter(Opened.Both.class::isInstance)
            .map(Opened.Both.class::cast);
    if (open.isEmpty()) {
      return;
    }
    BoneId bone = open.get().bone();
    if (form.whyProperty().get().isBlank()) {
      says("said.nowhy");
      return;
    }
    Optional<Call> typed = typed(bone);
    if (typed.isEmpty()) {
      return;
    }
    PersonId me = model.me();
    model.change(
        bone,
        () -> {
          LookDesk desk = room.desk().apply(me);
          Outcome<Call> settled = desk.resolve(typed.get(), how(bone, me));
          settled
              .value()
              .flatMap(made -> room.trays().bone(bone))
              .ifPresent(now -> corrected(now, element, side, portion));
          return settled;
        },
        "said.settled");
  }

  /** What it is when this person settles the bone. */
  Call.Kind how(BoneId bone, PersonId me) {
    boolean among =
        model.history(bone).standing().stream()
            .filter(c -> c.kind() == Call.Kind.CALL || c.kind() == Call.Kind.SECOND_LOOK)
            .anyMatch(c -> c.person().equals(me));
    return among ? Call.Kind.CONSENSUS : Call.Kind.THIRD_PERSON;
  }

  private void corrected(
      TrayBone now, Optional<ElementKey> element, Optional<Side> side, Optional<Portion> portion) {
    ElementKey key = element.orElse(now.element());
    Side sided = side.orElse(now.side());
    Portion part = portion.orElse(now.portion());
    if (!key.equals(now.element()) || sided != now.side() || part != now.portion()) {
      room.trays().record(element(now.id(), key, sided, part));
    }
  }

  private Optional<Call> typed(BoneId bone) {
    Optional<Call> typed = form.call(bone, model.me(), room.clock().instant()).value();
    if (typed.isEmpty()) {
      says("said.noname");
    }
    return typed;
  }

  private ElementCall element(BoneId bone, ElementKey key, Side side, Portion portion) {
    return new ElementCall(0, bone, key, side, portion, model.me(), room.clock().instant(), "");
  }

  private void says(String key) {
    model.messageProperty().set(model.said().get(key));
  }

  /** The call while it is typed. */
  public CallFormViewModel form() {
    return form;
  }

  /** Whether the person knows the first call or the suggestion already. */
  public BooleanProperty sawBeforeProperty() {
    return sawBefore;
  }
}

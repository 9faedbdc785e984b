package org.comparanda.gui.capture;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableSet;
import javafx.collections.SetChangeListener;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.Element;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.GrowingEnd;
import org.comparanda.bone.HeldBone;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.capture.StateQuestions;
import org.comparanda.measurement.Protocol;

/** State of the bone in hand, recorded before it is measured; every change is stored at once. */
public final class StateViewModel {
  private final Protocol protocol;
  private final Consumer<HeldBone> save;
  private final Runnable afterQuestions;
  private final ObjectProperty<Optional<Element>> element =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Side> side = new SimpleObjectProperty<>(Side.NOT_KNOWN);
  private final ObjectProperty<Portion> portion = new SimpleObjectProperty<>(Portion.WHOLE);
  private final ObjectProperty<Fusion> proximal = new SimpleObjectProperty<>(Fusion.CANT_SEE);
  private final ObjectProperty<Fusion> distal = new SimpleObjectProperty<>(Fusion.CANT_SEE);
  private final ObservableSet<Flag> flags = FXCollections.observableSet(EnumSet.noneOf(Flag.class));
  private final ObjectProperty<Optional<StateQuestions>> questions =
      new SimpleObjectProperty<>(Optional.empty());
  private Optional<HeldBone> bone = Optional.empty();
  private boolean showing;

  /**
   * @param save stores the bone with what was recorded
   * @param afterQuestions follows when the last question was answered
   */
  public StateViewModel(Protocol protocol, Consumer<HeldBone> save, Runnable afterQuestions) {
    this.protocol = protocol;
    this.save = save;
    this.afterQuestions = afterQuestions;
    element.addListener((o, was, is) -> changed());
    side.addListener((o, was, is) -> changed());
    portion.addListener((o, was, is) -> changed());
    proximal.addListener((o, was, is) -> changed());
    distal.addListener((o, was, is) -> changed());
    flags.addListener((SetChangeListener<Flag>) change -> changed());
  }

  /** Elements that have measurements first, then the rest of the list. */
  public List<Element> elements() {
    return protocol.elements().stream()
        .sorted(java.util.Comparator.comparing(e -> protocol.of(e.key()).isEmpty()))
        .toList();
  }

  public ObjectProperty<Optional<Element>> elementProperty() {
    return element;
  }

  public ObjectProperty<Side> sideProperty() {
    return side;
  }

  public ObjectProperty<Portion> portionProperty() {
    return portion;
  }

  /** The ends whose fusion is recorded; none while there is no bone. */
  public List<GrowingEnd> ends() {
    return element.get().map(Element::growingEnds).orElse(List.of());
  }

  /** Fusion of an end. */
  public ObjectProperty<Fusion> fusionProperty(GrowingEnd end) {
    return switch (end) {
      case PROXIMAL, CRANIAL -> proximal;
      case DISTAL, CAUDAL -> distal;
    };
  }

  /** Fusion of the upper end. */
  public ObjectProperty<Fusion> proximalProperty() {
    return proximal;
  }

  /** Fusion of the lower end. */
  public ObjectProperty<Fusion> distalProperty() {
    return distal;
  }

  /** What happened to the bone. */
  public ObservableSet<Flag> flags() {
    return flags;
  }

  /** Sets or takes away one flag. */
  public void toggle(Flag flag) {
    if (!flags.remove(flag)) {
      flags.add(flag);
    }
  }

  /** What is asked before the first reading; empty when the state is known. */
  public ObjectProperty<Optional<StateQuestions>> questionsProperty() {
    return questions;
  }

  /** Asks for the state of the bone shown, from the beginning. */
  public void ask() {
    questions.set(bone.map(b -> StateQuestions.of(ends(), b.portion())));
  }

  /** Asks nothing any more; what was answered before the last question is dropped. */
  public void leave() {
    questions.set(Optional.empty());
  }

  /** A character of a hand, while the state is asked. */
  public void typed(char key) {
    questions.get().map(q -> q.typed(key)).ifPresent(this::answered);
  }

  private void answered(StateQuestions now) {
    if (now.stage() == StateQuestions.Stage.ASKING) {
      questions.set(Optional.of(now));
      return;
    }
    questions.set(Optional.empty());
    showing = true;
    proximal.set(now.state().proximal());
    distal.set(now.state().distal());
    flags.clear();
    flags.addAll(now.state().flags());
    showing = false;
    changed();
    afterQuestions.run();
  }

  public void show(HeldBone next) {
    showing = true;
    bone = Optional.of(next);
    element.set(protocol.element(next.element()));
    side.set(next.side());
    portion.set(next.portion());
    proximal.set(next.state().proximal());
    distal.set(next.state().distal());
    flags.clear();
    flags.addAll(next.state().flags());
    showing = false;
  }

  private void changed() {
    if (!showing) {
      bone.map(this::asSet).ifPresent(this::store);
    }
  }

  private void store(HeldBone now) {
    bone = Optional.of(now);
    save.accept(now);
  }

  private HeldBone asSet(HeldBone b) {
    return new HeldBone(
        element.get().map(Element::key).orElse(b.element()),
        side.get(),
        portion.get(),
        new BoneState(proximal.get(), distal.get(), Set.copyOf(flags)));
  }
}

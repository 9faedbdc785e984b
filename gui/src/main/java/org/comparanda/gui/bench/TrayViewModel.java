package org.comparanda.gui.bench;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.bone.BoneAge;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;

/** The tray on the bench, the bones in it, and which of them is in hand. */
final class TrayViewModel {
  private final BenchPlace place;
  private final ObservableList<Tray> trays = FXCollections.observableArrayList();
  private final ObservableList<TrayBone> bones = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<Tray>> tray = new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<TrayBone>> bone =
      new SimpleObjectProperty<>(Optional.empty());

  private final Set<String> hazardsRead = new HashSet<>();

  TrayViewModel(BenchPlace place) {
    this.place = place;
    trays.setAll(place.trays().all());
  }

  ObservableList<Tray> trays() {
    return trays;
  }

  ObservableList<TrayBone> bones() {
    return bones;
  }

  ObjectProperty<Optional<Tray>> trayProperty() {
    return tray;
  }

  ObjectProperty<Optional<TrayBone>> boneProperty() {
    return bone;
  }

  /** The age of what lies in the tray. */
  BoneAge age() {
    return tray.get().map(Tray::age).orElse(BoneAge.NOT_KNOWN);
  }

  /** Brings a tray to the bench, no bone of it in hand yet. */
  void bring(Tray next) {
    trays.setAll(place.trays().all()); // what is known of its lot may have changed
    tray.set(
        Optional.of(trays.stream().filter(t -> t.id().equals(next.id())).findFirst().orElse(next)));
    bones.setAll(place.trays().bonesOf(next.id()));
  }

  /** What is dangerous about the tray's lot, while nobody here has read it; else empty. */
  Optional<String> hazards() {
    return tray.get()
        .filter(t -> !t.hazards().isBlank() && !hazardsRead.contains(told(t)))
        .map(Tray::hazards);
  }

  /** It was read. */
  void hazardsRead() {
    tray.get().ifPresent(t -> hazardsRead.add(told(t)));
  }

  private static String told(Tray tray) {
    return tray.lot() + "\n" + tray.hazards();
  }

  /** The tray that a bone lies in. */
  Optional<Tray> trayOf(TrayBone of) {
    return trays.stream().filter(t -> t.id().equals(of.tray())).findFirst();
  }

  /** Takes a bone in hand; a new one is shown at the end of its tray. */
  void take(TrayBone next) {
    if (bones.stream().noneMatch(b -> b.id().equals(next.id()))) {
      bones.add(next);
    }
    bone.set(Optional.of(next));
  }

  /** Stores what is recorded of the bone in hand. */
  void store(TrayBone changed) {
    place.trays().save(changed);
    bones.replaceAll(b -> b.id().equals(changed.id()) ? changed : b);
    bone.set(Optional.of(changed));
  }

  /** The bone so many places on in the tray. */
  Optional<TrayBone> from(int by) {
    int there = bone.get().map(bones::indexOf).orElse(-1) + by;
    boolean inHand = bone.get().isPresent();
    return inHand && there >= 0 && there < bones.size()
        ? Optional.of(bones.get(there))
        : Optional.empty();
  }

  /** An empty tray, where there is none yet. */
  Tray fresh() {
    int number = trays.size() + 1;
    Tray made =
        new Tray(
            new TrayId("tray-" + number),
            place.words().get("tray.fresh.lot"),
            place.words().get("tray.fresh", number),
            BoneAge.NOT_KNOWN,
            "",
            "",
            Tray.State.ON_THE_BENCH);
    place.trays().save(made);
    trays.setAll(place.trays().all());
    return made;
  }
}

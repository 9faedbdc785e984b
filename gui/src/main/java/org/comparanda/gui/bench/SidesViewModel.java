package org.comparanda.gui.bench;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.bone.Side;
import org.comparanda.capture.OtherSide;
import org.comparanda.capture.Passes;
import org.comparanda.capture.SideBySide;
import org.comparanda.gui.capture.Ask;
import org.comparanda.gui.capture.Numbered;
import org.comparanda.gui.capture.Question;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.SideTolerance;
import org.comparanda.tray.Association;
import org.comparanda.tray.Pair;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/** Left and right of one animal side by side: after each reading the bone that is due comes. */
final class SidesViewModel {
  private final BenchPlace place;
  private final BenchViewModel bench;

  SidesViewModel(BenchPlace place, BenchViewModel bench) {
    this.place = place;
    this.bench = bench;
  }

  /** Where the measuring of a bone stands, by its log. */
  Passes passes(TrayBone bone) {
    Passes passes =
        Passes.restore(
            bone.id(),
            bone.element(),
            bone.portion(),
            place.protocol(),
            place.books().rules().inForce().passes(),
            place.readings().of(bone.id()));
    return place
        .books()
        .refits()
        .of(bone.id())
        .map(
            refit -> {
              Set<MeasurementCode> across =
                  passes.measurements().stream()
                      .filter(refit::crosses)
                      .map(Measurement::code)
                      .collect(Collectors.toUnmodifiableSet());
              return passes.withAcrossBreak(across);
            })
        .orElse(passes);
  }

  /** The pair that the bone in hand belongs to. */
  Optional<Pair> pair() {
    return place
        .books()
        .keying()
        .pair(BenchPlace.BENCH)
        .filter(pair -> bench.boneProperty().get().filter(b -> pair.holds(b.id())).isPresent());
  }

  /** The other bone of the pair, with the tolerance of the shelf. */
  Optional<OtherSide> beside(TrayBone bone) {
    return pair()
        .flatMap(pair -> stored(pair.beside(bone.id())))
        .map(other -> new OtherSide(other.side(), passes(other), SideTolerance.usual()));
  }

  /** Something was recorded: the bone that is due comes to hand. */
  void next() {
    both().ifPresent(sides -> take(sides.turn()));
  }

  /** Before the last reading is taken back: the bone that it is of comes to hand. */
  void beforeUndo() {
    both().ifPresent(sides -> take(sides.newest()));
  }

  private Optional<SideBySide> both() {
    return pair()
        .flatMap(
            pair ->
                stored(pair.left())
                    .flatMap(
                        left ->
                            stored(pair.right())
                                .map(right -> new SideBySide(passes(left), passes(right)))));
  }

  private void take(SideBySide.Turn turn) {
    pair()
        .map(pair -> turn == SideBySide.Turn.LEFT ? pair.left() : pair.right())
        .filter(id -> bench.boneProperty().get().filter(b -> b.id().equals(id)).isEmpty())
        .flatMap(this::stored)
        .ifPresent(bench::choose);
  }

  private Optional<TrayBone> stored(BoneId id) {
    return place.trays().bone(id).filter(b -> b.standing() == TrayBone.Standing.OPEN);
  }

  /** Asks for the other side, takes the one that was found with this bone, or ends the pair. */
  Optional<Ask> ask(Tray tray, TrayBone bone) {
    if (pair().isPresent()) {
      place.books().keying().endPair(BenchPlace.BENCH);
      bench.readings().say(place.words().get("pair.ended"));
      return Optional.empty();
    }
    Optional<Side> other = other(bone.side());
    if (other.isEmpty()) {
      bench.readings().say(place.words().get("pair.noside"));
      return Optional.empty();
    }
    Optional<TrayBone> known = foundWith(bone, other.get());
    if (known.isPresent()) {
      begin(bone, known.get());
      return Optional.empty();
    }
    String side = place.words().get("side." + other.get());
    Question question =
        new Question(
            place.words().get("pair.title", side, name(bone)),
            place
                .words()
                .get(
                    "pair.how", place.books().numbering().next(tray).value(), bench.bones().size()),
            java.util.List.of());
    return Optional.of(new Ask(question, typed -> answer(tray, bone, other.get(), typed)));
  }

  private Optional<String> answer(Tray tray, TrayBone bone, Side side, String typed) {
    if (typed.isBlank()) {
      begin(
          bone,
          place
              .books()
              .numbering()
              .put(
                  tray, id -> TrayBone.fresh(id, tray.id(), bone.element(), side, bone.portion())));
      return Optional.empty();
    }
    Optional<TrayBone> chosen = Numbered.of(bench.bones(), typed);
    boolean fits =
        chosen
            .filter(b -> b.element().equals(bone.element()) && b.side() == side)
            .filter(b -> b.standing() == TrayBone.Standing.OPEN)
            .isPresent();
    if (!fits) {
      return Optional.of(
          place.words().get("pair.unfit", typed, place.words().get("side." + side), name(bone)));
    }
    chosen.ifPresent(found -> begin(bone, found));
    return Optional.empty();
  }

  private void begin(TrayBone bone, TrayBone other) {
    boolean left = bone.side() == Side.LEFT;
    Pair pair = left ? new Pair(bone.id(), other.id()) : new Pair(other.id(), bone.id());
    place.books().associations().join(bone.id(), other.id());
    place.books().keying().save(BenchPlace.BENCH, pair);
    if (bench.bones().stream().noneMatch(b -> b.id().equals(other.id()))) {
      bench.bones().add(other);
    }
    both().ifPresent(sides -> take(sides.turn()));
    bench
        .readings()
        .say(place.words().get("pair.begun", pair.left().value(), pair.right().value()));
  }

  private Optional<TrayBone> foundWith(TrayBone bone, Side side) {
    return place.books().associations().of(bone.id()).map(Association::bones).stream()
        .flatMap(java.util.List::stream)
        .flatMap(id -> stored(id).stream())
        .filter(b -> b.element().equals(bone.element()) && b.side() == side)
        .findFirst();
  }

  private String name(TrayBone bone) {
    return place.protocol().element(bone.element()).map(e -> e.name()).orElse("");
  }

  private static Optional<Side> other(Side side) {
    return switch (side) {
      case LEFT -> Optional.of(Side.RIGHT);
      case RIGHT -> Optional.of(Side.LEFT);
      case AXIAL, NOT_KNOWN -> Optional.empty();
    };
  }
}

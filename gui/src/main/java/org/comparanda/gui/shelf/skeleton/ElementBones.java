package org.comparanda.gui.shelf.skeleton;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.Element;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.HeldBone;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.bone.Symmetry;
import org.comparanda.capture.OtherSide;
import org.comparanda.capture.Passes;
import org.comparanda.capture.SideBySide;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.SideTolerance;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BonePlace;
import org.comparanda.register.SkeletonBone;

/**
 * The bones of one element of a skeleton, one a side or several pieces of it, and where their
 * measuring stands.
 *
 * @param pieces which piece of a side is meant
 */
record ElementBones(SkeletonRoom room, AnimalCard card, Element element, Pieces pieces) {
  static final SideTolerance TOLERANCE = SideTolerance.usual();

  List<Side> sides() {
    return element.symmetry() == Symmetry.AXIAL
        ? List.of(Side.AXIAL)
        : List.of(Side.LEFT, Side.RIGHT);
  }

  /** The same with another piece of a side. */
  ElementBones at(Side side, Portion portion) {
    return new ElementBones(room, card, element, pieces.with(side, portion));
  }

  /** The parts of a side that are there: said before, on the card, or just chosen. */
  List<Portion> parts(Side side) {
    return Stream.of(
            every(side).map(b -> b.held().portion()),
            everyOnCard(side).map(ShelfBone::portion),
            pieces.of(side).stream())
        .flatMap(each -> each)
        .distinct()
        .sorted()
        .toList();
  }

  /** The part of a side that is meant: the chosen piece, else the first that is there. */
  Portion part(Side side) {
    return pieces
        .of(side)
        .or(() -> every(side).map(b -> b.held().portion()).findFirst())
        .or(() -> everyOnCard(side).map(ShelfBone::portion).findFirst())
        .orElse(Portion.WHOLE);
  }

  private Stream<SkeletonBone> every(Side side) {
    return room.skeletons().of(card.id()).stream()
        .filter(b -> b.held().element().equals(element.key()) && b.held().side() == side);
  }

  private Stream<ShelfBone> everyOnCard(Side side) {
    return card.animal().bones().stream()
        .filter(b -> b.element().equals(element.key()) && b.side() == side);
  }

  /** What was said of it before; empty when nothing was. */
  Optional<SkeletonBone> said(Side side) {
    Portion part = part(side);
    return every(side).filter(b -> b.held().portion() == part).findFirst();
  }

  /** The bone of a side as it was said, as its card has it, or a whole one of which nothing is. */
  SkeletonBone bone(Side side) {
    return said(side)
        .orElseGet(
            () -> {
              HeldBone held =
                  onCard(side)
                      .map(
                          b ->
                              new HeldBone(
                                  b.element(),
                                  b.side(),
                                  b.portion(),
                                  new BoneState(Fusion.CANT_SEE, Fusion.CANT_SEE, b.flags())))
                      .orElseGet(
                          () ->
                              new HeldBone(
                                  element.key(), side, part(side), BoneState.notRecorded()));
              BonePlace place = new BonePlace(held.element(), held.side(), held.portion());
              return new SkeletonBone(room.skeletons().number(card.id(), place), card.id(), held);
            });
  }

  /** That bone as it stands on the card. */
  Optional<ShelfBone> onCard(Side side) {
    Portion part = part(side);
    return everyOnCard(side).filter(b -> b.portion() == part).findFirst();
  }

  /** Where the measuring of a side stands, by its log. */
  Passes passes(Side side) {
    SkeletonBone bone = bone(side);
    return Passes.restore(
        bone.id(),
        element.key(),
        bone.held().portion(),
        room.keeper().protocol(),
        room.rules().inForce().passes(),
        room.reading().readings().of(bone.id()));
  }

  Optional<SideBySide> both() {
    return sides().size() == 2
        ? Optional.of(new SideBySide(passes(Side.LEFT), passes(Side.RIGHT)))
        : Optional.empty();
  }

  /** The other bone: what was read of it, else what its card has. */
  Optional<OtherSide> beside(Side side) {
    Side other = side == Side.LEFT ? Side.RIGHT : Side.LEFT;
    return sides().size() == 2
        ? Optional.of(new OtherSide(other, passes(other), recorded(other), TOLERANCE))
        : Optional.empty();
  }

  /** The values of that bone on the card, mm; none where it isn't there. */
  Map<MeasurementCode, Double> recorded(Side side) {
    return onCard(side).map(ShelfBone::values).orElse(Map.of());
  }
}

package org.comparanda.gui.shelf.skeleton;

import java.util.List;
import java.util.Map;
import java.util.Optional;
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

/** The bones of one element of a skeleton, one a side, and where their measuring stands. */
record ElementBones(SkeletonRoom room, AnimalCard card, Element element) {
  static final SideTolerance TOLERANCE = SideTolerance.usual();

  List<Side> sides() {
    return element.symmetry() == Symmetry.AXIAL
        ? List.of(Side.AXIAL)
        : List.of(Side.LEFT, Side.RIGHT);
  }

  /** What was said of it before; empty when nothing was. */
  Optional<SkeletonBone> said(Side side) {
    return room.skeletons().of(card.id()).stream()
        .filter(b -> b.held().element().equals(element.key()) && b.held().side() == side)
        .findFirst();
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
                                  element.key(), side, Portion.WHOLE, BoneState.notRecorded()));
              BonePlace place = new BonePlace(held.element(), held.side(), held.portion());
              return new SkeletonBone(room.skeletons().number(card.id(), place), card.id(), held);
            });
  }

  /** The first bone of that side that stands on the card. */
  Optional<ShelfBone> onCard(Side side) {
    return card.animal().bones().stream()
        .filter(b -> b.element().equals(element.key()) && b.side() == side)
        .findFirst();
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

  private Map<MeasurementCode, Double> recorded(Side side) {
    return onCard(side).map(ShelfBone::values).orElse(Map.of());
  }
}

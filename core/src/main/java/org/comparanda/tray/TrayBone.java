package org.comparanda.tray;

import java.util.Optional;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.HeldBone;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.reference.AnimalId;

/**
 * One bone of a tray, without its readings.
 *
 * @param animal set for a practice bone that belongs to an animal on the shelf
 * @param standing whether it may be measured
 * @param keeping where it goes next and whether it may leave the house
 */
public record TrayBone(
    BoneId id,
    TrayId tray,
    Optional<AnimalId> animal,
    ElementKey element,
    Side side,
    Portion portion,
    BoneState state,
    Standing standing,
    String remarks,
    Keeping keeping) {
  /** Whether a bone may be measured, or was set aside as possibly human. */
  public enum Standing {
    OPEN,
    STOPPED
  }

  /** A bone without a place to go to, which may leave the house. */
  public TrayBone(
      BoneId id,
      TrayId tray,
      Optional<AnimalId> animal,
      ElementKey element,
      Side side,
      Portion portion,
      BoneState state,
      Standing standing,
      String remarks) {
    this(id, tray, animal, element, side, portion, state, standing, remarks, Keeping.ordinary());
  }

  public TrayBone withTray(TrayId next) {
    return new TrayBone(
        id, next, animal, element, side, portion, state, standing, remarks, keeping);
  }

  public TrayBone withKeeping(Keeping next) {
    return new TrayBone(id, tray, animal, element, side, portion, state, standing, remarks, next);
  }

  public TrayBone withRemarks(String next) {
    return new TrayBone(id, tray, animal, element, side, portion, state, standing, next, keeping);
  }

  /** What was said of it before it was measured. */
  public HeldBone held() {
    return new HeldBone(element, side, portion, state);
  }

  /** The same bone, of which something else is said. */
  public TrayBone withHeld(HeldBone said) {
    return new TrayBone(
        id,
        tray,
        animal,
        said.element(),
        said.side(),
        said.portion(),
        said.state(),
        standing,
        remarks,
        keeping);
  }

  /** The same bone in another state. */
  public TrayBone withState(BoneState other) {
    return new TrayBone(
        id, tray, animal, element, side, portion, other, standing, remarks, keeping);
  }

  /** The same bone, of which more or less is in hand. */
  public TrayBone withPortion(Portion other) {
    return new TrayBone(id, tray, animal, element, side, other, state, standing, remarks, keeping);
  }

  /** The same bone, taken for another element. */
  public TrayBone withElement(ElementKey other) {
    return new TrayBone(id, tray, animal, other, side, portion, state, standing, remarks, keeping);
  }

  /** The same bone, which may be measured, or no longer. */
  public TrayBone withStanding(Standing other) {
    return new TrayBone(id, tray, animal, element, side, portion, state, other, remarks, keeping);
  }

  /** A bone of which nothing is recorded but what and where it is. */
  public static TrayBone fresh(
      BoneId id, TrayId tray, ElementKey element, Side side, Portion portion) {
    return new TrayBone(
        id,
        tray,
        Optional.empty(),
        element,
        side,
        portion,
        BoneState.notRecorded(),
        Standing.OPEN,
        "");
  }
}

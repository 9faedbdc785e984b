package org.comparanda.tray;

import java.util.function.Function;
import org.comparanda.measurement.BoneId;

/** Repository of bone numbers: the next one by a tray's rule, shown before it is used. */
public interface Numbering {
  /** The rule of a tray; the default where none was set. */
  NumberRule ruleOf(TrayId tray);

  /** Sets the rule of a tray from now on; numbers given before stay as they are. */
  void setRule(TrayId tray, NumberRule rule);

  /** The number that {@link #put} would give now. Changes nothing. */
  BoneId next(Tray tray);

  /**
   * Gives the next number and puts the bone on its tray under it, both or neither. A number once
   * given never comes again.
   *
   * @param bone the bone under a number
   */
  TrayBone put(Tray tray, Function<BoneId, TrayBone> bone);
}

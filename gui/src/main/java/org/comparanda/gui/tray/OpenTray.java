package org.comparanda.gui.tray;

import java.util.List;
import org.comparanda.measurement.BoneId;
import org.comparanda.tray.Lot;
import org.comparanda.tray.NumberRule;

/**
 * The tray that lies open.
 *
 * @param lot what is recorded of its lot
 * @param rule by which its bones are numbered
 * @param next the number that the next one gets
 */
public record OpenTray(TrayLine line, Lot lot, List<BoneLine> bones, NumberRule rule, BoneId next) {
  public OpenTray {
    bones = List.copyOf(bones);
  }
}

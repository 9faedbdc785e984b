package org.comparanda.gui.tray;

import java.util.List;
import org.comparanda.tray.Lot;

/**
 * The tray that lies open.
 *
 * @param lot what is recorded of its lot
 */
public record OpenTray(TrayLine line, Lot lot, List<BoneLine> bones) {
  public OpenTray {
    bones = List.copyOf(bones);
  }
}

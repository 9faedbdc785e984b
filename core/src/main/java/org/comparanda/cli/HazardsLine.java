package org.comparanda.cli;

import java.util.List;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/** The hazards of a lot, said before its first bone. */
final class HazardsLine {
  private HazardsLine() {}

  /** Says them, if any are known. */
  static void say(Terminal terminal, Tray tray) {
    if (!tray.hazards().isBlank()) {
      terminal.note("Before the first bone of lot " + tray.lot() + ": " + tray.hazards());
    }
  }

  /** Says them before the first word on any bone of the lot. */
  static void beforeTheFirstWord(Terminal terminal, Collection opened, TrayBone bone) {
    Tray tray = TrayNamed.tray(opened, bone.tray().value());
    if (opened.trays().all().stream()
        .filter(t -> t.lot().equals(tray.lot()))
        .noneMatch(t -> begun(opened, opened.trays().bonesOf(t.id())))) {
      say(terminal, tray);
    }
  }

  private static boolean begun(Collection opened, List<TrayBone> bones) {
    return bones.stream()
        .anyMatch(
            b ->
                !opened.trays().callsOn(b.id()).isEmpty()
                    || !opened.trays().elementCallsOn(b.id()).isEmpty());
  }
}

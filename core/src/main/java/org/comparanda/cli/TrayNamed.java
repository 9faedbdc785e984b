package org.comparanda.cli;

import org.comparanda.measurement.BoneId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/** Trays and bones by what a person typed. */
final class TrayNamed {
  private TrayNamed() {}

  static Tray tray(Collection opened, String id) {
    return opened.trays().all().stream()
        .filter(t -> t.id().value().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new CannotDo(
                    "There is no tray \"" + id + "\". Nothing was changed. Look at tray list."));
  }

  static TrayBone bone(Collection opened, String number) {
    return opened
        .trays()
        .bone(new BoneId(number))
        .orElseThrow(
            () ->
                new CannotDo(
                    "There is no bone \""
                        + number
                        + "\" on a tray. Nothing was changed. Check the number."));
  }
}

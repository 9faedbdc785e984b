package org.comparanda.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.demo.Harrowmere;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Call;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;

/** Collections for tests: the demo's own (simulated) and what a test puts on its trays. */
final class Room {
  static final Instant AT = Instant.parse("2026-11-25T09:00:00Z");
  static final PersonId PERSON = new PersonId("demo");

  private Room() {}

  static Path harrowmere(Path folder) {
    Path file = folder.resolve(Harrowmere.FILE);
    try (Collection room = Collection.create(file, Typed.CLOCK)) {
      Harrowmere.read(ReferenceTables.shipped())
          .fill(room.tableIntake(), room.trays(), room.lots(), room.readings(), room.people(), AT);
    }
    return file;
  }

  static Tray tray(String id, String lot, String place) {
    return new Tray(new TrayId(id), lot, id, BoneAge.ARCHAEOLOGICAL, place, "", Tray.State.WAITING);
  }

  static TrayBone bone(String number, String tray, TrayBone.Standing standing, String remarks) {
    return new TrayBone(
        new BoneId(number),
        new TrayId(tray),
        Optional.empty(),
        new ElementKey("humerus"),
        Side.LEFT,
        Portion.DISTAL,
        BoneState.notRecorded(),
        standing,
        remarks);
  }

  static TrayBone stopped(TrayBone bone) {
    return new TrayBone(
        bone.id(),
        bone.tray(),
        bone.animal(),
        bone.element(),
        bone.side(),
        bone.portion(),
        bone.state(),
        TrayBone.Standing.STOPPED,
        bone.remarks());
  }

  static Call call(String bone, String taxon, Qualifier qualifier, String basis) {
    return new Call(0, new BoneId(bone), new TaxonName(taxon), qualifier, PERSON, AT, basis, false);
  }
}

package org.comparanda.storage;

import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Reading;
import org.comparanda.tray.Beside;
import org.comparanda.tray.Call;
import org.comparanda.tray.ElementCall;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.comparanda.tray.Trays;

/** Trays, their bones and the calls in the collection's file. */
record SqlTrays(Database database, DayBookRows dayBook) implements Trays {
  @Override
  public List<Tray> all() {
    return database.read(
        h ->
            h.createQuery(
                    "select t.*, l.provenance as lot_provenance, l.hazards as lot_hazards from tray"
                        + " t left join lot l on l.id = t.lot order by t.position")
                .map(TrayRows::tray)
                .list());
  }

  @Override
  public void save(Tray tray) {
    database.write(
        h -> {
          tray.assignedTo().ifPresent(person -> SqlPeople.known(h, dayBook, person));
          TrayRows.save(h, dayBook, tray);
          return tray;
        });
  }

  @Override
  public List<TrayBone> bonesOf(TrayId tray) {
    return database.read(
        h ->
            h.createQuery("select * from tray_bone where tray_id = :tray order by position")
                .bind("tray", tray.value())
                .map(TrayRows::bone)
                .list());
  }

  @Override
  public Optional<TrayBone> bone(BoneId bone) {
    return database.read(
        h ->
            h.createQuery("select * from tray_bone where id = :id")
                .bind("id", bone.value())
                .map(TrayRows::bone)
                .findOne());
  }

  @Override
  public void saveAll(List<TrayBone> bones) {
    database.write(
        h -> {
          bones.forEach(bone -> TrayRows.save(h, dayBook, bone));
          return bones;
        });
  }

  @Override
  public void put(Tray tray, List<TrayBone> bones, List<Reading> readings) {
    database.write(
        h -> {
          TrayRows.save(h, dayBook, tray);
          bones.forEach(bone -> TrayRows.save(h, dayBook, bone));
          readings.forEach(reading -> SqlReadingLog.append(h, dayBook, reading));
          return tray;
        });
  }

  @Override
  public Call record(Call call, Beside beside) {
    return database.write(h -> CallRows.append(h, dayBook, call, beside));
  }

  @Override
  public List<Call> callsOn(BoneId bone) {
    return database.read(
        h ->
            h.createQuery("select * from bone_call where bone_id = :bone order by id")
                .bind("bone", bone.value())
                .map(CallRows::call)
                .list());
  }

  @Override
  public List<Call> calls() {
    return database.read(
        h -> h.createQuery("select * from bone_call order by id").map(CallRows::call).list());
  }

  @Override
  public Beside beside(Call call) {
    return database.read(
        h ->
            h.createQuery("select * from beside_call where call_id = :id")
                .bind("id", call.id())
                .map(CallRows::beside)
                .findOne()
                .orElse(Beside.nothing()));
  }

  @Override
  public ElementCall record(ElementCall call) {
    return database.write(h -> CallRows.append(h, dayBook, call));
  }

  @Override
  public List<ElementCall> elementCallsOn(BoneId bone) {
    return database.read(
        h ->
            h.createQuery("select * from element_call where bone_id = :bone order by id")
                .bind("bone", bone.value())
                .map(CallRows::elementCall)
                .list());
  }
}

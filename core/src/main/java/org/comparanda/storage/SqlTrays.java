package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Call;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.comparanda.tray.Trays;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Trays, their bones and the calls in the collection's file. */
record SqlTrays(Database database, DayBookRows dayBook) implements Trays {
  @Override
  public List<Tray> all() {
    return database.read(
        h -> h.createQuery("select * from tray order by position").map(SqlTrays::tray).list());
  }

  @Override
  public void save(Tray tray) {
    database.write(
        h -> {
          save(h, dayBook, tray);
          return tray;
        });
  }

  static void save(Handle h, DayBookRows dayBook, Tray tray) {
    h.createUpdate(
            "insert into tray (id, position, lot, name, age, provenance, hazards, state)"
                + " values (:id, (select coalesce(max(position), 0) + 1 from tray), :lot,"
                + " :name, :age, :provenance, :hazards, :state)"
                + " on conflict (id) do update set lot = excluded.lot,"
                + " name = excluded.name, age = excluded.age,"
                + " provenance = excluded.provenance, hazards = excluded.hazards,"
                + " state = excluded.state")
        .bind("id", tray.id().value())
        .bind("lot", tray.lot())
        .bind("name", tray.name())
        .bind("age", tray.age().name())
        .bind("provenance", tray.provenance())
        .bind("hazards", tray.hazards())
        .bind("state", tray.state().name())
        .execute();
    dayBook.wrote(h, Kept.TRAY, tray.id().value(), "");
  }

  @Override
  public List<TrayBone> bonesOf(TrayId tray) {
    return database.read(
        h ->
            h.createQuery("select * from tray_bone where tray_id = :tray order by position")
                .bind("tray", tray.value())
                .map(SqlTrays::bone)
                .list());
  }

  @Override
  public Optional<TrayBone> bone(BoneId bone) {
    return database.read(
        h ->
            h.createQuery("select * from tray_bone where id = :id")
                .bind("id", bone.value())
                .map(SqlTrays::bone)
                .findOne());
  }

  @Override
  public void save(TrayBone bone) {
    database.write(
        h -> {
          save(h, dayBook, bone);
          return bone;
        });
  }

  static void save(Handle h, DayBookRows dayBook, TrayBone bone) {
    h.createUpdate(
            "insert into tray_bone (id, position, tray_id, animal_id, element, side,"
                + " portion, proximal, distal, flags, standing, remarks) values (:id,"
                + " (select coalesce(max(position), 0) + 1 from tray_bone), :tray, :animal,"
                + " :element, :side, :portion, :proximal, :distal, :flags, :standing,"
                + " :remarks) on conflict (id) do update set tray_id = excluded.tray_id,"
                + " animal_id = excluded.animal_id, element = excluded.element,"
                + " side = excluded.side, portion = excluded.portion,"
                + " proximal = excluded.proximal, distal = excluded.distal,"
                + " flags = excluded.flags, standing = excluded.standing,"
                + " remarks = excluded.remarks")
        .bind("id", bone.id().value())
        .bind("tray", bone.tray().value())
        .bind("animal", bone.animal().map(AnimalId::value))
        .bind("element", bone.element().value())
        .bind("side", bone.side().name())
        .bind("portion", bone.portion().name())
        .bind("proximal", bone.state().proximal().name())
        .bind("distal", bone.state().distal().name())
        .bind("flags", Flags.text(bone.state().flags()))
        .bind("standing", bone.standing().name())
        .bind("remarks", bone.remarks())
        .execute();
    if (bone.standing() == TrayBone.Standing.STOPPED) {
      SqlKeptAnswers.wipe(h, bone.id());
    }
    dayBook.wrote(h, Kept.BONE, bone.id().value(), "");
  }

  @Override
  public Call record(Call call) {
    return database.write(h -> record(h, dayBook, call));
  }

  static Call record(Handle h, DayBookRows dayBook, Call call) {
    SqlPeople.known(h, dayBook, call.person());
    long id =
        h.createQuery("select coalesce(max(id), 0) + 1 from bone_call").mapTo(Long.class).one();
    h.createUpdate(
            "insert into bone_call (id, bone_id, taxon, qualifier, person_id, at, basis,"
                + " saw_suggestion) values (:id, :bone, :taxon, :qualifier, :person, :at,"
                + " :basis, :saw)")
        .bind("id", id)
        .bind("bone", call.bone().value())
        .bind("taxon", call.taxon().value())
        .bind("qualifier", call.qualifier().name())
        .bind("person", call.person().value())
        .bind("at", call.at().toString())
        .bind("basis", call.basis())
        .bind("saw", call.sawSuggestion() ? 1 : 0)
        .execute();
    dayBook.wrote(h, Kept.CALL, id, "");
    return call.withId(id);
  }

  @Override
  public List<Call> callsOn(BoneId bone) {
    return database.read(
        h ->
            h.createQuery("select * from bone_call where bone_id = :bone order by id")
                .bind("bone", bone.value())
                .map(SqlTrays::call)
                .list());
  }

  private static Tray tray(ResultSet row, StatementContext context) throws SQLException {
    return new Tray(
        new TrayId(row.getString("id")),
        row.getString("lot"),
        row.getString("name"),
        BoneAge.valueOf(row.getString("age")),
        row.getString("provenance"),
        row.getString("hazards"),
        Tray.State.valueOf(row.getString("state")));
  }

  private static TrayBone bone(ResultSet row, StatementContext context) throws SQLException {
    return new TrayBone(
        new BoneId(row.getString("id")),
        new TrayId(row.getString("tray_id")),
        Optional.ofNullable(row.getString("animal_id")).map(AnimalId::new),
        new ElementKey(row.getString("element")),
        Side.valueOf(row.getString("side")),
        Portion.valueOf(row.getString("portion")),
        new BoneState(
            Fusion.valueOf(row.getString("proximal")),
            Fusion.valueOf(row.getString("distal")),
            Flags.of(row.getString("flags"))),
        TrayBone.Standing.valueOf(row.getString("standing")),
        row.getString("remarks"));
  }

  static Call call(ResultSet row, StatementContext context) throws SQLException {
    return new Call(
        row.getLong("id"),
        new BoneId(row.getString("bone_id")),
        new TaxonName(row.getString("taxon")),
        Qualifier.valueOf(row.getString("qualifier")),
        new PersonId(row.getString("person_id")),
        Instant.parse(row.getString("at")),
        row.getString("basis"),
        row.getInt("saw_suggestion") == 1);
  }
}

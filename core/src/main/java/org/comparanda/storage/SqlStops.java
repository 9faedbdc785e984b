package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.house.Right;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.ChangeNote;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.Stop;
import org.comparanda.tray.Stops;
import org.comparanda.tray.TrayBone;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Bones set aside as possibly human, in the collection's file. */
record SqlStops(Database database, SqlRegister register, DayBookRows dayBook) implements Stops {
  /**
   * What is wiped with a bone beside its kept answers: tables of what was computed of it or lies
   * half-typed, with the column that holds the bone's number. The Day Book keeps none of them.
   */
  static final Map<String, String> WIPED = Map.of("beside_call", "bone_id", "draft", "bone_id");

  @Override
  public List<Stop> of(BoneId bone) {
    return database.read(
        h ->
            h.createQuery("select * from stop_record where bone_id = :bone order by id")
                .bind("bone", bone.value())
                .map(SqlStops::stop)
                .list());
  }

  @Override
  public Outcome<Stop> setAside(BoneId bone, PersonId person, Instant at, String reason) {
    return database.write(
        h -> {
          if (standing(h, bone).isEmpty()) {
            return Outcome.none(
                "There is no bone \""
                    + bone
                    + "\" on a tray or measured of a skeleton. Nothing was changed.",
                "Check the number.");
          }
          WIPED.forEach(
              (table, column) ->
                  h.createUpdate("delete from " + table + " where " + column + " = :bone")
                      .bind("bone", bone.value())
                      .execute());
          SqlKeptAnswers.wipe(h, bone);
          return Outcome.of(append(h, bone, Stop.Kind.SET_ASIDE, person, at, reason));
        });
  }

  @Override
  public Outcome<Stop> openAgain(BoneId bone, PersonId person, Instant at, String reason) {
    return database.write(
        h -> {
          if (!standing(h, bone).equals(Optional.of(TrayBone.Standing.STOPPED))) {
            return Outcome.none(
                "Bone \"" + bone + "\" is not set aside. Nothing was changed.",
                "Check the number.");
          }
          if (reason.isBlank()) {
            return Outcome.none(
                "Opening " + bone + " again needs a reason. It stays set aside.",
                "Write who looked at it, when, and what they said.");
          }
          return SqlGrants.rights(h)
              .asked(person, Right.OPEN_STOP, bone + " stays set aside")
              .then(
                  allowed ->
                      SqlPeople.named(h, allowed)
                          ? Outcome.of(append(h, bone, Stop.Kind.OPENED, allowed, at, reason))
                          : Outcome.none(
                              "\""
                                  + person.value()
                                  + "\" has no name here, so "
                                  + bone
                                  + " stays set aside.",
                              "A bone is opened again by a named person only: record the name."));
        });
  }

  private Stop append(
      Handle h, BoneId bone, Stop.Kind kind, PersonId person, Instant at, String reason) {
    SqlPeople.known(h, dayBook, person);
    long id = CallRows.next(h, "stop_record");
    h.createUpdate(
            "insert into stop_record (id, bone_id, kind, person_id, at, reason)"
                + " values (:id, :bone, :kind, :person, :at, :reason)")
        .bind("id", id)
        .bind("bone", bone.value())
        .bind("kind", kind.name())
        .bind("person", person.value())
        .bind("at", at.toString())
        .bind("reason", reason)
        .execute();
    dayBook.wrote(
        h,
        Kept.STOP,
        id,
        bone + (kind == Stop.Kind.SET_ASIDE ? " set aside" : " opened again: " + reason));
    ChangeNote note =
        new ChangeNote(person, bone + ": " + (reason.isBlank() ? "may be human" : reason));
    animal(h, bone)
        .ifPresentOrElse(
            animal -> stand(h, animal, kind, note), () -> stand(h, bone, kind, "by stop " + id));
    return new Stop(id, bone, kind, person, at, reason);
  }

  private void stand(Handle h, BoneId bone, Stop.Kind kind, String words) {
    TrayBone.Standing now =
        kind == Stop.Kind.SET_ASIDE ? TrayBone.Standing.STOPPED : TrayBone.Standing.OPEN;
    h.createUpdate("update tray_bone set standing = :standing where id = :bone")
        .bind("standing", now.name())
        .bind("bone", bone.value())
        .execute();
    dayBook.wrote(h, Kept.BONE, bone.value(), words);
  }

  /** With one bone its whole animal is set aside; it stands again with the last one opened. */
  private void stand(Handle h, AnimalId animal, Stop.Kind kind, ChangeNote note) {
    if (kind == Stop.Kind.SET_ASIDE
        || SqlSkeletons.of(h, animal).stream().noneMatch(bone -> setAside(h, bone.id()))) {
      register.setAside(h, animal, kind, note);
    }
  }

  /** Whether a bone is open or set aside; empty when there is none. */
  private static Optional<TrayBone.Standing> standing(Handle h, BoneId bone) {
    if (animal(h, bone).isPresent()) {
      return Optional.of(setAside(h, bone) ? TrayBone.Standing.STOPPED : TrayBone.Standing.OPEN);
    }
    return h.createQuery("select standing from tray_bone where id = :bone")
        .bind("bone", bone.value())
        .mapTo(String.class)
        .findOne()
        .map(TrayBone.Standing::valueOf);
  }

  /** The animal whose skeleton a bone is measured of. */
  private static Optional<AnimalId> animal(Handle h, BoneId bone) {
    return h.createQuery("select animal_id from skeleton_bone where id = :bone")
        .bind("bone", bone.value())
        .mapTo(String.class)
        .findOne()
        .map(AnimalId::new);
  }

  /** Whether the newest stop of a bone sets it aside. */
  private static boolean setAside(Handle h, BoneId bone) {
    return h.createQuery(
            "select kind from stop_record where bone_id = :bone order by id desc limit 1")
        .bind("bone", bone.value())
        .mapTo(String.class)
        .findOne()
        .map(Stop.Kind::valueOf)
        .filter(Stop.Kind.SET_ASIDE::equals)
        .isPresent();
  }

  private static Stop stop(ResultSet row, StatementContext context) throws SQLException {
    return new Stop(
        row.getLong("id"),
        new BoneId(row.getString("bone_id")),
        Stop.Kind.valueOf(row.getString("kind")),
        new PersonId(row.getString("person_id")),
        Instant.parse(row.getString("at")),
        row.getString("reason"));
  }
}

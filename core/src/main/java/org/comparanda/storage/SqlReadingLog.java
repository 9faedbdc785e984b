package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Reading;
import org.comparanda.measurement.ReadingLog;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Readings in the collection's file, which itself refuses to change or remove one. */
record SqlReadingLog(Database database, DayBookRows dayBook) implements ReadingLog {
  @Override
  public List<Reading> append(List<Reading> readings) {
    return database.write(h -> readings.stream().map(r -> append(h, dayBook, r)).toList());
  }

  @Override
  public List<Reading> of(BoneId bone) {
    return database.read(
        h ->
            h.createQuery("select * from reading where bone_id = :bone order by id")
                .bind("bone", bone.value())
                .map(SqlReadingLog::reading)
                .list());
  }

  static Reading append(Handle h, DayBookRows dayBook, Reading reading) {
    SqlPeople.known(h, dayBook, reading.person());
    long id = h.createQuery("select coalesce(max(id), 0) + 1 from reading").mapTo(Long.class).one();
    h.createUpdate(
            "insert into reading (id, bone_id, element, code, kind, as_typed, length_mm, person_id, at, pass,"
                + " is_repeat, instrument, points_at, reason) values (:id, :bone, :element, :code, :kind,"
                + " :typed, :mm, :person, :at, :pass, :repeat, :instrument, :pointsAt, :reason)")
        .bind("id", id)
        .bind("bone", reading.bone().value())
        .bind("element", reading.element().value())
        .bind("code", reading.code().value())
        .bind("kind", reading.kind().name())
        .bind("typed", reading.asTyped())
        .bind("mm", reading.length().map(Length::mm))
        .bind("person", reading.person().value())
        .bind("at", reading.at().toString())
        .bind("pass", reading.pass())
        .bind("repeat", reading.repeat() ? 1 : 0)
        .bind("instrument", reading.instrument())
        .bind("pointsAt", reading.pointsAt())
        .bind("reason", reading.reason())
        .execute();
    dayBook.wrote(h, Kept.READING, id, "");
    return reading.withId(id);
  }

  static Reading reading(ResultSet row, StatementContext context) throws SQLException {
    double mm = row.getDouble("length_mm");
    Optional<Length> length = row.wasNull() ? Optional.empty() : Optional.of(new Length(mm));
    long pointsAt = row.getLong("points_at");
    Optional<Long> target = row.wasNull() ? Optional.empty() : Optional.of(pointsAt);
    return new Reading(
        row.getLong("id"),
        new BoneId(row.getString("bone_id")),
        new ElementKey(row.getString("element")),
        new MeasurementCode(row.getString("code")),
        Reading.Kind.valueOf(row.getString("kind")),
        row.getString("as_typed"),
        length,
        new PersonId(row.getString("person_id")),
        Instant.parse(row.getString("at")),
        row.getInt("pass"),
        row.getInt("is_repeat") == 1,
        Optional.ofNullable(row.getString("instrument")),
        target,
        row.getString("reason"));
  }
}

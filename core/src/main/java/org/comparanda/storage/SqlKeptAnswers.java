package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.BoneId;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.KeptAnswer;
import org.comparanda.tray.KeptAnswers;
import org.comparanda.tray.TrayBone;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Kept answers in the collection's file. */
record SqlKeptAnswers(Database database) implements KeptAnswers {
  @Override
  public Outcome<List<KeptAnswer>> keep(List<KeptAnswer> answers) {
    return database.write(
        h -> {
          for (KeptAnswer answer : answers) {
            if (stopped(h, answer.bone())) {
              return Outcome.none(
                  "Bone \""
                      + answer.bone()
                      + "\" is set aside as possibly human. No answer was kept.",
                  "Leave it out.");
            }
          }
          List<KeptAnswer> kept = new ArrayList<>();
          answers.forEach(answer -> kept.add(append(h, answer)));
          return Outcome.of(List.copyOf(kept));
        });
  }

  private static boolean stopped(Handle h, BoneId bone) {
    return h.createQuery("select standing from tray_bone where id = :bone")
        .bind("bone", bone.value())
        .mapTo(String.class)
        .findOne()
        .filter(TrayBone.Standing.STOPPED.name()::equals)
        .isPresent();
  }

  private static KeptAnswer append(Handle h, KeptAnswer answer) {
    long id =
        h.createQuery("select coalesce(max(id), 0) + 1 from kept_answer").mapTo(Long.class).one();
    h.createUpdate(
            "insert into kept_answer (id, bone_id, at, call_id, program, shelf_version, content)"
                + " values (:id, :bone, :at, :call, :program, :shelf, :content)")
        .bind("id", id)
        .bind("bone", answer.bone().value())
        .bind("at", answer.at().toString())
        .bind("call", answer.call())
        .bind("program", answer.program())
        .bind("shelf", answer.shelfVersion())
        .bind("content", answer.content())
        .execute();
    return answer.withId(id);
  }

  /** Removes all of a bone that may be human. */
  static void wipe(Handle h, BoneId bone) {
    h.createUpdate("delete from kept_answer where bone_id = :bone")
        .bind("bone", bone.value())
        .execute();
  }

  @Override
  public List<KeptAnswer> of(BoneId bone) {
    return database.read(
        h ->
            h.createQuery("select * from kept_answer where bone_id = :bone order by id")
                .bind("bone", bone.value())
                .map(SqlKeptAnswers::answer)
                .list());
  }

  @Override
  public List<KeptAnswer> all() {
    return database.read(
        h ->
            h.createQuery("select * from kept_answer order by id")
                .map(SqlKeptAnswers::answer)
                .list());
  }

  private static KeptAnswer answer(ResultSet row, StatementContext context) throws SQLException {
    long called = row.getLong("call_id");
    Optional<Long> call = row.wasNull() ? Optional.empty() : Optional.of(called);
    return new KeptAnswer(
        row.getLong("id"),
        new BoneId(row.getString("bone_id")),
        Instant.parse(row.getString("at")),
        call,
        row.getString("program"),
        row.getString("shelf_version"),
        row.getString("content"));
  }
}

package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.comparanda.bone.Portion;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.tray.Refit;
import org.comparanda.tray.Refits;
import org.jdbi.v3.core.statement.StatementContext;

/** Bones in pieces, in the collection's file. */
record SqlRefits(Database database, DayBookRows dayBook) implements Refits {
  @Override
  public List<Refit> all() {
    return database.read(
        h -> h.createQuery("select * from refit order by bone_id").map(SqlRefits::refit).list());
  }

  @Override
  public Optional<Refit> of(BoneId bone) {
    return database.read(
        h ->
            h.createQuery("select * from refit where bone_id = :bone")
                .bind("bone", bone.value())
                .map(SqlRefits::refit)
                .findOne());
  }

  @Override
  public void save(Refit refit) {
    String pieces = refit.pieces().stream().map(Portion::name).collect(Collectors.joining("|"));
    String across =
        refit.across().stream().map(MeasurementCode::value).collect(Collectors.joining("|"));
    database.write(
        h -> {
          h.createUpdate(
                  "insert into refit (bone_id, pieces, across_break)"
                      + " values (:bone, :pieces, :across) on conflict (bone_id) do update set"
                      + " pieces = excluded.pieces, across_break = excluded.across_break")
              .bind("bone", refit.bone().value())
              .bind("pieces", pieces)
              .bind("across", across)
              .execute();
          dayBook.wrote(h, Kept.REFIT, refit.bone().value(), pieces + " across " + across);
          return refit;
        });
  }

  private static Refit refit(ResultSet row, StatementContext context) throws SQLException {
    return new Refit(
        new BoneId(row.getString("bone_id")),
        words(row.getString("pieces")).map(Portion::valueOf).toList(),
        words(row.getString("across_break"))
            .map(MeasurementCode::new)
            .collect(Collectors.toUnmodifiableSet()));
  }

  private static Stream<String> words(String text) {
    return Arrays.stream(text.split("\\|")).filter(word -> !word.isEmpty());
  }
}

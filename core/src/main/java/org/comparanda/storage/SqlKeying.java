package org.comparanda.storage;

import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.tray.Batch;
import org.comparanda.tray.Keying;
import org.comparanda.tray.Pair;
import org.comparanda.tray.TrayId;

/** What each bench is about, in the collection's file. */
record SqlKeying(Database database) implements Keying {
  @Override
  public Optional<Batch> batch(String bench) {
    return database.read(
        h ->
            h.createQuery("select * from keying_batch where bench = :bench")
                .bind("bench", bench)
                .map(
                    (row, context) ->
                        new Batch(
                            new TrayId(row.getString("tray_id")),
                            new ElementKey(row.getString("element")),
                            Side.valueOf(row.getString("side")),
                            Portion.valueOf(row.getString("portion")),
                            row.getInt("left_over")))
                .findOne());
  }

  @Override
  public void save(String bench, Batch batch) {
    database.write(
        h ->
            h.createUpdate(
                    "insert into keying_batch (bench, tray_id, element, side, portion, left_over)"
                        + " values (:bench, :tray, :element, :side, :portion, :left)"
                        + " on conflict (bench) do update set tray_id = excluded.tray_id,"
                        + " element = excluded.element, side = excluded.side,"
                        + " portion = excluded.portion, left_over = excluded.left_over")
                .bind("bench", bench)
                .bind("tray", batch.tray().value())
                .bind("element", batch.element().value())
                .bind("side", batch.side().name())
                .bind("portion", batch.portion().name())
                .bind("left", batch.left())
                .execute());
  }

  @Override
  public void endBatch(String bench) {
    remove("keying_batch", bench);
  }

  @Override
  public Optional<Pair> pair(String bench) {
    return database.read(
        h ->
            h.createQuery("select * from keying_pair where bench = :bench")
                .bind("bench", bench)
                .map(
                    (row, context) ->
                        new Pair(
                            new BoneId(row.getString("left_bone")),
                            new BoneId(row.getString("right_bone"))))
                .findOne());
  }

  @Override
  public void save(String bench, Pair pair) {
    database.write(
        h ->
            h.createUpdate(
                    "insert into keying_pair (bench, left_bone, right_bone)"
                        + " values (:bench, :left, :right) on conflict (bench) do update set"
                        + " left_bone = excluded.left_bone, right_bone = excluded.right_bone")
                .bind("bench", bench)
                .bind("left", pair.left().value())
                .bind("right", pair.right().value())
                .execute());
  }

  @Override
  public void endPair(String bench) {
    remove("keying_pair", bench);
  }

  private void remove(String table, String bench) {
    database.write(
        h ->
            h.createUpdate("delete from " + table + " where bench = :bench")
                .bind("bench", bench)
                .execute());
  }
}

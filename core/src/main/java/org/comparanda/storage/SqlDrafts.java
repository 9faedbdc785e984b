package org.comparanda.storage;

import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.capture.Draft;
import org.comparanda.capture.Drafts;
import org.comparanda.capture.Place;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.MeasurementCode;

/** What lies open on each bench, in the collection's file. */
record SqlDrafts(Database database) implements Drafts {
  @Override
  public void save(String bench, Draft draft) {
    database.write(
        h ->
            h.createUpdate(
                    "insert into draft (bench, bone_id, element, code, pass, half_typed)"
                        + " values (:bench, :bone, :element, :code, :pass, :text)"
                        + " on conflict (bench) do update set bone_id = excluded.bone_id,"
                        + " element = excluded.element, code = excluded.code,"
                        + " pass = excluded.pass, half_typed = excluded.half_typed")
                .bind("bench", bench)
                .bind("bone", draft.bone().value())
                .bind("element", draft.element().value())
                .bind("code", draft.place().code().value())
                .bind("pass", draft.place().pass())
                .bind("text", draft.text())
                .execute());
  }

  @Override
  public Optional<Draft> of(String bench) {
    return database.read(
        h ->
            h.createQuery("select * from draft where bench = :bench")
                .bind("bench", bench)
                .map(
                    (row, context) ->
                        new Draft(
                            new BoneId(row.getString("bone_id")),
                            new ElementKey(row.getString("element")),
                            new Place(
                                new MeasurementCode(row.getString("code")), row.getInt("pass")),
                            row.getString("half_typed")))
                .findOne());
  }

  @Override
  public void clear(String bench) {
    database.write(
        h ->
            h.createUpdate("delete from draft where bench = :bench")
                .bind("bench", bench)
                .execute());
  }
}

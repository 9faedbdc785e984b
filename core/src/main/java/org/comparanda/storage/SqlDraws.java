package org.comparanda.storage;

import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.BoneId;
import org.comparanda.secondlook.Draw;
import org.comparanda.secondlook.Draws;
import org.comparanda.secondlook.Queued;

/** Draws of the Second Look in the collection's file. */
record SqlDraws(Database database, DayBookRows dayBook) implements Draws {
  @Override
  public List<Draw> all() {
    return database.read(
        h ->
            h.createQuery("select * from second_look_draw order by position")
                .map(
                    (row, context) ->
                        new Draw(
                            row.getLong("position"),
                            row.getLong("call_id"),
                            new BoneId(row.getString("bone_id")),
                            Optional.ofNullable(row.getString("why")).map(Queued.Why::valueOf),
                            row.getString("by_rule")))
                .list());
  }

  @Override
  public void append(List<Draw> draws) {
    if (draws.isEmpty()) {
      return;
    }
    database.write(
        h -> {
          for (Draw draw : draws) {
            h.createUpdate(
                    "insert into second_look_draw (position, call_id, bone_id, why, by_rule)"
                        + " values (:position, :call, :bone, :why, :rule)")
                .bind("position", draw.position())
                .bind("call", draw.call())
                .bind("bone", draw.bone().value())
                .bind("why", draw.why().map(Enum::name))
                .bind("rule", draw.byRule())
                .execute();
            dayBook.wrote(h, Kept.DRAW, draw.position(), "");
          }
          return draws;
        });
  }
}

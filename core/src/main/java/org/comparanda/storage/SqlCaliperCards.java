package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CaliperCards;
import org.comparanda.capture.LineEnd;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.LengthUnit;
import org.jdbi.v3.core.statement.StatementContext;

/** The calipers of the room, in the collection's file. */
record SqlCaliperCards(Database database, DayBookRows dayBook) implements CaliperCards {
  @Override
  public List<CaliperCard> all() {
    return database.read(
        h ->
            h.createQuery("select * from caliper_card order by name")
                .map(SqlCaliperCards::card)
                .list());
  }

  @Override
  public Optional<CaliperCard> card(String name) {
    return database.read(
        h ->
            h.createQuery("select * from caliper_card where name = :name")
                .bind("name", name)
                .map(SqlCaliperCards::card)
                .findOne());
  }

  @Override
  public void save(CaliperCard card) {
    database.write(
        h -> {
          h.createUpdate(
                  "insert into caliper_card (name, serial, unit, decimal_mark, fewest_decimals,"
                      + " decimals, line_end, resolution_mm, reach_mm, last_check) values"
                      + " (:name, :serial, :unit, :mark, :fewest, :decimals, :lineEnd,"
                      + " :resolution, :reach, :lastCheck) on conflict (name) do update set"
                      + " serial = excluded.serial, unit = excluded.unit,"
                      + " decimal_mark = excluded.decimal_mark,"
                      + " fewest_decimals = excluded.fewest_decimals,"
                      + " decimals = excluded.decimals, line_end = excluded.line_end,"
                      + " resolution_mm = excluded.resolution_mm, reach_mm = excluded.reach_mm,"
                      + " last_check = excluded.last_check")
              .bind("name", card.name())
              .bind("serial", card.serial())
              .bind("unit", card.unit().name())
              .bind("mark", String.valueOf(card.decimalMark()))
              .bind("fewest", card.fewestDecimals())
              .bind("decimals", card.decimals())
              .bind("lineEnd", card.lineEnd().name())
              .bind("resolution", card.resolution().mm())
              .bind("reach", card.reach().map(Length::mm))
              .bind("lastCheck", card.lastCheck().map(LocalDate::toString))
              .execute();
          dayBook.wrote(h, Kept.CALIPER, card.name(), "");
          return card;
        });
  }

  private static CaliperCard card(ResultSet row, StatementContext context) throws SQLException {
    double reach = row.getDouble("reach_mm");
    Optional<Length> opens = row.wasNull() ? Optional.empty() : Optional.of(new Length(reach));
    return new CaliperCard(
        row.getString("name"),
        row.getString("serial"),
        LengthUnit.valueOf(row.getString("unit")),
        row.getString("decimal_mark").charAt(0),
        row.getInt("fewest_decimals"),
        row.getInt("decimals"),
        LineEnd.valueOf(row.getString("line_end")),
        new Length(row.getDouble("resolution_mm")),
        opens,
        Optional.ofNullable(row.getString("last_check")).map(LocalDate::parse));
  }
}

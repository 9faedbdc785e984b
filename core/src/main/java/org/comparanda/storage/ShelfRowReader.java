package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.taxon.TaxonName;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/**
 * Reads animals from their tables: the animal, its bones, their values and what corrected these.
 */
final class ShelfRowReader {
  private static final String ON_THE_SHELF =
      " not in (select animal_id from animal_register where standing <> 'KEPT')";

  private final Handle handle;
  private final String which;

  private ShelfRowReader(Handle handle, String which) {
    this.handle = handle;
    this.which = which;
  }

  /** Those that stand on the shelf. */
  static Shelf read(Handle h) {
    return new Shelf(
        new ShelfRowReader(h, ON_THE_SHELF).animals(""), RegisterRows.secondNumbers(h));
  }

  /** All, those that left the shelf included. */
  static List<Animal> everyAnimal(Handle h) {
    return new ShelfRowReader(h, " is not null").animals("");
  }

  /** Those in the rows after the one and up to the other, counted from 1. */
  static List<Animal> rows(Handle h, long after, long upTo) {
    String which =
        " in (select id from animal where rowid > " + after + " and rowid <= " + upTo + ")";
    return new ShelfRowReader(h, which).animals("");
  }

  static Optional<Animal> animal(Handle h, AnimalId id) {
    return new ShelfRowReader(h, " = :id").animals(id.value()).stream().findFirst();
  }

  private List<Animal> animals(String id) {
    Map<ShelfPlace, Optional<Double>> corrections = corrections(id);
    Map<String, List<ShelfBone>> bones = new HashMap<>();
    query(
            "select b.animal_id, b.position, b.element, b.side, b.portion, b.flags, v.code,"
                + " v.reading_value from shelf_bone b left join shelf_reading v"
                + " on v.animal_id = b.animal_id and v.position = b.position"
                + " where b.animal_id"
                + which
                + " order by b.animal_id, b.position",
            id)
        .scanResultSet((rows, context) -> gather(rows.get(), bones, corrections));
    return query("select * from animal where id" + which + " order by id", id)
        .map((row, context) -> animal(row, bones.getOrDefault(row.getString("id"), List.of())))
        .list();
  }

  private Query query(String sql, String id) {
    Query query = handle.createQuery(sql);
    return id.isEmpty() ? query : query.bind("id", id);
  }

  private Map<ShelfPlace, Optional<Double>> corrections(String id) {
    Map<ShelfPlace, Optional<Double>> latest = new HashMap<>();
    query("select * from shelf_correction where animal_id" + which + " order by number", id)
        .map(
            (row, context) ->
                Map.entry(
                    new ShelfPlace(
                        row.getString("animal_id"), row.getInt("position"), row.getString("code")),
                    number(row, "reading_value")))
        .forEach(entry -> latest.put(entry.getKey(), entry.getValue()));
    return latest;
  }

  private static Map<String, List<ShelfBone>> gather(
      ResultSet row,
      Map<String, List<ShelfBone>> bones,
      Map<ShelfPlace, Optional<Double>> corrections)
      throws SQLException {
    boolean more = row.next();
    while (more) {
      String animal = row.getString("animal_id");
      int position = row.getInt("position");
      ShelfBone described = bone(row);
      Map<MeasurementCode, Double> values = new TreeMap<>();
      do {
        String code = row.getString("code");
        if (code != null) {
          double first = row.getDouble("reading_value");
          corrections
              .getOrDefault(new ShelfPlace(animal, position, code), Optional.of(first))
              .ifPresent(value -> values.put(new MeasurementCode(code), value));
        }
        more = row.next();
      } while (more
          && row.getString("animal_id").equals(animal)
          && row.getInt("position") == position);
      bones
          .computeIfAbsent(animal, none -> new ArrayList<>())
          .add(
              new ShelfBone(
                  described.element(),
                  described.side(),
                  described.portion(),
                  described.flags(),
                  values));
    }
    return bones;
  }

  private static ShelfBone bone(ResultSet row) throws SQLException {
    return new ShelfBone(
        new ElementKey(row.getString("element")),
        Side.valueOf(row.getString("side")),
        Portion.valueOf(row.getString("portion")),
        Flags.of(row.getString("flags")),
        Map.of());
  }

  private static Animal animal(ResultSet row, List<ShelfBone> bones) throws SQLException {
    return new Animal(
        new AnimalId(row.getString("id")),
        Optional.ofNullable(row.getString("taxon")).map(TaxonName::new),
        Source.valueOf(row.getString("source")),
        Optional.ofNullable(row.getString("drawer")),
        row.getString("sex"),
        row.getString("age_class"),
        row.getString("origin"),
        number(row, "body_length_mm"),
        number(row, "body_mass_g"),
        Flags.of(row.getString("flags")),
        row.getString("remarks"),
        bones);
  }

  private static Optional<Double> number(ResultSet row, String column) throws SQLException {
    double value = row.getDouble(column);
    return row.wasNull() ? Optional.empty() : Optional.of(value);
  }
}

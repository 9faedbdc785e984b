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

/** Reads animals from their three tables: the animal, its bones, their values. */
final class ShelfRowReader {
  private ShelfRowReader() {}

  static Shelf read(Handle h) {
    Map<String, List<ShelfBone>> bones = new HashMap<>();
    h.createQuery(
            "select b.animal_id, b.position, b.element, b.side, b.portion, b.flags, v.code,"
                + " v.reading_value from shelf_bone b left join shelf_reading v"
                + " on v.animal_id = b.animal_id and v.position = b.position"
                + " order by b.animal_id, b.position")
        .scanResultSet((rows, context) -> gather(rows.get(), bones));
    List<Animal> animals =
        h.createQuery("select * from animal order by id")
            .map((row, context) -> animal(row, bones.getOrDefault(row.getString("id"), List.of())))
            .list();
    return new Shelf(animals);
  }

  private static Map<String, List<ShelfBone>> gather(
      ResultSet row, Map<String, List<ShelfBone>> bones) throws SQLException {
    boolean more = row.next();
    while (more) {
      String animal = row.getString("animal_id");
      int position = row.getInt("position");
      ShelfBone described = bone(row);
      Map<MeasurementCode, Double> values = new TreeMap<>();
      do {
        String code = row.getString("code");
        if (code != null) {
          values.put(new MeasurementCode(code), row.getDouble("reading_value"));
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

package org.comparanda.storage;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.ShelfBone;
import org.comparanda.register.AnimalCard;
import org.comparanda.taxon.TaxonName;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Update;

/**
 * Takes cards one after the other and writes the rows of their animals, bones and values. The
 * statements are prepared once: a large table has hundreds of thousands of rows.
 */
final class ShelfRowWriter implements AutoCloseable {
  private final String origin;
  private final PreparedStatement animals;
  private final PreparedStatement bones;
  private final PreparedStatement values;
  private final PreparedBatch cards;

  ShelfRowWriter(Handle handle, String origin) {
    this.origin = origin;
    animals =
        prepared(
            handle,
            "insert into animal (id, taxon, source, drawer, sex, age_class, origin,"
                + " body_length_mm, body_mass_g, flags, remarks) values (?, ?, ?, ?, ?, ?, ?, ?, ?,"
                + " ?, ?) on conflict (id) do nothing");
    bones =
        prepared(
            handle,
            "insert into shelf_bone (animal_id, position, element, side, portion, flags)"
                + " values (?, ?, ?, ?, ?, ?)");
    values =
        prepared(
            handle,
            "insert into shelf_reading (animal_id, position, code, reading_value, origin)"
                + " values (?, ?, ?, ?, ?)");
    cards = handle.prepareBatch(RegisterRows.INSERT);
  }

  private static PreparedStatement prepared(Handle handle, String sql) {
    try {
      return handle.getConnection().prepareStatement(sql);
    } catch (SQLException problem) {
      throw notWritten(problem);
    }
  }

  /** {@link Database} says what it means for the person. */
  private static IllegalStateException notWritten(SQLException problem) {
    return new IllegalStateException("A row could not be written.", problem);
  }

  /** Errors: {@link IllegalArgumentException} if the catalogue number is on the shelf already. */
  void add(AnimalCard card) {
    Animal animal = card.animal();
    try {
      add(animal);
      for (int position = 0; position < animal.bones().size(); position++) {
        add(animal.id(), position, animal.bones().get(position));
      }
    } catch (SQLException problem) {
      throw notWritten(problem);
    }
    if (!card.equals(AnimalCard.of(animal))) {
      RegisterRows.bound(card, cards).add();
      cards.execute();
    }
  }

  private void add(Animal animal) throws SQLException {
    animals.setString(1, animal.id().value());
    animals.setString(2, animal.taxon().map(TaxonName::value).orElse(null));
    animals.setString(3, animal.source().name());
    animals.setString(4, animal.drawer().orElse(null));
    animals.setString(5, animal.sex());
    animals.setString(6, animal.ageClass());
    animals.setString(7, animal.origin());
    animals.setObject(8, animal.bodyLengthMm().orElse(null));
    animals.setObject(9, animal.bodyMassG().orElse(null));
    animals.setString(10, Flags.text(animal.flags()));
    animals.setString(11, animal.remarks());
    if (animals.executeUpdate() == 0) {
      throw onTheShelf(animal.id().value());
    }
  }

  static IllegalArgumentException onTheShelf(String number) {
    return new IllegalArgumentException(
        "Catalogue number \""
            + number
            + "\" is on the shelf already. Nothing was stored. Leave that animal out, or give it"
            + " a number of its own.");
  }

  private void add(AnimalId animal, int position, ShelfBone bone) throws SQLException {
    bones.setString(1, animal.value());
    bones.setInt(2, position);
    bones.setString(3, bone.element().value());
    bones.setString(4, bone.side().name());
    bones.setString(5, bone.portion().name());
    bones.setString(6, Flags.text(bone.flags()));
    bones.executeUpdate();
    for (var value : bone.values().entrySet()) {
      add(animal, position, value.getKey(), value.getValue());
    }
  }

  private void add(AnimalId animal, int position, MeasurementCode code, double value)
      throws SQLException {
    values.setString(1, animal.value());
    values.setInt(2, position);
    values.setString(3, code.value());
    values.setDouble(4, value);
    values.setString(5, origin);
    values.executeUpdate();
  }

  @Override
  public void close() {
    try (animals;
        bones;
        values) {
      cards.close();
    } catch (SQLException problem) {
      throw notWritten(problem);
    }
  }

  /** Fills the fields of an animal's row. */
  static Update bound(Animal animal, Update update) {
    return update
        .bind("id", animal.id().value())
        .bind("taxon", animal.taxon().map(TaxonName::value))
        .bind("source", animal.source().name())
        .bind("drawer", animal.drawer())
        .bind("sex", animal.sex())
        .bind("age", animal.ageClass())
        .bind("origin", animal.origin())
        .bind("length", animal.bodyLengthMm())
        .bind("mass", animal.bodyMassG())
        .bind("flags", Flags.text(animal.flags()))
        .bind("remarks", animal.remarks());
  }
}

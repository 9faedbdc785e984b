package org.comparanda.storage;

import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.ShelfBone;
import org.comparanda.taxon.TaxonName;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Update;

/** Takes animals one after the other and writes their rows, bones and values in batches. */
final class ShelfRowWriter implements AutoCloseable {
  private static final int ROWS_A_BATCH = 1_000;

  private final Handle handle;
  private final String origin;
  private final PreparedBatch bones;
  private final PreparedBatch values;

  ShelfRowWriter(Handle handle, String origin) {
    this.handle = handle;
    this.origin = origin;
    bones =
        handle.prepareBatch(
            "insert into shelf_bone (animal_id, position, element, side, portion, flags)"
                + " values (:animal, :position, :element, :side, :portion, :flags)");
    values =
        handle.prepareBatch(
            "insert into shelf_reading (animal_id, position, code, reading_value, origin)"
                + " values (:animal, :position, :code, :value, :origin)");
  }

  /** Errors: {@link IllegalArgumentException} if the catalogue number is on the shelf already. */
  void add(Animal animal) {
    int added =
        bound(
                animal,
                handle.createUpdate(
                    "insert into animal (id, taxon, source, drawer, sex, age_class, origin,"
                        + " body_length_mm, body_mass_g, flags, remarks) values (:id, :taxon,"
                        + " :source, :drawer, :sex, :age, :origin, :length, :mass, :flags, :remarks)"
                        + " on conflict (id) do nothing"))
            .execute();
    if (added == 0) {
      throw new IllegalArgumentException(
          "Catalogue number \""
              + animal.id()
              + "\" is on the shelf already. Nothing was stored. Leave that animal out, or give it"
              + " a number of its own.");
    }
    for (int position = 0; position < animal.bones().size(); position++) {
      add(animal.id(), position, animal.bones().get(position));
    }
  }

  private void add(AnimalId animal, int position, ShelfBone bone) {
    bones
        .bind("animal", animal.value())
        .bind("position", position)
        .bind("element", bone.element().value())
        .bind("side", bone.side().name())
        .bind("portion", bone.portion().name())
        .bind("flags", Flags.text(bone.flags()))
        .add();
    bone.values().forEach((code, value) -> add(animal, position, code, value));
    if (bones.size() >= ROWS_A_BATCH || values.size() >= ROWS_A_BATCH) {
      writeRest();
    }
  }

  private void add(AnimalId animal, int position, MeasurementCode code, double value) {
    values
        .bind("animal", animal.value())
        .bind("position", position)
        .bind("code", code.value())
        .bind("value", value)
        .bind("origin", origin)
        .add();
  }

  /** Writes what the batches still hold: bones first, since their values point at them. */
  void writeRest() {
    bones.execute();
    values.execute();
  }

  @Override
  public void close() {
    bones.close();
    values.close();
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

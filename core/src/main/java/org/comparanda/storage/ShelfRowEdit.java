package org.comparanda.storage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.ShelfBone;
import org.jdbi.v3.core.Handle;

/** Makes an animal's rows say what its edited state says; a value that stands is only corrected. */
final class ShelfRowEdit {
  private final Handle handle;
  private final String origin;

  ShelfRowEdit(Handle handle, String origin) {
    this.handle = handle;
    this.origin = origin;
  }

  void edit(Animal before, Animal after) {
    if (!before.withBones(List.of()).equals(after.withBones(List.of()))) {
      fields(after);
    }
    for (int position = 0; position < after.bones().size(); position++) {
      ShelfBone bone = after.bones().get(position);
      Map<MeasurementCode, Double> had = Map.of();
      if (position < before.bones().size()) {
        had = before.bones().get(position).values();
        described(after, position, bone);
      } else {
        added(after, position, bone);
      }
      values(after, position, had, bone.values());
    }
  }

  private void fields(Animal animal) {
    ShelfRowWriter.bound(
            animal,
            handle.createUpdate(
                "update animal set taxon = :taxon, source = :source, drawer = :drawer, sex = :sex,"
                    + " age_class = :age, origin = :origin, body_length_mm = :length,"
                    + " body_mass_g = :mass, flags = :flags, remarks = :remarks where id = :id"))
        .execute();
  }

  private void described(Animal animal, int position, ShelfBone bone) {
    handle
        .createUpdate(
            "update shelf_bone set element = :element, side = :side, portion = :portion,"
                + " flags = :flags where animal_id = :animal and position = :position")
        .bind("animal", animal.id().value())
        .bind("position", position)
        .bind("element", bone.element().value())
        .bind("side", bone.side().name())
        .bind("portion", bone.portion().name())
        .bind("flags", Flags.text(bone.flags()))
        .execute();
  }

  private void added(Animal animal, int position, ShelfBone bone) {
    handle
        .createUpdate(
            "insert into shelf_bone (animal_id, position, element, side, portion, flags)"
                + " values (:animal, :position, :element, :side, :portion, :flags)")
        .bind("animal", animal.id().value())
        .bind("position", position)
        .bind("element", bone.element().value())
        .bind("side", bone.side().name())
        .bind("portion", bone.portion().name())
        .bind("flags", Flags.text(bone.flags()))
        .execute();
  }

  private void values(
      Animal animal,
      int position,
      Map<MeasurementCode, Double> before,
      Map<MeasurementCode, Double> after) {
    TreeSet<MeasurementCode> codes = new TreeSet<>(before.keySet());
    codes.addAll(after.keySet());
    for (MeasurementCode code : codes) {
      Optional<Double> was = Optional.ofNullable(before.get(code));
      Optional<Double> is = Optional.ofNullable(after.get(code));
      if (!was.equals(is)) {
        ShelfPlace place = new ShelfPlace(animal.id().value(), position, code.value());
        is.filter(value -> first(place, value) > 0)
            .ifPresentOrElse(value -> {}, () -> correction(place, is));
      }
    }
  }

  /** The first value of a place; 0 rows where it has one already. */
  private int first(ShelfPlace place, double value) {
    return handle
        .createUpdate(
            "insert into shelf_reading (animal_id, position, code, reading_value, origin)"
                + " values (:animal, :position, :code, :value, :origin)"
                + " on conflict (animal_id, position, code) do nothing")
        .bind("animal", place.animal())
        .bind("position", place.position())
        .bind("code", place.code())
        .bind("value", value)
        .bind("origin", origin)
        .execute();
  }

  private void correction(ShelfPlace place, Optional<Double> value) {
    handle
        .createUpdate(
            "insert into shelf_correction (number, animal_id, position, code, reading_value, origin)"
                + " values ((select coalesce(max(number), 0) + 1 from shelf_correction), :animal,"
                + " :position, :code, :value, :origin)")
        .bind("animal", place.animal())
        .bind("position", place.position())
        .bind("code", place.code())
        .bind("value", value)
        .bind("origin", origin)
        .execute();
  }
}

package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;

/** Puts the rows of a long table, one reading each, together into bones. */
final class LongBones {
  private final Map<Key, Gathered> bones = new LinkedHashMap<>();

  /** Rows that share it are one bone; without an animal or a bone's number each row is its own. */
  private record Key(
      String animal, String bone, ElementKey element, Side side, Portion portion, long row) {
    static Key of(BoneRow row) {
      boolean named = !row.animal().isEmpty() || !row.bone().isEmpty();
      return new Key(
          row.animal(),
          row.bone(),
          row.element(),
          row.side(),
          row.portion(),
          named ? 0 : row.number());
    }
  }

  /** One value as typed, with its usual range. */
  record Sighting(TableColumn column, double value, UsualRange range) {}

  private record Gathered(BoneRow first, Map<MeasurementCode, Double> values, List<Sighting> seen) {
    BoneRow row() {
      return first.of(first.element(), first.side(), values);
    }
  }

  void add(BoneRow row, List<Sighting> seen, ProblemList problems) {
    Gathered bone =
        bones.computeIfAbsent(
            Key.of(row), k -> new Gathered(row, new TreeMap<>(), new ArrayList<>()));
    agrees(row, bone.first(), problems);
    row.values()
        .forEach(
            (code, value) -> {
              if (bone.values().putIfAbsent(code, value) != null) {
                problems.cell(
                    row.number(),
                    "measurement",
                    code.value(),
                    "the bone has this measurement further up, too (the bone begins in row "
                        + bone.first().number()
                        + ")",
                    "Keep one value, or tell two bones apart by a column bone.");
              }
            });
    bone.seen().addAll(seen);
  }

  /** What is said of the bone must be the same on each of its rows. */
  private static void agrees(BoneRow row, BoneRow first, ProblemList problems) {
    same(row, first, "taxon", row.taxon(), first.taxon(), problems);
    same(row, first, "flags", Optional.of(row.state()), Optional.of(first.state()), problems);
    same(row, first, "body_length", row.bodyLengthMm(), first.bodyLengthMm(), problems);
    same(row, first, "body_mass", row.bodyMassG(), first.bodyMassG(), problems);
  }

  private static <T> void same(
      BoneRow row,
      BoneRow first,
      String column,
      Optional<T> here,
      Optional<T> there,
      ProblemList problems) {
    if (here.isPresent() && !Objects.equals(here, there)) {
      problems.column(
          row.number(),
          column,
          "the same bone has another entry in row " + first.number(),
          "Write the same on every row of a bone.");
    }
  }

  /** Each bone whole, in the order of the table, with its values as typed. */
  void forEach(BiConsumer<BoneRow, List<Sighting>> taker) {
    bones.values().forEach(bone -> taker.accept(bone.row(), bone.seen()));
  }
}

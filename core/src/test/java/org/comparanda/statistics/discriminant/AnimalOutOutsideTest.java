package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideSet;
import org.comparanda.outside.OutsideTable;
import org.comparanda.outside.OutsideTable.Row;
import org.comparanda.statistics.discriminant.Nearest.Scaling;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Left and right as separate rows: with only the row left out, and with the whole animal. */
class AnimalOutOutsideTest {
  private record Sides(OutsideSet set, GroupedRows rows, Map<String, Integer> rowOfId) {}

  // R 4.2.2, MASS 7.3.58.2, class 7.3.21 and scikit-learn 1.2.1, equal priors. Exact.
  @ParameterizedTest
  @ValueSource(strings = {"crabs", "wolves_group", "wolves_location", "crabs_index_1_to_6"})
  void hitsAreThoseOfOtherPrograms(String name) {
    Sides sides = sides(name);
    OutsideCheck check =
        OutsideCheck.named(
            "animal-out-" + name,
            "R 4.2.2 MASS lda, class knn; scikit-learn 1.2.1: expected/e_animal_out*.csv");
    GroupedRows animals = sides.rows();
    GroupedRows alone = animals.eachRowItsOwnUnit();
    Priors priors = Priors.equal(animals.groups());
    for (Row row : OutsideTable.read("expected/e_animal_out.csv").where("set", name).rows()) {
      if (row.text("method").equals("qda") && !row.has("leave_one_animal_out")) {
        continue;
      }
      Discriminant method =
          switch (row.text("method")) {
            case "lda" -> new Linear();
            case "qda" -> new Quadratic();
            default -> new Nearest(1, Scaling.NONE);
          };
      String what = name + ", " + row.text("method");
      check.exact(
          what + ", row out",
          row.count("naive_leave_one_specimen_out"),
          Trial.of(alone, method, priors).hits().hits());
      check.exact(
          what + ", animal out",
          row.count("leave_one_animal_out"),
          Trial.of(animals, method, priors).hits().hits());
    }
    for (Row row :
        OutsideTable.read("expected/e_animal_out_sklearn.csv")
            .where("set", name)
            .where("method", "lda_lsqr_auto")
            .rows()) {
      check.exact(
          name + ", lsqr auto, row out",
          row.count("naive_leave_one_specimen_out"),
          Trial.of(alone, new ShrunkPerGroup(), priors).hits().hits());
      check.exact(
          name + ", lsqr auto, animal out",
          row.count("leave_one_animal_out"),
          Trial.of(animals, new ShrunkPerGroup(), priors).hits().hits());
    }
  }

  // MASS: posteriors of lda with the row and with the animal left out. 1e-8 absolute; crabs 1e-7
  // (ill-conditioned, INDEX.md).
  @ParameterizedTest
  @ValueSource(strings = {"crabs", "wolves_group", "wolves_location", "crabs_index_1_to_6"})
  void posteriorsAreThoseOfMass(String name) {
    Sides sides = sides(name);
    OutsideCheck check =
        OutsideCheck.named(
            "animal-out-posteriors-" + name,
            "R 4.2.2 MASS 7.3.58.2 lda: expected/e_animal_out_posteriors.csv");
    double allowed = name.startsWith("crabs") ? 1e-7 : 1e-8;
    Priors priors = Priors.equal(sides.rows().groups());
    Trial animals = Trial.of(sides.rows(), new Linear(), priors);
    Trial alone = Trial.of(sides.rows().eachRowItsOwnUnit(), new Linear(), priors);
    for (Row row :
        OutsideTable.read("expected/e_animal_out_posteriors.csv").where("set", name).rows()) {
      int i = sides.rowOfId().get(row.text("id"));
      int g = sides.set().group(row.text("class"));
      String what = name + ", " + row.text("id") + ", " + row.text("class");
      check.absolute(
          what + ", row out",
          row.number("posterior_specimen_out"),
          value(alone.rows().get(i).shares()).of(g),
          allowed);
      check.absolute(
          what + ", animal out",
          row.number("posterior_animal_out"),
          value(animals.rows().get(i).shares()).of(g),
          allowed);
    }
  }

  private static Sides sides(String name) {
    boolean crabs = name.startsWith("crabs");
    OutsideSet set = OutsideSet.named(crabs ? "crabs" : name);
    OutsideTable animals = OutsideTable.read("data/crabs.csv");
    List<Row> noise =
        OutsideTable.read(crabs ? "data/crabs_side_noise.csv" : "data/wolves_side_noise.csv")
            .rows();
    GroupedRows.Builder builder = GroupedRows.builder(set.variables().size(), set.classes().size());
    Map<String, Integer> rowOfId = new HashMap<>();
    for (Row row : noise) {
      String id = row.text(crabs ? "crab_id" : "wolf_id");
      if (name.equals("crabs_index_1_to_6")
          && animals.where("id", id).rows().get(0).count("index") > 6) {
        continue;
      }
      int animal = set.row(id);
      double[] x = set.rows().row(animal);
      for (int j = 0; j < x.length; j++) {
        x[j] += row.number((crabs ? "d" : "d_") + set.variables().get(j)) / (crabs ? 100 : 10);
      }
      rowOfId.put(id + row.text("side"), rowOfId.size());
      builder.add(set.rows().group(animal), animal, x);
    }
    return new Sides(set, builder.build(), rowOfId);
  }
}

package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideSet;
import org.comparanda.outside.OutsideTable;
import org.comparanda.outside.OutsideTable.Row;
import org.comparanda.statistics.Distributions;
import org.junit.jupiter.api.Test;

class TypicalityOutsideTest {
  private static final List<String> INVENTED = List.of("giant", "tiny", "mean_gentoo");

  // R 4.2.2, stats: mahalanobis(), pf(lower = FALSE). 1e-8 relative: D2 carries the condition of W
  // (about 1e5 for the penguins with grams beside millimetres), and a tail of 1e-20 some 40 times
  // its relative error.
  @Test
  void distancesAndTypicalitiesAreThoseOfR() {
    OutsideCheck check =
        OutsideCheck.named(
            "typicality", "R 4.2.2 mahalanobis(), pf(), pchisq(): expected/c_typicality.csv");
    OutsideSet voles = OutsideSet.named("microtus_ref");
    OutsideTable unidentified = OutsideTable.read("data/microtus_unidentified.csv");
    OutsideSet penguins = OutsideSet.named("penguins");
    GroupDistances toVoles = distances(voles.rows());
    GroupDistances toPenguins = distances(penguins.rows());
    GroupDistances toMostPenguins = distances(withoutEveryNinth(penguins.rows()));
    for (Row row : OutsideTable.read("expected/c_typicality.csv").rows()) {
      String id = row.text("id");
      switch (row.text("set")) {
        case "microtus_unidentified" -> {
          Row vole = unidentified.where("id", id).rows().get(0);
          compare(check, row, toVoles, voles, OutsideSet.values(vole, voles.variables()));
        }
        case "penguins_every_ninth_complete_row_held_out" ->
            compare(check, row, toMostPenguins, penguins, penguins.rows().row(penguins.row(id)));
        case "penguins_invented_rows" ->
            compare(check, row, toPenguins, penguins, invented(id, penguins.rows()));
        default -> throw new AssertionError(row.text("set"));
      }
    }
  }

  private static void compare(
      OutsideCheck check, Row row, GroupDistances distances, OutsideSet set, double[] x) {
    GroupDistance ours = distances.to(x).get(set.group(row.text("class")));
    String what = row.text("set") + ", " + row.text("id") + ", " + row.text("class");
    // The mean of a group itself has D2 = 0 for it; both programs leave rounding, about 1e-25.
    if (row.number("d2_pooled") < 1e-15) {
      check.absolute(what + ", D2", 0, ours.squared(), 1e-15);
    } else {
      check.relative(what + ", D2", row.number("d2_pooled"), ours.squared(), 1e-8);
    }
    check.relative(what + ", typicality", row.number("p_F_pooled"), ours.typicality(), 1e-8);
    check.relative(
        what + ", chi-square",
        row.number("p_chi2_pooled"),
        Distributions.chiSquareUpperTail(ours.squared(), set.variables().size()),
        1e-8);
  }

  private static GroupDistances distances(GroupedRows rows) {
    return value(GroupDistances.of(GroupMoments.of(rows)));
  }

  private static GroupedRows withoutEveryNinth(GroupedRows rows) {
    GroupedRows.Builder builder = GroupedRows.builder(rows.columns(), rows.groups());
    for (int i = 0; i < rows.rows(); i++) {
      if (i % 9 != 0) {
        builder.add(rows.group(i), i, rows.row(i));
      }
    }
    return builder.build();
  }

  private static double[] invented(String id, GroupedRows penguins) {
    assertTrue(INVENTED.contains(id), id);
    return switch (id) {
      case "giant" -> new double[] {70, 25, 260, 9000};
      case "tiny" -> new double[] {25, 10, 140, 1500};
      default -> GroupMoments.of(penguins).mean(2);
    };
  }
}

package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideSet;
import org.comparanda.statistics.Distributions;
import org.junit.jupiter.api.Test;

/**
 * Painted turtles (Jolicoeur and Mosimann 1960) and wolves (Jolicoeur 1959): figures computed
 * outside this project, rounded as given; a check allows half a unit of the last digit given.
 */
class HandbookFactsTest {
  private static final OutsideCheck CHECK =
      OutsideCheck.named(
          "handbook-facts",
          "Jolicoeur and Mosimann 1960; Jolicoeur 1959; figures D18-D21, I10, I11, I19, I20");
  private static final OutsideSet TURTLES =
      OutsideSet.of("tortues", "tortues", "sex", List.of("length_mm", "width_mm", "height_mm"));
  private static final int FEMALE = 0;
  private static final int MALE = 1;

  // D18 and D19: shells that no turtle has; the shares are sure, the typicality says nothing fits.
  @Test
  void aSureShareMayBelongToAStranger() {
    DiscriminantModel model = value(new Linear().fit(TURTLES.rows(), Priors.equal(2)));
    GroupDistances distances = distances(TURTLES.rows());
    CHECK.absolute("L180 W150 H40, share male", 0.99957, model.shares(180, 150, 40).of(MALE), 5e-6);
    assertTrue(
        distances.to(180, 150, 40).stream()
            .allMatch(d -> Distributions.chiSquareUpperTail(d.squared(), 3) < 1e-15));
    assertTrue(distances.to(180, 150, 40).stream().allMatch(d -> d.typicality() < 1e-6));
    CHECK.absolute("L140 W80 H50, share male", 0.9057, model.shares(140, 80, 50).of(MALE), 5e-5);
    CHECK.absolute(
        "L140 W80 H50, chi-square typicality",
        8.2e-18,
        distances.to(140, 80, 50).stream()
            .mapToDouble(d -> Distributions.chiSquareUpperTail(d.squared(), 3))
            .max()
            .orElseThrow(),
        0.05e-18);
  }

  // D20 and D21: an ordinary shell that could be either, and a clear one (chi-square typicality).
  @Test
  void ordinaryShells() {
    DiscriminantModel model = value(new Linear().fit(TURTLES.rows(), Priors.equal(2)));
    GroupDistances distances = distances(TURTLES.rows());
    CHECK.absolute("L127 W97 H47, share female", 0.553, model.shares(127, 97, 47).of(FEMALE), 5e-4);
    CHECK.absolute(
        "L127 W97 H47, typicality male",
        0.78,
        Distributions.chiSquareUpperTail(distances.squared(MALE, 127, 97, 47), 3),
        5e-3);
    CHECK.absolute(
        "L127 W97 H47, typicality female",
        0.88,
        Distributions.chiSquareUpperTail(distances.squared(FEMALE, 127, 97, 47), 3),
        5e-3);
    CHECK.absolute(
        "L136 W103 H52, share female", 0.8807, model.shares(136, 103, 52).of(FEMALE), 5e-5);
    CHECK.absolute(
        "L136 W103 H52, typicality female",
        0.997,
        Distributions.chiSquareUpperTail(distances.squared(FEMALE, 136, 103, 52), 3),
        5e-4);
  }

  // I10: D2 between the sexes, raw and in natural logs.
  @Test
  void distancesBetweenTheSexes() {
    CHECK.absolute(
        "turtles, D2 raw", 3.425057, distances(TURTLES.rows()).squaredBetween(0, 1), 5e-7);
    CHECK.absolute(
        "turtles, D2 of logs",
        3.883167,
        distances(logs(TURTLES.rows())).squaredBetween(0, 1),
        5e-7);
  }

  // I11: equal priors, raw: 24 and 19 of 24 on the rows themselves, 23 and 19 held out; logs: 23
  // and
  // 19 both ways.
  @Test
  void hitsAmongTurtles() {
    hits("turtles raw, male", TURTLES.rows(), MALE, 24, 23);
    hits("turtles raw, female", TURTLES.rows(), FEMALE, 19, 19);
    hits("turtles logs, male", logs(TURTLES.rows()), MALE, 23, 23);
    hits("turtles logs, female", logs(TURTLES.rows()), FEMALE, 19, 19);
  }

  // I19 and I20: wolves by place and by sex, three measurements. I19 does not state its priors; its
  // 15 of 16 with x1, x3, x7 is the count for priors by group size, as I20 has them.
  @Test
  void hitsAmongWolves() {
    OutsideSet places = OutsideSet.named("wolves_location");
    CHECK.absolute(
        "wolves by place, D2", 75.5045, distances(places.rows()).squaredBetween(0, 1), 5e-5);
    hits("wolves by place, Arctic", places.rows(), 0, 16, 16);
    hits("wolves by place, Rocky Mountain", places.rows(), 1, 9, 9);
    Trial three =
        Trial.of(places.rows().forColumns(0, 2, 6), new Linear(), Priors.counts(places.rows()));
    CHECK.exact("wolves by place, x1 x3 x7, priors by counts, Arctic", 15, three.hits(0).hits());
    CHECK.exact(
        "wolves by place, x1 x3 x7, priors by counts, Rocky Mountain", 9, three.hits(1).hits());
    OutsideSet sexes =
        OutsideSet.of(
            "wolves_sex",
            "wolves",
            "sex",
            List.of("palatal_length", "zygomatic_width", "palatal_width_outside_m1"));
    Trial bySex = Trial.of(sexes.rows(), new Linear(), Priors.equal(2));
    CHECK.exact("wolves by sex, female", 8, bySex.hits(0).hits());
    CHECK.exact("wolves by sex, male", 15, bySex.hits(1).hits());
    OutsideSet four = OutsideSet.named("wolves_group");
    CHECK.exact(
        "wolves, four groups, priors by counts",
        23,
        Trial.of(four.rows(), new Linear(), Priors.counts(four.rows())).hits().hits());
  }

  private static void hits(String what, GroupedRows rows, int group, int own, int heldOut) {
    DiscriminantModel model = value(new Linear().fit(rows, Priors.equal(2)));
    int hits = 0;
    for (int i = 0; i < rows.rows(); i++) {
      hits += rows.group(i) == group && model.shares(rows.row(i)).largest() == group ? 1 : 0;
    }
    CHECK.exact(what, own, hits);
    CHECK.exact(
        what + ", held out",
        heldOut,
        Trial.of(rows, new Linear(), Priors.equal(2)).hits(group).hits());
  }

  private static GroupDistances distances(GroupedRows rows) {
    return value(GroupDistances.of(GroupMoments.of(rows)));
  }

  static GroupedRows logs(GroupedRows rows) {
    GroupedRows.Builder builder = GroupedRows.builder(rows.columns(), rows.groups());
    for (int i = 0; i < rows.rows(); i++) {
      double[] x = rows.row(i);
      for (int j = 0; j < x.length; j++) {
        x[j] = Math.log(x[j]);
      }
      builder.add(rows.group(i), i, x);
    }
    return builder.build();
  }
}

package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;

/**
 * A trial: every row judged by the units that are not its own, in the order of the rows.
 *
 * <p>Priors stay as given. Methods that live on moments are held out exactly by {@link
 * UnitMoments}, which gives what refitting gives; the others are fitted again for each unit.
 */
public record Trial(List<TrialRow> rows) {
  public Trial {
    rows = List.copyOf(rows);
  }

  /** Holds out each unit of the rows in turn. */
  public static Trial of(GroupedRows rows, Discriminant method, Priors priors) {
    return of(rows, rows, method, priors);
  }

  /**
   * Offers rows, for instance the single bones of animals, to the fits of {@code shelf} without
   * their unit; units and groups carry the same numbers in both.
   */
  public static Trial of(
      GroupedRows shelf, GroupedRows offered, Discriminant method, Priors priors) {
    UnitMoments units = UnitMoments.of(shelf);
    Map<Integer, Judge> judges = new HashMap<>();
    List<TrialRow> judged = new ArrayList<>(offered.rows());
    for (int i = 0; i < offered.rows(); i++) {
      int unit = offered.unit(i);
      Judge judge =
          judges.computeIfAbsent(unit, u -> Judge.of(shelf, units.without(u), u, method, priors));
      judged.add(judge.judge(i, unit, offered.group(i), offered.row(i)));
    }
    return new Trial(judged);
  }

  /**
   * Offers the rows of one fold's units to what all other units say, whatever the method tunes on
   * them inside: one outer fold.
   *
   * @param stopped when it says yes, the fit ends on the way and no row has shares
   */
  public static Trial ofFold(
      GroupedRows rows,
      Set<Integer> fold,
      Discriminant method,
      Priors priors,
      BooleanSupplier stopped) {
    GroupedRows rest = rows.withoutUnits(fold);
    Judge judge =
        new Judge(
            GroupMoments.of(rest),
            method.fit(rest, priors, stopped),
            GroupDistances.of(GroupMoments.of(rest)));
    List<TrialRow> judged = new ArrayList<>();
    for (int i = 0; i < rows.rows(); i++) {
      if (fold.contains(rows.unit(i))) {
        judged.add(judge.judge(i, rows.unit(i), rows.group(i), rows.row(i)));
      }
    }
    return new Trial(judged);
  }

  /** Rows whose largest share is their true group's, of all. */
  public Proportion hits() {
    return hitsAmong(rows);
  }

  /** Rows of one group whose largest share is that group's. */
  public Proportion hits(int group) {
    return hitsAmong(rows.stream().filter(r -> r.group() == group).toList());
  }

  private static Proportion hitsAmong(List<TrialRow> some) {
    return new Proportion((int) some.stream().filter(TrialRow::hit).count(), some.size());
  }

  private record Judge(
      GroupMoments left, Outcome<DiscriminantModel> model, Outcome<GroupDistances> distances) {
    static Judge of(
        GroupedRows shelf, GroupMoments left, int unit, Discriminant method, Priors priors) {
      return new Judge(left, method.fitWithout(unit, shelf, left, priors), GroupDistances.of(left));
    }

    TrialRow judge(int row, int unit, int group, double[] values) {
      return new TrialRow(
          row,
          unit,
          group,
          left.rows(),
          left.groupsPresent(),
          model.then(m -> Outcome.of(m.shares(values))),
          distances.then(d -> Outcome.of(d.to(values))));
    }
  }
}

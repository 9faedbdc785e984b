package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;
import org.comparanda.statistics.discriminant.Folds;
import org.comparanda.statistics.discriminant.GroupedRows;
import org.comparanda.statistics.discriminant.Priors;
import org.comparanda.statistics.discriminant.ShareScore;
import org.comparanda.statistics.discriminant.Shares;
import org.comparanda.statistics.discriminant.Trial;
import org.comparanda.statistics.discriminant.TrialRow;

/** Compares the methods on one sample by outer folds; can be stopped between two folds. */
final class OuterFolds {
  static final int FOLDS = 10;
  static final long SEED = 20417;

  private final Sample sample;
  private final Priors priors;
  private final BooleanSupplier stopped;
  private final GroupedRows rows;
  private final Folds folds;

  private OuterFolds(Sample sample, Priors priors, BooleanSupplier stopped) {
    this.sample = sample;
    this.priors = priors;
    this.stopped = stopped;
    this.rows = sample.rows(Sample.Offer.ANIMAL);
    this.folds = Folds.of(rows, FOLDS, SEED);
  }

  /** The score of every method but {@code AUTO}; not estimable when stopped or under two folds. */
  static Outcome<List<MethodScore>> scores(Sample sample, Priors priors, BooleanSupplier stopped) {
    OuterFolds outer = new OuterFolds(sample, priors, stopped);
    if (outer.folds.units().size() < 2) {
      return Outcome.none(
          "Fewer than two animals have this set.", "Leave measurements out, or add animals.");
    }
    List<MethodScore> scores = new ArrayList<>();
    for (Method method : Method.values()) {
      if (method != Method.AUTO) {
        Optional<MethodScore> score = outer.score(method);
        if (score.isEmpty()) {
          return Outcome.none("The comparison of methods was stopped.", "Start it again.");
        }
        scores.add(score.get());
      }
    }
    return Outcome.of(List.copyOf(scores));
  }

  /** None when stopped. */
  private Optional<MethodScore> score(Method method) {
    List<TrialRow> judged = new ArrayList<>();
    for (Set<Integer> fold : folds.units()) {
      if (stopped.getAsBoolean()) {
        return Optional.empty();
      }
      judged.addAll(
          Trial.ofFold(rows, fold, MethodChoice.of(rows, sample.taxa(), method).method(), priors)
              .rows());
    }
    double log = 0;
    double brier = 0;
    int hits = 0;
    for (TrialRow row : judged) {
      log += row.shares().fold(s -> ShareScore.log(s, row.group()), none -> ShareScore.WORST_LOG);
      brier +=
          row.shares().fold(s -> ShareScore.brier(s, row.group()), none -> ShareScore.WORST_BRIER);
      hits += row.shares().fold(Shares::largest, none -> -1) == row.group() ? 1 : 0;
    }
    int n = judged.size();
    return Optional.of(new MethodScore(method, new Proportion(hits, n), log / n, brier / n));
  }
}

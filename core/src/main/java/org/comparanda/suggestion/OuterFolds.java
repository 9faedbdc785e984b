package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;
import org.comparanda.statistics.discriminant.Discriminant;
import org.comparanda.statistics.discriminant.Folds;
import org.comparanda.statistics.discriminant.GroupedRows;
import org.comparanda.statistics.discriminant.Priors;
import org.comparanda.statistics.discriminant.ShareScore;
import org.comparanda.statistics.discriminant.Shares;
import org.comparanda.statistics.discriminant.Trial;
import org.comparanda.statistics.discriminant.TrialRow;

/**
 * Compares the methods on one sample by outer folds. Can be stopped, also inside a fold, and goes
 * on from the methods that were done when it is asked again. Safe for many threads.
 */
final class OuterFolds {
  static final int FOLDS = 10;
  static final long SEED = 20417;

  private final Sample sample;
  private final Priors priors;
  private final GroupedRows rows;
  private final Folds folds;
  private final Map<Method, MethodScore> done = new ConcurrentHashMap<>();

  OuterFolds(Sample sample, Priors priors) {
    this.sample = sample;
    this.priors = priors;
    this.rows = sample.rows(Sample.Offer.ANIMAL);
    this.folds = Folds.of(rows, FOLDS, SEED);
  }

  /**
   * The score of every method but {@code AUTO}; not estimable when stopped or under two folds.
   *
   * @param stopped asked often; when it says yes, what is under way is dropped
   */
  Outcome<List<MethodScore>> scores(BooleanSupplier stopped) {
    if (folds.units().size() < 2) {
      return Outcome.none(
          "Fewer than two animals have this set.", "Leave measurements out, or add animals.");
    }
    List<MethodScore> scores = new ArrayList<>();
    for (Method method : Method.values()) {
      if (method != Method.AUTO) {
        Optional<MethodScore> score =
            Optional.ofNullable(done.get(method)).or(() -> score(method, stopped));
        if (score.isEmpty()) {
          return Outcome.none("The comparison of methods was stopped.", "Start it again.");
        }
        done.put(method, score.get());
        scores.add(score.get());
      }
    }
    return Outcome.of(List.copyOf(scores));
  }

  /** None when stopped. */
  private Optional<MethodScore> score(Method method, BooleanSupplier stopped) {
    List<TrialRow> judged = new ArrayList<>();
    for (Set<Integer> fold : folds.units()) {
      Discriminant fitted = MethodChoice.of(rows, sample.taxa(), method).method();
      judged.addAll(Trial.ofFold(rows, fold, fitted, priors, stopped).rows());
      if (stopped.getAsBoolean()) {
        return Optional.empty();
      }
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

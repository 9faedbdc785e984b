package org.comparanda.stock;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.comparanda.outside.ProofRecord;
import org.comparanda.reference.Shelf;
import org.comparanda.statistics.Distributions;
import org.junit.jupiter.api.Test;

/**
 * The wanted list against simulation: shelves of the demo's generator, five more animals from the
 * same generator, and the log score on animals that neither saw.
 */
class WantedProofTest {
  private static final int FULL = 50;
  private static final int SMALL = 4;
  private static final long FIRST_SEED = 1000;

  @Test
  void fiveAnimalsOfTheTopEntryHelpMoreThanFiveOfARandomOne() throws IOException {
    int seeds = ProofRecord.full() ? FULL : SMALL;
    HeldOutScore score = new HeldOutScore(ProofRecord.full() ? 12 : 3);
    List<Double> overRandom = new ArrayList<>();
    List<Double> overFewest = new ArrayList<>();
    double topMean = 0;
    for (int i = 0; i < seeds; i++) {
      long seed = FIRST_SEED + 100L * i;
      Shelf shelf = SimulatedShelf.of(seed);
      List<Shelf> more =
          List.of(
              SimulatedShelf.of(seed + 1),
              SimulatedShelf.of(seed + 2),
              SimulatedShelf.of(seed + 3));
      List<Wanted.Entry> list = Wanted.withDefaults().of(shelf);
      SplittableRandom random = new SplittableRandom(seed);
      double top = score.gain(shelf, list.get(0), more);
      topMean += top / seeds;
      overRandom.add(top - score.gain(shelf, list.get(random.nextInt(list.size())), more));
      overFewest.add(top - score.gain(shelf, fewest(shelf, list, random), more));
    }
    Paired random = Paired.of(overRandom);
    Paired fewest = Paired.of(overFewest);
    String result =
        String.format(
            Locale.ROOT,
            "gain of the top entry %.4f nat; over a random entry %s; over fewest animals first %s",
            topMean,
            random.text(),
            fewest.text());
    if (ProofRecord.full()) {
      ProofRecord.held(
          "wanted-list",
          "Five simulated animals of the wanted list's top entry raise the held-out log score more"
              + " than five of a random entry, and no less than of the entry with fewest animals",
          seeds + " shelves",
          FIRST_SEED,
          result);
      assertTrue(random.lower() > 0, result);
      assertTrue(fewest.mean() >= 0, result);
    } else {
      assertTrue(random.mean() > 0, result);
    }
  }

  /** The entry with fewest animals; of several one at random. */
  private static Wanted.Entry fewest(
      Shelf shelf, List<Wanted.Entry> list, SplittableRandom random) {
    Stock stock = Stock.of(shelf);
    int least = list.stream().mapToInt(e -> animals(stock, e)).min().orElseThrow();
    List<Wanted.Entry> all =
        list.stream()
            .filter(e -> animals(stock, e) == least)
            .sorted(Comparator.comparing(Wanted.Entry::taxon).thenComparing(Wanted.Entry::element))
            .toList();
    return all.get(random.nextInt(all.size()));
  }

  private static int animals(Stock stock, Wanted.Entry entry) {
    return stock.cells().stream()
        .filter(c -> c.taxon().equals(entry.taxon()) && c.element().equals(entry.element()))
        .mapToInt(Stock.Cell::animals)
        .sum();
  }

  /** Mean of paired differences with its 95 % interval by t. */
  private record Paired(double mean, double half) {
    static Paired of(List<Double> differences) {
      int n = differences.size();
      double mean = differences.stream().mapToDouble(d -> d).sum() / n;
      double squares = differences.stream().mapToDouble(d -> (d - mean) * (d - mean)).sum();
      double error = Math.sqrt(squares / (n - 1.0) / n);
      return new Paired(mean, Distributions.tQuantile(0.975, n - 1.0) * error);
    }

    double lower() {
      return mean - half;
    }

    String text() {
      return String.format(
          Locale.ROOT, "%.4f (95 %% %.4f to %.4f)", mean, mean - half, mean + half);
    }
  }
}

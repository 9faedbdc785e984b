package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.reference.AnimalId;
import org.comparanda.statistics.Outcome;

/**
 * Several measurements of one animal: one line with all of them where at least five animals per
 * measurement have them all, otherwise the best single one.
 *
 * @param best the line to use
 * @param bestSingle the best line with one predictor, by held-out error on the same animals
 * @param gainPercent by how much the held-out error of {@code best} is smaller than that of the
 *     best single line, per cent; below zero where it is larger; 0 where they are the same line
 */
public record SeveralBones(FittedLine best, FittedLine bestSingle, double gainPercent) {
  private static final int ANIMALS_PER_MEASUREMENT = 5;

  static Outcome<SeveralBones> of(SizeDesk desk, SizeQuestion question) {
    Optional<FittedLine> all =
        desk.line(question)
            .value()
            .filter(line -> line.n() >= ANIMALS_PER_MEASUREMENT * question.from().size())
            .filter(line -> error(line).isPresent());
    SizeDesk same = all.map(line -> desk.only(animals(line))).orElse(desk);
    List<FittedLine> singles = new ArrayList<>();
    for (String from : question.from()) {
      same.line(question.withFrom(List.of(from)))
          .value()
          .filter(line -> error(line).isPresent())
          .ifPresent(singles::add);
    }
    Optional<FittedLine> bestSingle =
        singles.stream().min(Comparator.comparingDouble(line -> error(line).orElseThrow()));
    if (bestSingle.isEmpty()) {
      return Outcome.none(
          "None of " + question.from() + " has a line to " + question.predict() + ".",
          "Choose other measurements, or measure more animals.");
    }
    FittedLine single = bestSingle.get();
    return Outcome.of(
        all.map(
                line ->
                    new SeveralBones(
                        line,
                        single,
                        100 * (1 - error(line).orElseThrow() / error(single).orElseThrow())))
            .orElseGet(() -> new SeveralBones(single, single, 0)));
  }

  private static Optional<Double> error(FittedLine line) {
    return line.pressRootMeanSquare().value().filter(e -> e > 0);
  }

  private static Set<AnimalId> animals(FittedLine line) {
    Set<AnimalId> animals = new HashSet<>();
    line.points().forEach(p -> animals.addAll(p.animals()));
    return animals;
  }
}

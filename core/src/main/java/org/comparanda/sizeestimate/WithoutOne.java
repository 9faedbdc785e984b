package org.comparanda.sizeestimate;

import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.comparanda.reference.AnimalId;
import org.comparanda.statistics.Outcome;

/**
 * A line fitted again without one animal.
 *
 * @param number the number under which an animal stands now
 * @param fit the line without the animal of that number
 */
record WithoutOne(UnaryOperator<AnimalId> number, Function<AnimalId, Outcome<FittedLine>> fit) {
  /** The same, each line changed after its fit. */
  WithoutOne changed(UnaryOperator<FittedLine> change) {
    return new WithoutOne(number, id -> fit.apply(id).then(line -> Outcome.of(change.apply(line))));
  }
}

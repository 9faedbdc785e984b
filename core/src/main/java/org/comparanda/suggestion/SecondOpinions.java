package org.comparanda.suggestion;

import java.util.List;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;

/**
 * All methods compared once for an element and a state of the shelf, by outer folds of animals.
 * Whatever a method tunes is tuned inside, by leaving out one animal at a time. The figures decide
 * nothing by themselves: a house's choice is a person's.
 *
 * @param animals those that have the whole set
 * @param folds outer folds
 * @param seed by which the animals were dealt
 * @param byRule the method that {@code auto} takes here
 * @param methods in the order of {@link Method}
 * @param shelfVersion the state of the shelf
 */
public record SecondOpinions(
    ElementKey element,
    List<MeasurementCode> measurements,
    int animals,
    int folds,
    long seed,
    String byRule,
    List<MethodScore> methods,
    String shelfVersion) {
  public SecondOpinions {
    measurements = List.copyOf(measurements);
    methods = List.copyOf(methods);
  }
}

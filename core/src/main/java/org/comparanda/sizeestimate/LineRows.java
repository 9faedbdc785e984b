package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Design;

/**
 * The points of a line: one per animal.
 *
 * @param points in catalogue order
 * @param leftOut sentences on animals that were left out on purpose
 */
record LineRows(List<LinePoint> points, List<String> leftOut) {
  LineRows {
    points = List.copyOf(points);
    leftOut = List.copyOf(leftOut);
  }

  /** Whether masses of captive animals feed a line. */
  enum CaptiveMass {
    LEFT_OUT,
    USED
  }

  static Outcome<LineRows> of(
      Shelf shelf,
      ShelfQuantities quantities,
      Quantity predict,
      List<Quantity> from,
      SizeQuestion question,
      CaptiveMass captiveMass) {
    boolean mass = predict.isBodyMass() || from.stream().anyMatch(Quantity::isBodyMass);
    List<LinePoint> points = new ArrayList<>();
    int captive = 0;
    int flagged = 0;
    for (Animal animal : shelf.animals()) {
      boolean asked =
          question.taxa().isEmpty() || animal.taxon().filter(question.taxa()::contains).isPresent();
      if (!asked) {
        continue;
      }
      Optional<LinePoint> point = point(animal, quantities, predict, from, question.scale());
      if (point.isEmpty()) {
        continue;
      }
      if (!animal.feedsFits()) {
        flagged++;
      } else if (mass
          && captiveMass == CaptiveMass.LEFT_OUT
          && animal.origin().equalsIgnoreCase("captive")) {
        captive++;
      } else {
        String trouble = trouble(point.get(), predict, from, question.scale());
        if (!trouble.isEmpty()) {
          return Outcome.none(
              animal.id() + ": " + trouble,
              "Correct the value, or ask for the line on raw values.");
        }
        points.add(point.get());
      }
    }
    List<String> leftOut = new ArrayList<>();
    if (captive > 0) {
      leftOut.add(captive + " captive animal(s) left out: captive mass is off.");
    }
    if (flagged > 0) {
      leftOut.add(flagged + " flagged animal(s) left out (cast, young, crushed or the like).");
    }
    return Outcome.of(new LineRows(points, leftOut));
  }

  /** The points on the scale of the fit. */
  Design design(LineScale scale) {
    return Design.of(
        points.stream().map(p -> p.x().stream().map(scale::forward).toList()).toList(),
        points.stream().map(p -> scale.forward(p.y())).toList());
  }

  private static Optional<LinePoint> point(
      Animal animal,
      ShelfQuantities quantities,
      Quantity predict,
      List<Quantity> from,
      LineScale scale) {
    Optional<Double> y = quantities.of(animal, predict, scale);
    List<Double> x = from.stream().flatMap(q -> quantities.of(animal, q, scale).stream()).toList();
    return y.isEmpty() || x.size() < from.size()
        ? Optional.empty()
        : Optional.of(
            new LinePoint(List.of(animal.id()), animal.taxon(), animal.drawer(), x, y.get()));
  }

  private static String trouble(
      LinePoint point, Quantity predict, List<Quantity> from, LineScale scale) {
    if (scale.logs() && !(point.y() > 0)) {
      return predict.name() + " is " + point.y() + ", which has no logarithm.";
    }
    for (int j = 0; j < from.size(); j++) {
      if (scale.logs() && !(point.x().get(j) > 0)) {
        return from.get(j).name() + " is " + point.x().get(j) + ", which has no logarithm.";
      }
    }
    return "";
  }
}

package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.BackTransform;
import org.comparanda.taxon.TaxonName;

/** Turns a line's value at one bone into an estimate in words and numbers. */
record LineAnswer(
    FittedLine line,
    LineModel model,
    Quantity predict,
    List<Quantity> from,
    Correction correction) {
  private static final double FAR = 1.5;

  static LineAnswer of(
      FittedLine line,
      LineModel model,
      Quantity predict,
      List<Quantity> from,
      Correction correction) {
    return new LineAnswer(line, model, predict, from, correction);
  }

  Outcome<SizeEstimate> estimate(Map<String, Double> values, Optional<TaxonName> taxon) {
    List<Double> own = new ArrayList<>();
    List<Double> x = new ArrayList<>();
    for (Quantity q : from) {
      Double value = values.get(q.name());
      if (value == null) {
        return Outcome.none(
            "The bone has no " + q.name() + ".", "Measure it, or choose another line.");
      }
      double on = line.scale().forward(value);
      if (!Double.isFinite(on)) {
        return Outcome.none(
            q.name() + " of \"" + value + "\" can't be used on this line.",
            "A measurement is above zero and finite.");
      }
      own.add(value);
      x.add(on);
    }
    double factor = 1;
    if (correction != Correction.NAIVE) {
      Outcome<BackTransform> factors = line.corrections();
      if (factors.value().isEmpty()) {
        return factors.then(f -> Outcome.none("", ""));
      }
      factor = correction.factor(factors.value().orElseThrow());
    }
    return Outcome.of(answer(own, x, taxon, factor));
  }

  private SizeEstimate answer(
      List<Double> own, List<Double> x, Optional<TaxonName> taxon, double factor) {
    Outcome<Placed> place = line.predict(x, taxon);
    double fit = place.value().map(Placed::fit).orElseGet(() -> model.at(x, taxon));
    Optional<OutsideRange> outside = outside(own);
    Reach reach =
        outside.map(o -> far(o) ? Reach.SCALING_GUESS : Reach.OUTSIDE).orElse(Reach.WITHIN);
    return new SizeEstimate(
        line.scale().back(fit) * factor,
        correction,
        factor,
        place.then(Placed::prediction).then(p -> Outcome.of(p.through(line.scale()::back))),
        place.then(Placed::confidence).then(c -> Outcome.of(c.through(line.scale()::back))),
        reach,
        outside,
        fit,
        place.then(Placed::standardErrorOfNew),
        model.degreesOfFreedom(),
        warnings(reach, outside, taxon));
  }

  private Optional<OutsideRange> outside(List<Double> own) {
    Optional<OutsideRange> worst = Optional.empty();
    List<PredictorRange> ranges = line.xRange();
    for (int j = 0; j < own.size(); j++) {
      Optional<OutsideRange> here = outside(from.get(j), own.get(j), ranges.get(j));
      if (here.isPresent() && worst.map(w -> distance(w) < distance(here.get())).orElse(true)) {
        worst = here;
      }
    }
    return worst;
  }

  private Optional<OutsideRange> outside(Quantity q, double value, PredictorRange range) {
    if (value >= range.low() && value <= range.high()) {
      return Optional.empty();
    }
    boolean above = value > range.high();
    double end = above ? range.high() : range.low();
    double percent = 100 * Math.abs(value - end) / Math.abs(end);
    String amount = percent < 1 ? "less than 1" : String.format(Locale.ROOT, "%.0f", percent);
    String sentence =
        amount
            + " % "
            + (above ? q.dimension().more : q.dimension().less)
            + " than the "
            + (above ? q.dimension().most : q.dimension().least)
            + " "
            + q.noun()
            + (line.question().taxa().isEmpty() ? " on the shelf" : " of this line");
    return Optional.of(
        new OutsideRange(
            q.name(),
            above ? OutsideRange.End.ABOVE : OutsideRange.End.BELOW,
            percent,
            end,
            q.dimension(),
            sentence));
  }

  /** Distance beyond the end as a factor of size, so that both ends compare. */
  private static double distance(OutsideRange o) {
    double ratio = o.percent() / 100;
    return o.end() == OutsideRange.End.ABOVE ? 1 + ratio : 1 / Math.max(1e-9, 1 - ratio);
  }

  private static boolean far(OutsideRange o) {
    return distance(o) > FAR;
  }

  private static String onTree(TreePlace place, Optional<TaxonName> taxon) {
    String name = taxon.map(TaxonName::value).orElse("");
    return switch (place) {
      case OWN_MEAN -> "Read at the tip of " + name + ", through the mean of its animals.";
      case EMPTY_TIP -> "Read at the tip of " + name + ", from where the other taxa put it.";
      case ROOT ->
          (taxon.isEmpty()
                  ? "No taxon is given"
                  : "\"" + name + "\" has no place on the tree of this line")
              + ": read from the root line, with the whole spread between taxa.";
    };
  }

  private List<String> warnings(
      Reach reach, Optional<OutsideRange> outside, Optional<TaxonName> taxon) {
    List<String> warnings = new ArrayList<>();
    outside.ifPresent(o -> warnings.add("This bone is " + o.sentence() + "."));
    if (reach == Reach.SCALING_GUESS) {
      warnings.add(
          "This is a scaling guess: no animal near this size feeds the line, and the interval holds"
              + " only if the line goes on straight.");
    }
    if (line.method() == LineMethod.INVERSE) {
      warnings.add(
          "The line was fitted the other way round and read backwards; the interval is Fieller's.");
    }
    if (line.method() == LineMethod.SMA || line.method() == LineMethod.MA) {
      warnings.add(
          "A major axis describes how two sizes go together; it is not made to predict and gives no"
              + " prediction interval.");
    }
    line.place(taxon).ifPresent(place -> warnings.add(onTree(place, taxon)));
    return warnings;
  }
}

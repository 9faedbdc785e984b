package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;

/** How an answer differs from one that was kept. Numbers are alike only in all their bits. */
record AnswerChanges(AnswerFigures then, AnswerFigures now) {
  private static final int MOST_NAMED = 10;

  List<String> sentences() {
    List<String> all = new ArrayList<>();
    if (!then.sentence().equals(now.sentence()) || then.answer() != now.answer()) {
      all.add("The answer was \"" + then.sentence() + "\" and is \"" + now.sentence() + "\"");
    }
    then.taxa().forEach(old -> all.addAll(ofTaxon(old)));
    for (TaxonFit fit : now.taxa()) {
      if (fit(then, fit.taxon()).isEmpty()) {
        all.add(fit.taxon() + " came into the fit, " + both(fit) + ".");
      }
    }
    if (!then.calibratedList().equals(now.calibratedList())) {
      all.add(
          "The calibrated list was "
              + list(then.calibratedList())
              + " and is "
              + list(now.calibratedList())
              + ".");
    }
    if (!then.method().equals(now.method())) {
      all.add("The method was \"" + then.method() + "\" and is \"" + now.method() + "\".");
    }
    if (then.missing() != now.missing()) {
      all.add("Holes of the shelf: was " + words(then) + ", is " + words(now) + ".");
    }
    animals("came into the fit", id -> !then.animals().containsKey(id), now).ifPresent(all::add);
    animals("went out of the fit", id -> !now.animals().containsKey(id), then).ifPresent(all::add);
    animals("changed in taxon or values", this::changed, now).ifPresent(all::add);
    return all;
  }

  private List<String> ofTaxon(TaxonFit old) {
    Optional<TaxonFit> found = fit(now, old.taxon());
    if (found.isEmpty()) {
      return List.of(old.taxon() + " went out of the fit; it had " + both(old) + ".");
    }
    TaxonFit fresh = found.get();
    List<String> parts = new ArrayList<>();
    number("share", TaxonFit::share, old, fresh).ifPresent(parts::add);
    number("typicality", TaxonFit::typicality, old, fresh).ifPresent(parts::add);
    number("squared distance", TaxonFit::distanceSquared, old, fresh).ifPresent(parts::add);
    if (old.animals() != fresh.animals()) {
      parts.add("animals were " + old.animals() + " and are " + fresh.animals());
    }
    return parts.isEmpty()
        ? List.of()
        : List.of(old.taxon() + ": " + String.join(", ", parts) + ".");
  }

  private static Optional<String> number(
      String name, ToDoubleFunction<TaxonFit> of, TaxonFit old, TaxonFit fresh) {
    double before = of.applyAsDouble(old);
    double after = of.applyAsDouble(fresh);
    if (Double.doubleToLongBits(before) == Double.doubleToLongBits(after)) {
      return Optional.empty();
    }
    String was = figures(before);
    String is = figures(after);
    return Optional.of(
        was.equals(is)
            ? name + " was " + before + " and is " + after
            : name + " was " + was + " and is " + is);
  }

  private static String both(TaxonFit fit) {
    return "share " + figures(fit.share()) + ", typicality " + figures(fit.typicality());
  }

  private static String figures(double value) {
    return String.format(
        Locale.ROOT, value != 0 && Math.abs(value) < 1e-4 ? "%.2e" : "%.4f", value);
  }

  private static Optional<TaxonFit> fit(AnswerFigures figures, TaxonName taxon) {
    return figures.taxa().stream().filter(f -> f.taxon().equals(taxon)).findFirst();
  }

  private boolean changed(AnimalId id) {
    return then.animals().containsKey(id) && !then.animals().get(id).equals(now.animals().get(id));
  }

  private static Optional<String> animals(
      String what, Predicate<AnimalId> which, AnswerFigures among) {
    List<String> ids =
        new TreeSet<>(among.animals().keySet())
            .stream().filter(which).map(AnimalId::value).toList();
    if (ids.isEmpty()) {
      return Optional.empty();
    }
    String more = ids.size() > MOST_NAMED ? ", …" : "";
    return Optional.of(
        Wording.count(ids.size(), "animal")
            + " "
            + what
            + ": "
            + String.join(", ", ids.subList(0, Math.min(MOST_NAMED, ids.size())))
            + more
            + ".");
  }

  private static String list(List<TaxonName> taxa) {
    return taxa.isEmpty() ? "empty" : Wording.all(Wording.names(taxa));
  }

  private static String words(AnswerFigures figures) {
    return switch (figures.missing()) {
      case NOT_FITTED -> "no fit";
      case EXACT_SUBSET -> "whole animals only";
      case FILLED -> "filled";
    };
  }
}

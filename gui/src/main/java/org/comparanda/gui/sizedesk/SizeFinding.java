package org.comparanda.gui.sizedesk;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.SeveralBones;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.sizeestimate.SizeQuestion;
import org.comparanda.sizeestimate.SizesDisagree;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/**
 * What the shelf says to a {@link SizeAsk}.
 *
 * @param ask what was asked
 * @param line the line, or why there is none
 * @param several how the line compares with the best single measurement, where several are asked
 * @param beside the second line, where one was asked for and it stands on other animals
 * @param estimate by the line, where there is every reading that it takes
 * @param estimateBeside by the second line
 * @param disagree bones in hand that can hardly be one animal
 * @param own the animal left out of everything because the bone is its own
 */
public record SizeFinding(
    SizeAsk ask,
    Outcome<FittedLine> line,
    Optional<SeveralBones> several,
    Optional<FittedLine> beside,
    Optional<Outcome<SizeEstimate>> estimate,
    Optional<Outcome<SizeEstimate>> estimateBeside,
    List<SizesDisagree> disagree,
    Optional<Animal> own) {
  public SizeFinding {
    disagree = List.copyOf(disagree);
  }

  /** A line, and where it was chosen among several measurements how it compares. */
  private record Fit(FittedLine line, Optional<SeveralBones> several) {}

  /** Fits and estimates. Takes as long as two fits; off the window's thread. */
  public static SizeFinding of(Shelf shelf, Protocol protocol, SizeAsk ask) {
    SizeDesk desk = desk(shelf, protocol, ask);
    Outcome<Fit> fit = fit(desk, ask, ask.taxa());
    Outcome<FittedLine> line = fit.then(f -> Outcome.of(f.line()));
    Optional<FittedLine> beside =
        besideTaxa(shelf, ask)
            .flatMap(of -> fit(desk, ask, of).value())
            .map(Fit::line)
            .filter(second -> line.value().filter(f -> sameAnimals(f, second)).isEmpty());
    Optional<Animal> own = ask.own().map(shelf::number).flatMap(shelf::animal);
    return new SizeFinding(
        ask,
        line,
        fit.value().flatMap(Fit::several),
        beside,
        line.value().flatMap(f -> estimate(ask, f, own)),
        beside.flatMap(second -> estimate(ask, second, own)),
        InHand.of(ask).notOneAnimal(desk, ask.taxa()),
        own);
  }

  /** The desk that a question is asked of: without the own animal, with the masses chosen. */
  static SizeDesk desk(Shelf shelf, Protocol protocol, SizeAsk ask) {
    SizeDesk all = SizeDesk.of(shelf, protocol);
    SizeDesk weighed = ask.choice().masses() == LineChoice.Masses.ALL ? all.withCaptiveMass() : all;
    return ask.own().map(weighed::without).orElse(weighed);
  }

  private static boolean sameAnimals(FittedLine one, FittedLine other) {
    return one.points().equals(other.points());
  }

  private static Optional<Set<TaxonName>> besideTaxa(Shelf shelf, SizeAsk ask) {
    Set<TaxonName> all = new HashSet<>(shelf.taxa());
    return switch (ask.choice().beside()) {
      case NOTHING -> Optional.empty();
      case ALL -> Optional.of(all);
      case LEFT_OUT -> {
        all.removeAll(ask.taxa());
        yield Optional.of(all);
      }
    };
  }

  private static Outcome<Fit> fit(SizeDesk desk, SizeAsk ask, Set<TaxonName> taxa) {
    if (taxa.isEmpty()) {
      return Outcome.none("No taxon feeds this line.", "Tick at least one taxon that has both.");
    }
    SizeQuestion question = ask.question(taxa);
    if (question.from().size() > 1 && question.line() == LineMethod.OLS) {
      return desk.severalBones(question)
          .then(s -> Outcome.of(new Fit(corrected(ask, s.best()), Optional.of(s))));
    }
    Outcome<FittedLine> line =
        ask.choice()
            .tree()
            .map(tree -> desk.line(question, tree.tree()))
            .orElseGet(() -> desk.line(question));
    return line.then(f -> Outcome.of(new Fit(corrected(ask, f), Optional.empty())));
  }

  /** A correction that the line doesn't have is not applied; the screen says so. */
  private static FittedLine corrected(SizeAsk ask, FittedLine line) {
    return line.corrections().value().isPresent()
        ? line.withCorrection(ask.choice().correction())
        : line;
  }

  private static Optional<Outcome<SizeEstimate>> estimate(
      SizeAsk ask, FittedLine line, Optional<Animal> own) {
    if (!ask.values().keySet().containsAll(line.question().from())) {
      return Optional.empty();
    }
    Optional<TaxonName> taxon = ask.choice().boneTaxon().or(() -> own.flatMap(Animal::taxon));
    return Optional.of(line.estimate(ask.values(), taxon));
  }
}

package org.comparanda.gui.sizedesk;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/**
 * What the shelf says to a {@link SizeAsk}.
 *
 * @param ask what was asked
 * @param line the line, or why there is none
 * @param beside the second line, where one was asked for
 * @param estimate by the line, where there is a reading
 * @param estimateBeside by the second line
 * @param own the animal left out of everything because the bone is its own
 */
public record SizeFinding(
    SizeAsk ask,
    Outcome<FittedLine> line,
    Optional<Outcome<FittedLine>> beside,
    Optional<Outcome<SizeEstimate>> estimate,
    Optional<Outcome<SizeEstimate>> estimateBeside,
    Optional<Animal> own) {

  /** Fits and estimates. Takes as long as two fits; off the window's thread. */
  public static SizeFinding of(Shelf shelf, Protocol protocol, SizeAsk ask) {
    SizeDesk all = SizeDesk.of(shelf, protocol);
    SizeDesk desk = ask.own().map(all::without).orElse(all);
    Outcome<FittedLine> line = fit(desk, ask, ask.taxa());
    Optional<Outcome<FittedLine>> beside = besideTaxa(shelf, ask).map(of -> fit(desk, ask, of));
    return new SizeFinding(
        ask,
        line,
        beside,
        estimate(ask, line),
        beside.flatMap(second -> estimate(ask, second)),
        ask.own().flatMap(shelf::animal));
  }

  private static Optional<Set<TaxonName>> besideTaxa(Shelf shelf, SizeAsk ask) {
    Set<TaxonName> all = new HashSet<>(shelf.taxa());
    return switch (ask.beside()) {
      case NOTHING -> Optional.empty();
      case ALL -> Optional.of(all);
      case LEFT_OUT -> {
        all.removeAll(ask.taxa());
        yield Optional.of(all);
      }
    };
  }

  private static Outcome<FittedLine> fit(SizeDesk desk, SizeAsk ask, Set<TaxonName> taxa) {
    if (taxa.isEmpty()) {
      return Outcome.none("No taxon feeds this line.", "Tick at least one taxon that has both.");
    }
    return desk.line(ask.question(taxa))
        .then(line -> Outcome.of(line.withCorrection(ask.correction())));
  }

  private static Optional<Outcome<SizeEstimate>> estimate(SizeAsk ask, Outcome<FittedLine> line) {
    return ask.reading()
        .map(value -> line.then(fitted -> fitted.estimate(Map.of(ask.from(), value))));
  }
}

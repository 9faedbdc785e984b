package org.comparanda.cli;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.sizeestimate.SizeQuestion;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * The lesson of the slender snout: the jaw of a slender-snouted animal of the demo shelf on the
 * line of the broad-snouted ones and on the line of all. Computed from the shelf as it is; nothing
 * is told where somebody has taken that animal away.
 */
record SnoutLesson(Terminal terminal, Shelf shelf, Protocol protocol, TaxonTree tree) {
  private static final AnimalId SLENDER = new AnimalId("HB-0252");
  private static final TaxonName BROAD = new TaxonName("Crocodylidae");
  private static final SizeQuestion QUESTION = SizeQuestion.of("body_length", "mandible.ML");

  void tell() {
    SizeDesk desk = SizeDesk.of(shelf, protocol);
    desk.line(QUESTION).value().stream()
        .flatMap(line -> line.points().stream())
        .filter(point -> point.animals().contains(SLENDER))
        .findFirst()
        .ifPresent(point -> tell(desk.without(SLENDER), point));
  }

  private void tell(SizeDesk others, LinePoint jaw) {
    Set<TaxonName> broad =
        shelf.taxa().stream()
            .filter(t -> tree.lineage(t).contains(BROAD))
            .collect(Collectors.toSet());
    Optional<String> byBroad = row("broad snouts alone", others, broad, jaw);
    Optional<String> byAll = row("all taxa", others, Set.of(), jaw);
    if (byBroad.isEmpty() || byAll.isEmpty()) {
      return;
    }
    terminal.say(
        "A lesson on size. "
            + SLENDER
            + " has a slender snout and is "
            + metres(jaw.y())
            + " m long; its jaw ("
            + Math.round(jaw.x().get(0))
            + " mm) on two lines without it:");
    terminal.say(byBroad.get());
    terminal.say(byAll.get());
    terminal.say(
        "  The tighter line is the wrong one: its figures know broad snouts only. Find out what a"
            + " bone is first (docs/size-desk.md).");
  }

  private static Optional<String> row(
      String name, SizeDesk desk, Set<TaxonName> taxa, LinePoint jaw) {
    Optional<FittedLine> line = desk.line(QUESTION.withTaxa(taxa)).value();
    return line.flatMap(
        l ->
            l.estimate(Map.of("mandible.ML", jaw.x().get(0)))
                .value()
                .flatMap(e -> row(name, l, e)));
  }

  private static Optional<String> row(String name, FittedLine line, SizeEstimate estimate) {
    return estimate
        .prediction()
        .value()
        .flatMap(
            p ->
                line.meanAbsolutePercentError()
                    .value()
                    .map(
                        error ->
                            "  "
                                + name
                                + " ("
                                + Count.of(line.n(), "animal")
                                + ", held-out error "
                                + Figures.five(Math.round(10 * error) / 10.0)
                                + " %): "
                                + metres(estimate.estimate())
                                + " m, 95 % from "
                                + metres(p.lower())
                                + " to "
                                + metres(p.upper())
                                + " m"));
  }

  private static String metres(double mm) {
    return String.format(Locale.ROOT, "%.2f", mm / 1000);
  }
}

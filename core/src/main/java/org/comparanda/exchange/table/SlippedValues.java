package org.comparanda.exchange.table;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.comparanda.check.AnimalChecks;
import org.comparanda.check.Finding;
import org.comparanda.check.ShelfEntries;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.register.AnimalCard;

/**
 * Values of a table that are in another unit than the rest of their column: too few to tell of the
 * column, and no reason to refuse it, for a bone may be odd.
 */
final class SlippedValues {
  private SlippedValues() {}

  /** What a person should know of them before the table is stored; empty where there are none. */
  static Optional<String> note(List<AnimalCard> cards, KnownWords known) {
    Set<String> numbers = cards.stream().map(c -> c.id().value()).collect(Collectors.toSet());
    Stream<Animal> there =
        known.shelf().stream()
            .flatMap(shelf -> shelf.animals().stream())
            .filter(animal -> !numbers.contains(animal.id().value()));
    Shelf together =
        new Shelf(Stream.concat(there, cards.stream().map(AnimalCard::animal)).toList());
    List<Finding> slips =
        AnimalChecks.unitSlips(ShelfEntries.of(together, known.protocol(), known.tree())).stream()
            .filter(finding -> numbers.contains(finding.animal().orElseThrow()))
            .toList();
    return slips.stream().findFirst().map(first -> sentence(slips.size(), first));
  }

  private static String sentence(int count, Finding first) {
    return (count == 1
            ? "1 value looks like another unit: "
            : count + " values look like another unit, the first: ")
        + first.column().orElseThrow()
        + " "
        + first.value().orElseThrow()
        + " of "
        + first.animal().orElseThrow()
        + ", "
        + first.bone().orElseThrow()
        + ". Once the table is stored, the check of the shelf lists each.";
  }
}

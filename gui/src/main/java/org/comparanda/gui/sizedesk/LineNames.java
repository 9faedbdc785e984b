package org.comparanda.gui.sizedesk;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/** What a line is called: after the group it is fitted to, where it holds the whole group. */
final class LineNames {
  private final TaxonTree tree;
  private final Set<TaxonName> measured;
  private final Words words;

  /** For lines over those taxa of the shelf that have both values. */
  LineNames(TaxonTree tree, Set<TaxonName> measured, Words words) {
    this.tree = tree;
    this.measured = Set.copyOf(measured);
    this.words = words;
  }

  String of(FittedLine line) {
    List<TaxonName> taxa = line.taxa();
    if (taxa.size() > 1 && taxa.size() == measured.size()) {
      return words.get("line.all", taxa.size());
    }
    if (taxa.size() > 1) {
      Optional<TaxonName> group = tree.lowestCommon(taxa);
      if (group.isPresent() && holdsWhole(group.get(), taxa)) {
        return group.get().value();
      }
    }
    return taxa.size() <= 2
        ? taxa.stream().map(TaxonName::value).collect(Collectors.joining(", "))
        : words.get("line.several", taxa.size());
  }

  private boolean holdsWhole(TaxonName group, List<TaxonName> taxa) {
    Set<TaxonName> members =
        measured.stream().filter(t -> tree.lineage(t).contains(group)).collect(Collectors.toSet());
    return members.equals(new HashSet<>(taxa));
  }
}

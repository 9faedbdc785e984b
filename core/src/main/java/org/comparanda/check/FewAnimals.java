package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.comparanda.taxon.TaxonName;

/**
 * A taxon has so few animals that nothing can be ruled out by it.
 *
 * @param enough so many are not few
 */
record FewAnimals(int enough) implements ShelfCheck {
  /** Taxa with 1 to 4 animals are judged with the pooled spread alone and marked thin. */
  static final int ENOUGH = 5;

  @Override
  public FindingKind kind() {
    return FindingKind.FEW_ANIMALS;
  }

  @Override
  public List<Finding> check(ShelfEntries entries) {
    Map<TaxonName, List<BoneEntry>> taxa =
        new TreeMap<>(
            ShelfEntries.grouped(
                entries.all().stream().filter(r -> r.taxon().isPresent() && r.feedsFits()).toList(),
                r -> r.taxon().orElseThrow()));
    List<Finding> findings = new ArrayList<>();
    taxa.forEach(
        (taxon, rows) -> {
          long animals = rows.stream().map(BoneEntry::animal).distinct().count();
          if (animals < enough) {
            findings.add(
                Finding.ofColumn(
                    kind(),
                    "taxon",
                    taxon.value(),
                    "%s has %d %s: too few to say how much the kind varies."
                        .formatted(taxon, animals, animals == 1 ? "animal" : "animals"),
                    "Prepare or borrow more; the wanted list says which help most."));
          }
        });
    return findings;
  }
}

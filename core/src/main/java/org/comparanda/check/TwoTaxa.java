package org.comparanda.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.comparanda.taxon.TaxonName;

/** Bones of one animal stand under two taxa; the rarer one is named. */
record TwoTaxa() implements ShelfCheck {
  @Override
  public FindingKind kind() {
    return FindingKind.TWO_TAXA;
  }

  @Override
  public List<Finding> check(ShelfEntries entries) {
    List<Finding> findings = new ArrayList<>();
    entries
        .byAnimal()
        .forEach(
            (animal, rows) -> {
              Map<TaxonName, List<BoneEntry>> taxa =
                  ShelfEntries.grouped(
                      rows.stream().filter(r -> r.taxon().isPresent()).toList(),
                      r -> r.taxon().orElseThrow());
              if (taxa.size() > 1) {
                findings.add(finding(animal, taxa));
              }
            });
    return findings;
  }

  private Finding finding(String animal, Map<TaxonName, List<BoneEntry>> taxa) {
    Map.Entry<TaxonName, List<BoneEntry>> rarest =
        taxa.entrySet().stream()
            .min(
                Comparator.comparingInt(
                        (Map.Entry<TaxonName, List<BoneEntry>> e) -> e.getValue().size())
                    .thenComparing(Map.Entry::getKey, Comparator.reverseOrder()))
            .orElseThrow();
    return Finding.ofAnimal(
        kind(),
        animal,
        ShelfEntries.bone(rarest.getValue()),
        "taxon",
        rarest.getKey().value(),
        "%s stands under %s."
            .formatted(
                animal,
                String.join(
                    " and ", taxa.keySet().stream().map(TaxonName::value).sorted().toList())),
        "Look at the catalogue card and correct the taxon or the animal's number.");
  }
}

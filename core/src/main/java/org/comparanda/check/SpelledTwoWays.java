package org.comparanda.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonName;

/**
 * A name that the taxon tree lacks is one or two letters off a known name, or off one that more
 * animals bear. Short names (codes of groups) are left alone: one letter is their whole meaning.
 */
record SpelledTwoWays() implements ShelfCheck {
  private static final int LONG_ENOUGH_FOR_ONE = 8;
  private static final int LONG_ENOUGH_FOR_TWO = 12;
  private static final int NAMED_ONE_BY_ONE = 5;

  @Override
  public FindingKind kind() {
    return FindingKind.SPELLED_TWO_WAYS;
  }

  @Override
  public List<Finding> check(ShelfEntries entries) {
    Map<TaxonName, List<BoneEntry>> taxa =
        ShelfEntries.grouped(
            entries.all().stream().filter(r -> r.taxon().isPresent()).toList(),
            r -> r.taxon().orElseThrow());
    Set<TaxonName> known = new LinkedHashSet<>();
    entries.tree().taxa().stream().map(Taxon::name).forEach(known::add);
    List<Finding> findings = new ArrayList<>();
    taxa.forEach(
        (name, rows) -> {
          if (!known.contains(name)) {
            meant(name, known, taxa)
                .ifPresent(other -> findings.addAll(findings(name, other, rows)));
          }
        });
    return findings;
  }

  private static Optional<TaxonName> meant(
      TaxonName name, Set<TaxonName> known, Map<TaxonName, List<BoneEntry>> taxa) {
    Optional<TaxonName> inTree = known.stream().filter(other -> alike(name, other)).findFirst();
    return inTree.or(
        () ->
            taxa.keySet().stream()
                .filter(other -> !other.equals(name) && alike(name, other))
                .filter(other -> animals(taxa.get(other)) > animals(taxa.get(name)))
                .findFirst());
  }

  private static long animals(@org.jspecify.annotations.Nullable List<BoneEntry> rows) {
    return rows == null ? 0 : rows.stream().map(BoneEntry::animal).distinct().count();
  }

  /** One for each animal, or one for the name where many bear it. */
  private List<Finding> findings(TaxonName name, TaxonName meant, List<BoneEntry> rows) {
    Map<String, List<BoneEntry>> animals = ShelfEntries.grouped(rows, BoneEntry::animal);
    String message = "\"%s\" may be %s spelled another way.".formatted(name, meant);
    String remedy = "Correct the name, or add it to the taxon tree.";
    return animals.size() > NAMED_ONE_BY_ONE
        ? List.of(Finding.ofColumn(kind(), "taxon", name.value(), message, remedy))
        : animals.values().stream()
            .map(
                of ->
                    Finding.ofAnimal(
                            kind(),
                            of.get(0).animal(),
                            ShelfEntries.bone(of),
                            "taxon",
                            name.value(),
                            message,
                            remedy)
                        .correctedBy(Optional.of(new Correction.Name(name, meant))))
            .toList();
  }

  private static boolean alike(TaxonName one, TaxonName other) {
    String a = plain(one);
    String b = plain(other);
    int shorter = Math.min(a.length(), b.length());
    int allowed = shorter >= LONG_ENOUGH_FOR_TWO ? 2 : shorter >= LONG_ENOUGH_FOR_ONE ? 1 : 0;
    return a.equals(b) || EditDistance.within(a, b, allowed);
  }

  private static String plain(TaxonName name) {
    return name.value().toLowerCase(Locale.ROOT).replaceAll("[\\s_.-]+", " ").strip();
  }
}

package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.BoneAge;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * How high up the taxon tree an answer may speak: shares added up, look-alikes, and the open name
 * that is proposed to the person.
 */
final class Ladder {
  private final TaxonTree tree;
  private final BoneAge age;

  Ladder(TaxonTree tree, BoneAge age) {
    this.tree = tree;
    this.age = age;
  }

  boolean fossil() {
    return age == BoneAge.FOSSIL;
  }

  /** Groups that hold two or more of the taxa, largest share first, then the lowest group. */
  List<GroupShare> groups(List<TaxonFit> fits) {
    Map<TaxonName, List<TaxonFit>> below = new LinkedHashMap<>();
    for (TaxonFit fit : fits) {
      for (TaxonName group : tree.lineage(fit.taxon())) {
        below.computeIfAbsent(group, g -> new ArrayList<>()).add(fit);
      }
    }
    List<GroupShare> groups = new ArrayList<>();
    below.forEach(
        (name, members) ->
            tree.taxon(name)
                .filter(t -> members.size() > 1 && t.parent().isPresent())
                .ifPresent(t -> groups.add(share(t, members))));
    groups.sort(
        Comparator.comparingDouble(GroupShare::share)
            .reversed()
            .thenComparingInt(GroupShare::taxa)
            .thenComparing(GroupShare::group));
    return groups;
  }

  /** Whether these two or more are all known to look like each other. */
  boolean lookAlikes(Collection<TaxonName> taxa) {
    return taxa.size() > 1
        && taxa.stream()
            .allMatch(
                one ->
                    taxa.stream()
                        .allMatch(
                            other -> other.equals(one) || tree.lookAlikesOf(one).contains(other)));
  }

  Set<TaxonName> lookAlikesOf(TaxonName taxon) {
    return tree.lookAlikesOf(taxon);
  }

  /** Whether any of these kinds is often taken for human, and the reverse. */
  boolean mixUp(Collection<TaxonName> taxa) {
    return taxa.stream()
        .flatMap(t -> tree.lineage(t).stream())
        .anyMatch(t -> tree.taxon(t).filter(Taxon::humanMixUp).isPresent());
  }

  /** The name proposed to the person; empty where the answer supports none. */
  Optional<ProposedName> proposal(Verdict verdict) {
    return switch (verdict.answer()) {
      case FITS_ONE, NEVER_TESTED -> one(verdict);
      case FITS_A_FEW, FITS_GROUP_ONLY ->
          tree.lowestCommon(verdict.taxa())
              .map(group -> new ProposedName(group, ProposedName.Sign.INDET));
      case YOUNG_BONE, NOT_FITTED, SHELF_TOO_THIN, NOTHING_FITS, POOR_FIT -> Optional.empty();
    };
  }

  private Optional<ProposedName> one(Verdict verdict) {
    TaxonName taxon = verdict.taxa().get(0);
    if (fossil()) {
      return above(taxon).map(group -> new ProposedName(group, ProposedName.Sign.CF));
    }
    boolean plain = verdict.answer() == Answer.FITS_ONE && tree.lookAlikesOf(taxon).isEmpty();
    return Optional.of(
        new ProposedName(taxon, plain ? ProposedName.Sign.NONE : ProposedName.Sign.CF));
  }

  /** The next group up; the genus of a two-word name where the tree has none below its root. */
  private Optional<TaxonName> above(TaxonName taxon) {
    Optional<TaxonName> parent =
        tree.taxon(taxon)
            .flatMap(Taxon::parent)
            .filter(p -> tree.taxon(p).flatMap(Taxon::parent).isPresent());
    int blank = taxon.value().indexOf(' ');
    return parent.or(
        () ->
            blank > 0
                ? Optional.of(new TaxonName(taxon.value().substring(0, blank)))
                : Optional.empty());
  }

  private static GroupShare share(Taxon group, List<TaxonFit> members) {
    double sum = members.stream().mapToDouble(TaxonFit::share).sum();
    return new GroupShare(group.name(), group.rank(), sum, members.size());
  }
}

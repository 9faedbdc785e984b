package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * A group or a taxon of the tree, with how many animals could feed the line.
 *
 * @param name its name; empty for the root of everything
 * @param animals that have both values, in it and below
 * @param below groups and taxa under it; empty for a taxon of the shelf
 */
public record TaxonBranch(Optional<TaxonName> name, int animals, List<TaxonBranch> below) {
  public TaxonBranch {
    below = List.copyOf(below);
  }

  /** The tree of these taxa; a group with one member is passed over. */
  static TaxonBranch of(TaxonTree tree, Map<TaxonName, Integer> animals) {
    return branch(Optional.empty(), tree, new TreeMap<>(animals));
  }

  /** All taxa of the shelf in it. */
  Set<TaxonName> taxa() {
    return leaves().keySet();
  }

  /** All taxa of the shelf in it, with their animals, in alphabetical order. */
  SortedMap<TaxonName, Integer> leaves() {
    SortedMap<TaxonName, Integer> all = new TreeMap<>();
    if (below.isEmpty()) {
      name.ifPresent(n -> all.put(n, animals));
    }
    below.forEach(b -> all.putAll(b.leaves()));
    return all;
  }

  private static TaxonBranch branch(
      Optional<TaxonName> under, TaxonTree tree, SortedMap<TaxonName, Integer> animals) {
    SortedMap<TaxonName, SortedMap<TaxonName, Integer>> groups = new TreeMap<>();
    animals.forEach(
        (taxon, n) ->
            groups.computeIfAbsent(next(under, taxon, tree), g -> new TreeMap<>()).put(taxon, n));
    List<TaxonBranch> below = new ArrayList<>();
    groups.forEach(
        (group, members) -> {
          boolean taxonItself = members.size() == 1;
          below.add(
              taxonItself
                  ? new TaxonBranch(
                      Optional.of(members.firstKey()),
                      members.values().iterator().next(),
                      List.of())
                  : branch(Optional.of(group), tree, members));
        });
    int sum = animals.values().stream().mapToInt(n -> n).sum();
    if (below.size() == 1) {
      return below.get(0);
    }
    return new TaxonBranch(under, sum, below);
  }

  /** The group just under {@code under} on the way down to the taxon. */
  private static TaxonName next(Optional<TaxonName> under, TaxonName taxon, TaxonTree tree) {
    List<TaxonName> upwards = tree.lineage(taxon);
    int place = under.map(upwards::indexOf).orElse(upwards.size());
    return upwards.get(Math.max(0, place - 1));
  }
}

package org.comparanda.statistics.phylo;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.comparanda.statistics.Outcome;

/**
 * Which tip of a tree each name stands for: exactly, or with underscore, full stop and blank alike.
 *
 * @param tipOf the tip of each name found, in the order of the names
 * @param respelled the names whose tip is spelled otherwise, and that tip
 * @param notInTree names without a tip
 * @param withoutName tips without a name, to be pruned
 */
public record TipMatches(
    Map<String, String> tipOf,
    Map<String, String> respelled,
    List<String> notInTree,
    List<String> withoutName) {
  public TipMatches {
    tipOf = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(tipOf));
    respelled = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(respelled));
    notInTree = List.copyOf(notInTree);
    withoutName = List.copyOf(withoutName);
  }

  /** Matches names to tips; two names for one tip, or two tips alike, are not estimable. */
  public static Outcome<TipMatches> of(PhyloTree tree, Collection<String> names) {
    Set<String> tips = new LinkedHashSet<>(tree.tips());
    Map<String, String> tipOf = new LinkedHashMap<>();
    Map<String, String> respelled = new LinkedHashMap<>();
    List<String> missing = new ArrayList<>();
    for (String name : names) {
      List<String> alike =
          tips.contains(name)
              ? List.of(name)
              : tips.stream().filter(tip -> plain(tip).equals(plain(name))).toList();
      if (alike.size() > 1) {
        return Outcome.none(
            "\"" + name + "\" could be any of the tips " + alike + ".",
            "Spell the taxon as the tree does.");
      }
      if (alike.isEmpty()) {
        missing.add(name);
        continue;
      }
      if (tipOf.containsValue(alike.get(0))) {
        return Outcome.none(
            "Two taxa stand for the tip \"" + alike.get(0) + "\".",
            "Spell the taxon one way on the shelf.");
      }
      tipOf.put(name, alike.get(0));
      if (!alike.get(0).equals(name)) {
        respelled.put(name, alike.get(0));
      }
    }
    tips.removeAll(tipOf.values());
    return Outcome.of(new TipMatches(tipOf, respelled, missing, List.copyOf(tips)));
  }

  private static String plain(String name) {
    return name.replaceAll("[_.\\s]+", " ").strip();
  }
}

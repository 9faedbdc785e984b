package org.comparanda.taxon;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toUnmodifiableList;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Who is whose parent, and which pairs of taxa look alike. A name that is not in the tree counts as
 * a child of the root.
 *
 * <p>Errors: {@link IllegalArgumentException} if a name stands twice, a parent is missing or the
 * tree is a ring
 */
public final class TaxonTree {
  private final Map<TaxonName, Taxon> byName = new LinkedHashMap<>();
  private final Map<TaxonName, List<TaxonName>> synonyms;
  private final List<Set<TaxonName>> lookAlikes;

  public TaxonTree(List<Taxon> taxa, List<Set<TaxonName>> lookAlikes) {
    for (Taxon taxon : taxa) {
      if (byName.put(taxon.name(), taxon) != null) {
        throw new IllegalArgumentException(taxon.name() + " stands twice in the taxon tree.");
      }
    }
    this.synonyms =
        taxa.stream()
            .filter(taxon -> taxon.isSynonym() && taxon.parent().isPresent())
            .collect(
                groupingBy(
                    taxon -> taxon.parent().orElseThrow(),
                    mapping(Taxon::name, toUnmodifiableList())));
    this.lookAlikes = lookAlikes.stream().map(Set::copyOf).toList();
    for (Taxon taxon : taxa) {
      lineage(taxon.name());
    }
  }

  /** A tree that knows nothing: every name hangs on the root. */
  public static TaxonTree empty() {
    return new TaxonTree(List.of(), List.of());
  }

  /** All taxa in the order of the file. */
  public List<Taxon> taxa() {
    return List.copyOf(byName.values());
  }

  /** The taxon with that name. */
  public Optional<Taxon> taxon(TaxonName name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** The taxon itself and its ancestors, nearest first; just the name when the tree lacks it. */
  public List<TaxonName> lineage(TaxonName name) {
    Set<TaxonName> line = new LinkedHashSet<>();
    Optional<TaxonName> next = Optional.of(name);
    while (next.isPresent()) {
      TaxonName here = next.get();
      if (!line.add(here)) {
        throw new IllegalArgumentException(here + " is its own ancestor in the taxon tree.");
      }
      Taxon taxon = byName.get(here);
      if (taxon == null && !here.equals(name)) {
        throw new IllegalArgumentException(here + " is named as a parent but has no row.");
      }
      next = taxon == null ? Optional.empty() : taxon.parent();
    }
    return List.copyOf(line);
  }

  /** The name under which a taxon stands: the accepted one of a synonym, of any other itself. */
  public TaxonName accepted(TaxonName name) {
    return taxon(name).filter(Taxon::isSynonym).flatMap(Taxon::parent).orElse(name);
  }

  /** The names under which a taxon went, or goes elsewhere, in the order of the file. */
  public List<TaxonName> synonymsOf(TaxonName name) {
    return synonyms.getOrDefault(name, List.of());
  }

  /** Whether both are names of one taxon. */
  public boolean same(TaxonName one, TaxonName other) {
    return accepted(one).equals(accepted(other));
  }

  /** Whether a taxon is a group or lies in it, each under any of its names. */
  public boolean within(TaxonName taxon, TaxonName group) {
    return lineage(taxon).contains(accepted(group));
  }

  /** What to say of a name that is not the accepted one; empty for one that is. */
  public Optional<String> standsUnder(TaxonName name) {
    TaxonName now = accepted(name);
    return now.equals(name) ? Optional.empty() : Optional.of(name + " stands here as " + now + ".");
  }

  /** The lowest group that holds all of these, or empty when only the root (or nothing) does. */
  public Optional<TaxonName> lowestCommon(Collection<TaxonName> names) {
    List<TaxonName> shared = new ArrayList<>();
    boolean first = true;
    for (TaxonName name : names) {
      List<TaxonName> line = lineage(name);
      if (first) {
        shared.addAll(line);
        first = false;
      } else {
        shared.retainAll(line);
      }
    }
    return shared.stream().filter(n -> !isRoot(n)).findFirst();
  }

  /** The groups of taxa that look alike. */
  List<Set<TaxonName>> lookAlikes() {
    return lookAlikes;
  }

  /** The taxa that look like this one; empty when none is known. */
  public Set<TaxonName> lookAlikesOf(TaxonName name) {
    Set<TaxonName> others = new LinkedHashSet<>();
    for (Set<TaxonName> group : lookAlikes) {
      if (group.contains(name)) {
        others.addAll(group);
      }
    }
    others.remove(name);
    return others;
  }

  private boolean isRoot(TaxonName name) {
    Taxon taxon = byName.get(name);
    return taxon != null && taxon.parent().isEmpty();
  }
}

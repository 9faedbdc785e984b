package org.comparanda.taxon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.comparanda.statistics.Outcome;

/**
 * The names that the house brought in beside those shipped with the program, each once. A synonym
 * stands in the tree as a child of its accepted name, so that what was written under it still has
 * its place.
 */
public record HouseNames(Map<TaxonName, HouseTaxon> byName) {
  private static final String SYNONYM = "synonym";

  public HouseNames {
    byName = java.util.Collections.unmodifiableMap(new TreeMap<>(byName));
  }

  public static HouseNames of(List<HouseTaxon> taxa) {
    return new HouseNames(Map.of()).with(taxa);
  }

  /** With these rows, each in place of one of its name. */
  public HouseNames with(List<HouseTaxon> taxa) {
    Map<TaxonName, HouseTaxon> all = new TreeMap<>(byName);
    taxa.forEach(taxon -> all.put(taxon.name(), taxon));
    return new HouseNames(all);
  }

  /** The name that holds: the accepted one of a synonym, of any other name itself. */
  public TaxonName accepted(TaxonName name) {
    Set<TaxonName> seen = new LinkedHashSet<>();
    TaxonName now = name;
    while (seen.add(now)) {
      TaxonName here = now;
      now = Optional.ofNullable(byName.get(here)).flatMap(HouseTaxon::acceptedAs).orElse(here);
    }
    return now;
  }

  /** The names under which a taxon went or goes elsewhere. */
  public Set<TaxonName> synonymsOf(TaxonName name) {
    return byName.keySet().stream()
        .filter(other -> !other.equals(name) && accepted(other).equals(name))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The shipped tree with the house's names in it; none when a parent is missing or in a ring. */
  public Outcome<TaxonTree> on(TaxonTree shipped) {
    List<Taxon> taxa = new ArrayList<>();
    Map<TaxonName, Taxon> base = new LinkedHashMap<>();
    shipped.taxa().forEach(taxon -> base.put(taxon.name(), taxon));
    for (Taxon taxon : shipped.taxa()) {
      taxa.add(
          Optional.ofNullable(byName.get(taxon.name()))
              .map(house -> row(house, base, shipped))
              .orElseGet(() -> under(taxon, taxon.parent().map(this::accepted))));
    }
    byName.values().stream()
        .filter(house -> !base.containsKey(house.name()))
        .forEach(house -> taxa.add(row(house, base, shipped)));
    List<Set<TaxonName>> lookAlikes =
        shipped.lookAlikes().stream()
            .map(group -> group.stream().map(this::accepted).collect(Collectors.toSet()))
            .toList();
    try {
      return Outcome.of(new TaxonTree(taxa, lookAlikes));
    } catch (IllegalArgumentException broken) {
      return Outcome.none(
          "The names don't make a tree: " + broken.getMessage() + " Nothing was changed.",
          "Give the missing name a row, or the taxon another parent.");
    }
  }

  private static Taxon under(Taxon taxon, Optional<TaxonName> parent) {
    return new Taxon(
        taxon.name(),
        taxon.commonName(),
        taxon.author(),
        taxon.rank(),
        parent,
        taxon.growth(),
        taxon.humanMixUp(),
        taxon.source());
  }

  private Taxon row(HouseTaxon house, Map<TaxonName, Taxon> base, TaxonTree shipped) {
    Optional<TaxonName> parent =
        house
            .acceptedAs()
            .map(this::accepted)
            .or(() -> house.parent().map(this::accepted))
            .or(() -> Optional.ofNullable(base.get(house.name())).flatMap(Taxon::parent))
            .or(() -> root(shipped));
    Optional<Taxon> like = like(house, base, new LinkedHashSet<>());
    boolean isRoot = root(shipped).filter(house.name()::equals).isPresent();
    return new Taxon(
        house.name(),
        house.commonName(),
        house.author(),
        house.acceptedAs().isPresent() ? SYNONYM : house.rank(),
        isRoot ? Optional.empty() : parent,
        like.map(Taxon::growth).orElse(Growth.INDETERMINATE),
        like.map(Taxon::humanMixUp).orElse(false),
        house.source());
  }

  /** The shipped row that tells of growth and mix-ups: its own, a synonym's, an ancestor's. */
  private Optional<Taxon> like(HouseTaxon house, Map<TaxonName, Taxon> base, Set<TaxonName> seen) {
    if (!seen.add(house.name())) {
      return Optional.empty();
    }
    return Optional.ofNullable(base.get(house.name()))
        .or(
            () ->
                synonymsOf(house.name()).stream()
                    .flatMap(name -> Optional.ofNullable(base.get(name)).stream())
                    .findFirst())
        .or(
            () ->
                house
                    .parent()
                    .flatMap(
                        name ->
                            Optional.ofNullable(base.get(name))
                                .or(
                                    () ->
                                        Optional.ofNullable(byName.get(name))
                                            .flatMap(up -> like(up, base, seen)))));
  }

  private static Optional<TaxonName> root(TaxonTree tree) {
    return tree.taxa().stream().filter(t -> t.parent().isEmpty()).map(Taxon::name).findFirst();
  }

  /** Under another name; the old one stays as its synonym. */
  public Outcome<HouseNames> renamed(TaxonName from, TaxonName to, TaxonTree shipped) {
    return on(shipped)
        .then(
            tree -> {
              Optional<Taxon> old = tree.taxon(from);
              if (!from.equals(to) && tree.accepted(from).equals(to)) {
                return Outcome.of(this); // a synonym already: its animals follow
              }
              if (old.isEmpty() || old.get().isSynonym()) {
                return tree.standsUnder(from)
                    .<Outcome<HouseNames>>map(
                        now ->
                            Outcome.none(
                                now + " Nothing was renamed.", "Rename the name that it has now."))
                    .orElseGet(
                        () ->
                            Outcome.none(
                                "\""
                                    + from
                                    + "\" is no accepted name of this house. Nothing was renamed.",
                                "Look at the list of names."));
              }
              HouseTaxon synonym = HouseTaxon.of(old.get()).synonymOf(to);
              if (tree.taxon(to).filter(there -> !there.isSynonym()).isPresent()) {
                return sound(with(List.of(synonym)), shipped); // it has its own place and rank
              }
              HouseTaxon now =
                  Optional.ofNullable(byName.get(to))
                      .filter(there -> there.acceptedAs().isEmpty())
                      .orElseGet(
                          () ->
                              new HouseTaxon(
                                  to,
                                  tree.taxon(to).map(Taxon::author).orElse(""),
                                  old.get().rank(),
                                  old.get().parent(),
                                  Optional.empty(),
                                  old.get().commonName(),
                                  "renamed from " + from));
              return sound(with(List.of(synonym, now)), shipped);
            });
  }

  /** Under another parent. */
  public Outcome<HouseNames> moved(TaxonName name, TaxonName parent, TaxonTree shipped) {
    return on(shipped)
        .then(
            tree -> {
              Optional<Taxon> taxon = tree.taxon(name);
              if (taxon.isEmpty() || tree.taxon(parent).isEmpty()) {
                return Outcome.none(
                    "\""
                        + (taxon.isEmpty() ? name : parent)
                        + "\" is no name of this house. Nothing was moved.",
                    "Look at the list of names, or bring the name in first.");
              }
              if (taxon.get().isSynonym() || taxon.get().parent().isEmpty()) {
                return Outcome.none(
                    "\"" + name + "\" is a synonym or the root. Nothing was moved.",
                    "Move the accepted name.");
              }
              HouseTaxon row =
                  Optional.ofNullable(byName.get(name)).orElseGet(() -> HouseTaxon.of(taxon.get()));
              return sound(with(List.of(row.withParent(parent))), shipped);
            });
  }

  private static Outcome<HouseNames> sound(HouseNames names, TaxonTree shipped) {
    return names.on(shipped).then(tree -> Outcome.of(names));
  }
}

package org.comparanda.secondlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.agreement.CohenKappa;
import org.comparanda.statistics.agreement.Kappa;
import org.comparanda.statistics.agreement.Weights;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.comparanda.tray.Call;

/**
 * How far two people's calls agree. cf., aff. and ? count as the taxon they stand with. A call at a
 * higher group agrees with one inside it at that group only.
 *
 * @param looks all bones that two people called
 */
public record Agreement(List<TwoLooks> looks, TaxonTree tree) {
  public Agreement {
    looks = List.copyOf(looks);
  }

  /** Two names that were given to one bone, in alphabetical order. */
  public record Confusion(TaxonName one, TaxonName other) implements Comparable<Confusion> {
    @Override
    public int compareTo(Confusion that) {
      int byOne = one.compareTo(that.one);
      return byOne != 0 ? byOne : other.compareTo(that.other);
    }
  }

  /** Kappa of the calls as they are, from the every-nth draw alone. */
  public Outcome<Kappa> kappa() {
    return kappa(this::name);
  }

  /**
   * Kappa at a rank, for example genus: every call counts as its ancestor of that rank, one above
   * the rank as what it is. From the every-nth draw alone.
   */
  public Outcome<Kappa> kappaAt(String rank) {
    return kappa(call -> at(call, rank));
  }

  /** The lowest group at which the two calls agree; empty when only the root holds both. */
  public Optional<TaxonName> agreeAt(TwoLooks two) {
    return tree.lowestCommon(List.of(two.first().taxon(), two.second().taxon()));
  }

  /** How two calls stand to each other. */
  public Likeness likeness(TwoLooks two) {
    TaxonName a = name(two.first());
    TaxonName b = name(two.second());
    Optional<TaxonName> group = agreeAt(two);
    if (a.equals(b)) {
      return new Likeness(Likeness.Kind.AGREE, group);
    }
    boolean nested = tree.lineage(a).contains(b) || tree.lineage(b).contains(a);
    return new Likeness(nested ? Likeness.Kind.AGREE_AT_GROUP : Likeness.Kind.DIFFER, group);
  }

  /** How often each two names were given to one bone, in the every-nth draw. */
  public Map<Confusion, Integer> confusions() {
    return confusions(two -> !two.why().targeted());
  }

  /** The same for the bones picked for a reason; says nothing on the whole lot. */
  public Map<Confusion, Integer> confusionsOfTargeted() {
    return confusions(two -> two.why().targeted());
  }

  private Map<Confusion, Integer> confusions(Predicate<TwoLooks> which) {
    Map<Confusion, Integer> table = new TreeMap<>();
    for (TwoLooks two : looks) {
      TaxonName a = name(two.first());
      TaxonName b = name(two.second());
      if (which.test(two) && !a.equals(b)) {
        table.merge(
            a.compareTo(b) < 0 ? new Confusion(a, b) : new Confusion(b, a), 1, Integer::sum);
      }
    }
    return table;
  }

  private interface Naming {
    TaxonName of(Call call);
  }

  private Outcome<Kappa> kappa(Naming naming) {
    List<TwoLooks> drawn = looks.stream().filter(two -> !two.why().targeted()).toList();
    TreeSet<TaxonName> all = new TreeSet<>();
    drawn.forEach(
        two -> {
          all.add(naming.of(two.first()));
          all.add(naming.of(two.second()));
        });
    List<TaxonName> names = new ArrayList<>(all);
    int[][] counts = new int[names.size()][names.size()];
    drawn.forEach(
        two ->
            counts[names.indexOf(naming.of(two.first()))][
                names.indexOf(naming.of(two.second()))]++);
    return CohenKappa.of(counts, Weights.NONE);
  }

  private TaxonName at(Call call, String rank) {
    return tree.lineage(call.taxon()).stream()
        .filter(name -> tree.taxon(name).filter(t -> t.rank().equals(rank)).isPresent())
        .findFirst()
        .orElse(name(call));
  }

  /** The name under which the called taxon stands now. */
  private TaxonName name(Call call) {
    return tree.accepted(call.taxon());
  }
}

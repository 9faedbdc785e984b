package org.comparanda.statistics.phylo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.comparanda.statistics.Outcome;

/**
 * Phylogenetically independent contrasts of one quantity. A branching of more than two is resolved
 * with branches of zero length, in the order of the tree.
 *
 * <p>Source: Felsenstein 1985, Am. Nat. 125:1-15.
 *
 * @param contrasts one per branching; signs are arbitrary
 */
public record IndependentContrasts(List<Contrast> contrasts) {
  public IndependentContrasts {
    contrasts = List.copyOf(contrasts);
  }

  /**
   * One contrast.
   *
   * @param clade the tips below the branching
   * @param value difference of both sides over the root of its variance
   * @param variance expected variance of the difference before that
   */
  public record Contrast(Set<String> clade, double value, double variance) {
    public Contrast {
      clade = Set.copyOf(clade);
    }
  }

  /** The contrasts of these values by tip, all other tips pruned, at least 4. */
  public static Outcome<IndependentContrasts> of(PhyloTree tree, Map<String, Double> values) {
    if (values.size() < 4) {
      return Outcome.none(values.size() + " tip(s) have values.", "At least 4 are needed.");
    }
    if (!tree.tips().containsAll(values.keySet())) {
      return Outcome.none(
          "Some names are no tips of the tree.", "Compare the spelling of the names.");
    }
    return tree.keeping(values.keySet())
        .then(
            kept -> {
              List<Contrast> contrasts = new ArrayList<>();
              climb(kept.root(), values, contrasts);
              return contrasts.stream().allMatch(c -> c.variance() > 0)
                  ? Outcome.of(new IndependentContrasts(contrasts))
                  : Outcome.none(
                      "Two tips of the tree lie at no distance from each other.",
                      "Join them to one taxon, or give their branches a length.");
            });
  }

  /** Value at a node and the length of the branch above it, lengthened by what is not known. */
  private record Estimate(double value, double branch, List<String> tips) {}

  private static Estimate climb(
      PhyloTree.Node node, Map<String, Double> values, List<Contrast> contrasts) {
    if (node.isTip()) {
      return new Estimate(
          Objects.requireNonNull(values.get(node.name())), node.branch(), List.of(node.name()));
    }
    Estimate joined = climb(node.children().get(0), values, contrasts);
    for (PhyloTree.Node child : node.children().subList(1, node.children().size())) {
      Estimate other = climb(child, values, contrasts);
      double variance = joined.branch() + other.branch();
      List<String> tips = new ArrayList<>(joined.tips());
      tips.addAll(other.tips());
      contrasts.add(
          new Contrast(
              Set.copyOf(tips), (joined.value() - other.value()) / Math.sqrt(variance), variance));
      joined =
          new Estimate(
              (joined.value() * other.branch() + other.value() * joined.branch()) / variance,
              joined.branch() * other.branch() / variance,
              tips);
    }
    return new Estimate(joined.value(), joined.branch() + node.branch(), joined.tips());
  }
}

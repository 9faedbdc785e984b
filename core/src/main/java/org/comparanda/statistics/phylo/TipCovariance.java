package org.comparanda.statistics.phylo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.statistics.Outcome;

/**
 * Covariance of tips under Brownian motion: the length of the path that two tips share, from the
 * last common ancestor of the tips that feed the line. Tip variances differ where the tree is not
 * ultrametric. Immutable.
 *
 * <p>Source: Martins and Hansen 1997, Am. Nat. 149:646-667 (from memory).
 */
public final class TipCovariance {
  private static final int FEWEST = 4;

  private final PhyloTree tree;
  private final List<String> tips;
  private final double[][] shared;
  private final double rootDepth;

  private TipCovariance(PhyloTree tree, List<String> tips, double[][] shared, double rootDepth) {
    this.tree = tree;
    this.tips = tips;
    this.shared = shared;
    this.rootDepth = rootDepth;
  }

  /** The covariance of these tips of the tree, at least 4, all other tips pruned. */
  public static Outcome<TipCovariance> of(PhyloTree tree, List<String> tips) {
    if (tips.size() < FEWEST) {
      return Outcome.none(
          tips.size() + " tip(s) of the tree have animals.",
          "At least " + FEWEST + " are needed: add taxa, or compare the spelling of the names.");
    }
    double[][] whole = shared(tree, tips);
    double rootDepth = Double.POSITIVE_INFINITY;
    for (double[] row : whole) {
      for (double value : row) {
        rootDepth = Math.min(rootDepth, value);
      }
    }
    for (double[] row : whole) {
      for (int j = 0; j < row.length; j++) {
        row[j] -= rootDepth;
      }
    }
    for (int i = 0; i < whole.length; i++) {
      if (!(whole[i][i] > 0)) {
        return Outcome.none(
            "The tip \"" + tips.get(i) + "\" lies at the root: no branch leads to it.",
            "Use a tree with branch lengths.");
      }
    }
    return Outcome.of(new TipCovariance(tree, List.copyOf(tips), whole, rootDepth));
  }

  /** The tips, in the order of rows and columns. */
  public List<String> tips() {
    return tips;
  }

  /** Length of the path that tips i and j share; the depth of the tip where i = j. */
  public double shared(int i, int j) {
    return shared[i][j];
  }

  /** The largest tip variance. */
  public double deepest() {
    double deepest = 0;
    for (int i = 0; i < shared.length; i++) {
      deepest = Math.max(deepest, shared[i][i]);
    }
    return deepest;
  }

  /** The same without tip i. */
  public Outcome<TipCovariance> without(int i) {
    return of(tree, tips.stream().filter(tip -> !tip.equals(tips.get(i))).toList());
  }

  /**
   * Where another tip of the tree hangs; empty where it is no tip, or branches off before the last
   * common ancestor of the tips that feed the line.
   */
  public Optional<Place> place(String tip) {
    if (!tree.tips().contains(tip)) {
      return Optional.empty();
    }
    List<String> all = new ArrayList<>(tips);
    all.add(tip);
    double[][] whole = shared(tree, all);
    double[] row = whole[tips.size()];
    List<Double> covariances =
        Arrays.stream(row, 0, tips.size()).map(v -> v - rootDepth).boxed().toList();
    boolean outside = covariances.stream().anyMatch(c -> c < 0);
    return outside
        ? Optional.empty()
        : Optional.of(new Place(covariances, row[tips.size()] - rootDepth));
  }

  /** As {@link #place}, the tip's name matched as {@link TipMatches} does. */
  public Optional<Place> placeAlike(String name) {
    return TipMatches.of(tree, List.of(name))
        .value()
        .flatMap(m -> Optional.ofNullable(m.tipOf().get(name)))
        .flatMap(this::place);
  }

  /** Covariances of a further tip with those that feed the line, and its own variance. */
  public record Place(List<Double> covariances, double variance) {
    public Place {
      covariances = List.copyOf(covariances);
    }
  }

  private static double[][] shared(PhyloTree tree, List<String> tips) {
    Map<String, Integer> index = new HashMap<>();
    for (int i = 0; i < tips.size(); i++) {
      index.put(tips.get(i), i);
    }
    double[][] shared = new double[tips.size()][tips.size()];
    fill(tree.root(), 0, index, shared);
    return shared;
  }

  /** Fills in the pairs that part at or below the node, which lies at this depth. */
  private static Set<Integer> fill(
      PhyloTree.Node node, double depth, Map<String, Integer> index, double[][] shared) {
    Set<Integer> below = new HashSet<>();
    Integer tip = node.isTip() ? index.get(node.name()) : null;
    if (tip != null) {
      shared[tip][tip] = depth;
      below.add(tip);
    }
    for (PhyloTree.Node child : node.children()) {
      Set<Integer> branch = fill(child, depth + child.branch(), index, shared);
      for (int i : below) {
        for (int j : branch) {
          shared[i][j] = depth;
          shared[j][i] = depth;
        }
      }
      below.addAll(branch);
    }
    return below;
  }
}

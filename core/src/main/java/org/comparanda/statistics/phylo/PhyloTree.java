package org.comparanda.statistics.phylo;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.comparanda.statistics.Outcome;

/**
 * A rooted tree of taxa. Every branch below the root has a length of zero or more, not all zero;
 * tips have names, each once. Branchings may have any number of branches.
 */
public final class PhyloTree {
  private final Node root;

  private PhyloTree(Node root) {
    this.root = root;
  }

  /**
   * A tip or a branching.
   *
   * @param name label, empty when there is none
   * @param length length of the branch above it, empty when not given
   * @param children empty for a tip
   */
  public record Node(String name, OptionalDouble length, List<Node> children) {
    public Node {
      children = List.copyOf(children);
    }

    /** Whether nothing hangs below. */
    public boolean isTip() {
      return children.isEmpty();
    }

    /** Names of the tips at or below this node. */
    public List<String> tips() {
      if (isTip()) {
        return List.of(name);
      }
      return children.stream().flatMap(child -> child.tips().stream()).toList();
    }

    double branch() {
      return length.orElse(0);
    }

    Node withLength(double other) {
      return new Node(name, OptionalDouble.of(other), children);
    }
  }

  /** The tree below this root, or what is wrong with its branches or names. */
  public static Outcome<PhyloTree> of(Node root) {
    Set<String> seen = new HashSet<>();
    for (String tip : root.tips()) {
      if (tip.isBlank()) {
        return Outcome.none("A tip of the tree has no name.", "Name every tip.");
      }
      if (!seen.add(tip)) {
        return Outcome.none(
            "\"" + tip + "\" stands at two tips of the tree.", "Name every tip once.");
      }
    }
    List<Node> below = new ArrayList<>();
    collect(root, below);
    for (Node node : below) {
      String where = "Above " + (node.isTip() ? "\"" + node.name() + "\"" : node.tips().toString());
      if (node.length().isEmpty()) {
        return Outcome.none(
            where + " the tree gives no branch length.", "Use a tree with all branch lengths.");
      }
      if (!(node.branch() >= 0) || Double.isInfinite(node.branch())) {
        return Outcome.none(
            where + " the branch length is " + node.branch() + ".",
            "Branch lengths are zero or more.");
      }
    }
    if (below.stream().allMatch(node -> node.branch() == 0)) {
      return Outcome.none(
          "All branch lengths of the tree are zero.", "Use a tree with branch lengths.");
    }
    return Outcome.of(new PhyloTree(root));
  }

  /** The root; its own branch, if any, plays no part. */
  public Node root() {
    return root;
  }

  /** Names of all tips, in the order of the tree. */
  public List<String> tips() {
    return root.tips();
  }

  /**
   * This tree with only these tips: branchings with one branch left are joined, and the root is the
   * last shared ancestor.
   */
  public Outcome<PhyloTree> keeping(Set<String> tips) {
    List<Node> kept = keeping(root, tips);
    return kept.isEmpty()
        ? Outcome.none("None of the tips is in the tree.", "Compare the spelling of the names.")
        : of(kept.get(0));
  }

  private static List<Node> keeping(Node node, Set<String> tips) {
    if (node.isTip()) {
      return tips.contains(node.name()) ? List.of(node) : List.of();
    }
    List<Node> kept =
        node.children().stream().flatMap(child -> keeping(child, tips).stream()).toList();
    if (kept.size() == 1) {
      return List.of(kept.get(0).withLength(kept.get(0).branch() + node.branch()));
    }
    return kept.isEmpty() ? kept : List.of(new Node(node.name(), node.length(), kept));
  }

  private static void collect(Node node, List<Node> below) {
    for (Node child : node.children()) {
      below.add(child);
      collect(child, below);
    }
  }
}

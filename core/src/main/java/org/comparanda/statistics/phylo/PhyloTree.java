package org.comparanda.statistics.phylo;

import java.util.List;

/** A rooted tree with branch lengths. */
public record PhyloTree(Node root) {
  /**
   * A tip or a branching.
   *
   * @param name label, empty when there is none
   * @param length length of the branch above it, 0 above the root when not given
   * @param children empty for a tip
   */
  public record Node(String name, double length, List<Node> children) {
    public Node {
      children = List.copyOf(children);
    }
  }
}

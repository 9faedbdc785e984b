package org.comparanda.statistics.phylo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Design;
import org.junit.jupiter.api.Test;

class NewickTest {
  private static final String FOUR = "((a:1,b:1):1,(c:1.5,d:1.5):0.5);";

  @Test
  void quotedNamesCommentsExponentsAndARootBranchAreRead() {
    PhyloTree tree = tree("[a tree] (('it''s; (one)':1e-1, b_c:2.5E+1 [b]):.5, d:1, e:3)root:7 ;");
    assertEquals(List.of("it's; (one)", "b_c", "d", "e"), tree.tips());
    PhyloTree.Node first = tree.root().children().get(0).children().get(0);
    assertEquals(0.1, first.length().orElseThrow(), 0);
    assertEquals("root", tree.root().name());
    assertEquals(3, tree.root().children().size());
  }

  @Test
  void aBrokenTreeSaysWhere() {
    assertEquals(
        "The tree can't be read: \")\" is missing, at character 10 after \"((a:1,b:1\".",
        reason(Newick.read("((a:1,b:1")));
    assertEquals(
        "The tree can't be read: \"x\" is no branch length, at character 5 after \"(a:x\".",
        reason(Newick.read("(a:x,b:1);")));
    assertEquals(
        "The tree can't be read: \";\" is missing, at character 10 after \"(a:1,b:1)\".",
        reason(Newick.read("(a:1,b:1)")));
    assertEquals("The tree is empty.", reason(Newick.read("  ")));
    assertEquals(
        "The tree can't be read: a comment without its end, at character 2 after \"(\".",
        reason(Newick.read("([x")));
  }

  @Test
  void badBranchesAndDoubledTipsAreNamed() {
    assertEquals(
        "Above \"b\" the branch length is -1.0.", reason(Newick.read("((a:1,b:-1):1,c:1,d:1);")));
    assertEquals(
        "Above \"b\" the tree gives no branch length.", reason(Newick.read("((a:1,b):1,c:1);")));
    assertEquals(
        "Above [a, b] the tree gives no branch length.", reason(Newick.read("((a:1,b:1),c:1);")));
    assertEquals(
        "All branch lengths of the tree are zero.", reason(Newick.read("((a:0,b:0):0,c:0);")));
    assertEquals(
        "\"a\" stands at two tips of the tree.", reason(Newick.read("((a:1,b:1):1,a:1);")));
    assertEquals("A tip of the tree has no name.", reason(Newick.read("((a:1,:1):1,c:1);")));
  }

  @Test
  void namesAreMatchedExactlyThenWithMarksAlike() {
    PhyloTree tree = tree("((Ovis_aries:1,Capra.hircus:1):1,Bos taurus:2,Sus_scrofa:2);");
    TipMatches matches =
        TipMatches.of(tree, List.of("Ovis aries", "Capra.hircus", "Lama glama"))
            .value()
            .orElseThrow();
    assertEquals(
        Map.of("Ovis aries", "Ovis_aries", "Capra.hircus", "Capra.hircus"), matches.tipOf());
    assertEquals(Map.of("Ovis aries", "Ovis_aries"), matches.respelled());
    assertEquals(List.of("Lama glama"), matches.notInTree());
    assertEquals(List.of("Bos taurus", "Sus_scrofa"), matches.withoutName());
  }

  @Test
  void twoNamesForOneTipAreNotMatched() {
    PhyloTree tree = tree("((Ovis_aries:1,b:1):1,c:2);");
    assertEquals(
        "Two taxa stand for the tip \"Ovis_aries\".",
        reason(TipMatches.of(tree, List.of("Ovis aries", "Ovis.aries"))));
  }

  @Test
  void pruningJoinsBranchesAndMovesTheRoot() {
    PhyloTree kept =
        tree("((a:1,(b:1,x:1):0.25):1,c:9);").keeping(Set.of("a", "b")).value().orElseThrow();
    assertEquals(List.of("a", "b"), kept.tips());
    assertEquals(1.25, kept.root().children().get(1).length().orElseThrow(), 0);
  }

  @Test
  void underFourTipsThereIsNoLine() {
    PhyloTree tree = tree(FOUR);
    assertEquals(
        "3 tip(s) of the tree have animals.",
        reason(TipCovariance.of(tree, List.of("a", "b", "c"))));
    assertEquals(
        "3 tip(s) have values.",
        reason(IndependentContrasts.of(tree, Map.of("a", 1.0, "b", 2.0, "c", 3.0))));
  }

  @Test
  void tipsAtNoDistanceHaveNoBrownianLine() {
    PhyloTree tree = tree("((a:0,b:0):2,(c:1,d:1):1,e:2);");
    TipCovariance tips = TipCovariance.of(tree, tree.tips()).value().orElseThrow();
    Design means = Design.of(new double[] {1, 2, 3, 4, 6}, new double[] {1, 3, 2, 5, 7});
    assertEquals(
        "Two tips of the tree lie at no distance from each other.",
        reason(PhyloLeastSquares.brownian().fit(tips, means)));
    assertTrue(PhyloLeastSquares.withDefaults().fit(tips, means).value().isPresent());
  }

  @Test
  void covarianceIsTheSharedPathAndKeepsUnequalTips() {
    // By hand: a and b share the branch of 1; a is 2 deep, b 3 deep; c and d share 0.5.
    PhyloTree tree = tree("((a:1,b:2):1,(c:1.5,d:1.5):0.5);");
    TipCovariance v = TipCovariance.of(tree, List.of("a", "b", "c", "d")).value().orElseThrow();
    assertEquals(1, v.shared(0, 1), 0);
    assertEquals(2, v.shared(0, 0), 0);
    assertEquals(3, v.shared(1, 1), 0);
    assertEquals(0.5, v.shared(2, 3), 0);
    assertEquals(0, v.shared(0, 3), 0);
    assertEquals(3, v.deepest(), 0);
  }

  @Test
  void aTipOutsideTheSharedAncestorHasNoPlace() {
    PhyloTree tree = tree("(((a:1,b:1):1,(c:1,d:1):1,new:2):3,far:5);");
    TipCovariance v = TipCovariance.of(tree, List.of("a", "b", "c", "d")).value().orElseThrow();
    assertTrue(v.place("far").isEmpty());
    assertTrue(v.place("nobody").isEmpty());
    assertEquals(2, v.place("new").orElseThrow().variance(), 0);
    assertEquals(List.of(0.0, 0.0, 0.0, 0.0), v.place("new").orElseThrow().covariances());
  }

  @Test
  void heldOutTaxonIsTheConditionalMeanOfTheFitWithoutIt() {
    OutsideTree set = OutsideTree.MAMMAL49_HOME_RANGE_ON_MASS;
    TipCovariance all = set.covariance();
    PhyloFit fit =
        PhyloLeastSquares.withDefaults()
            .withLambda(0.9)
            .fit(all, set.means())
            .value()
            .orElseThrow();
    for (int i : new int[] {0, 17, 48}) {
      TipCovariance others = all.without(i).value().orElseThrow();
      PhyloFit refit =
          PhyloLeastSquares.withDefaults()
              .withLambda(0.9)
              .fit(others, set.means().without(i))
              .value()
              .orElseThrow();
      double really =
          refit
              .predict(others.place(all.tips().get(i)).orElseThrow(), set.means().x(i), 0.95)
              .fit();
      // The same thing by two roads; 1e-9 for two inversions.
      assertEquals(really, fit.heldOut(i), 1e-9);
    }
  }

  private static PhyloTree tree(String newick) {
    return Newick.read(newick).value().orElseThrow();
  }

  private static String reason(Outcome<?> outcome) {
    return outcome.fold(Object::toString, none -> none.reason());
  }
}

package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.bone.Flag;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.taxon.Growth;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * What keeps a bone out of any fit.
 *
 * @param sentence the whole answer in words
 */
record BeforeFit(Answer answer, String sentence) {

  /** The reason in the bone itself, or none. A taxon that the tree lacks counts as full-grown. */
  static Optional<BeforeFit> ofState(
      BoneInHand bone, Shelf shelf, TaxonTree tree, String element, Phrases phrases) {
    if (bone.state().young() && growthEnds(bone, shelf, tree)) {
      return Optional.of(new BeforeFit(Answer.YOUNG_BONE, phrases.say("young")));
    }
    List<String> reasons = new ArrayList<>();
    for (Flag flag : Flag.values()) {
      if (bone.state().flags().contains(flag) && flag.keepsOutOfFits() && !flag.young()) {
        reasons.add(phrases.say("flag." + flag));
      }
    }
    return reasons.isEmpty()
        ? Optional.empty()
        : Optional.of(
            notFitted(phrases.say("notfitted.state", element, phrases.all(reasons)), phrases));
  }

  static BeforeFit notFitted(String reason, Phrases phrases) {
    return new BeforeFit(Answer.NOT_FITTED, phrases.say("notfitted", reason));
  }

  private static boolean growthEnds(BoneInHand bone, Shelf shelf, TaxonTree tree) {
    return shelf.animals().stream()
        .filter(a -> a.bones().stream().anyMatch(b -> b.element().equals(bone.element())))
        .flatMap(a -> a.taxon().stream())
        .distinct()
        .anyMatch(taxon -> determinate(taxon, tree));
  }

  private static boolean determinate(TaxonName taxon, TaxonTree tree) {
    return tree.taxon(taxon).map(t -> t.growth() == Growth.DETERMINATE).orElse(true);
  }
}

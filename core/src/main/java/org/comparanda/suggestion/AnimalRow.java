package org.comparanda.suggestion;

import java.util.List;
import java.util.Optional;
import org.comparanda.bone.Side;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;

/**
 * One comparative animal and its bones of one element.
 *
 * @param mean the mean of its bones per measurement
 * @param bones at least one, those that may feed fits
 */
record AnimalRow(
    AnimalId animal, TaxonName taxon, Optional<String> drawer, BoneRow mean, List<BoneRow> bones) {
  AnimalRow {
    bones = List.copyOf(bones);
  }

  /** Its left and right bone, when it has exactly one of each. */
  Optional<List<BoneRow>> pair() {
    List<BoneRow> left = bones.stream().filter(b -> b.side() == Side.LEFT).toList();
    List<BoneRow> right = bones.stream().filter(b -> b.side() == Side.RIGHT).toList();
    return left.size() == 1 && right.size() == 1
        ? Optional.of(List.of(left.get(0), right.get(0)))
        : Optional.empty();
  }
}

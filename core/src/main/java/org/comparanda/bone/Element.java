package org.comparanda.bone;

import java.util.List;
import java.util.Map;

/**
 * An element of the skeleton, as the protocol files describe it.
 *
 * @param key unique key
 * @param name name shown
 * @param region where in the skeleton (skull, fore limb, ...), for grouping in lists
 * @param symmetry sided or axial
 * @param perSkeleton number in one skeleton by animal group (bovid, equid, turtle, ...); empty
 *     where it varies too much to be counted
 * @param growingEnds the ends whose fusion is recorded, the upper or front one first; empty when
 *     not applicable
 * @param ontologyId identifier in an open anatomy ontology, empty when there is none
 * @param source where the row comes from
 */
public record Element(
    ElementKey key,
    String name,
    String region,
    Symmetry symmetry,
    Map<String, Integer> perSkeleton,
    List<GrowingEnd> growingEnds,
    String ontologyId,
    String source) {
  public Element {
    perSkeleton = Map.copyOf(perSkeleton);
    growingEnds = List.copyOf(growingEnds);
  }
}

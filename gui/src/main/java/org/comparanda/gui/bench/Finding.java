package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import org.comparanda.reference.BoneInHand;
import org.comparanda.suggestion.AnimalPoint;
import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.Suggestion;

/**
 * Everything reckoned for one state of one bone.
 *
 * @param bone the bone with the values that were used
 * @param points the comparative animals as dots
 * @param size body mass if it is of the likeliest candidate; empty where nothing can be said
 * @param comparison the shelf and rules that were asked
 */
record Finding(
    BoneInHand bone,
    Suggestion suggestion,
    List<AnimalPoint> points,
    Optional<Advice.Size> size,
    Comparison comparison) {
  Finding {
    points = List.copyOf(points);
  }
}

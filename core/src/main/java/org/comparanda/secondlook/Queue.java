package org.comparanda.secondlook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.taxon.TaxonName;

/**
 * Draws bones for a second look: every nth in the order of their calls, and apart from it those
 * that are worth it for a reason. A bone stands in the queue once; the draw comes first, so that it
 * stays what it is.
 *
 * @param everyNth n, at least 1
 * @param lowTypicality below this a call is looked at again
 */
public record Queue(int everyNth, double lowTypicality) {
  public Queue {
    if (everyNth < 1) {
      throw new IllegalArgumentException("Every nth bone: n is at least 1, got " + everyNth + ".");
    }
  }

  /** Every tenth bone; typicality below 0.05. */
  public static Queue withDefaults() {
    return new Queue(10, 0.05);
  }

  public Queue withEveryNth(int n) {
    return new Queue(n, lowTypicality);
  }

  /** The queue, in the order of the calls. */
  public List<Queued> of(List<FirstLook> inOrder) {
    List<Queued> queue = new ArrayList<>();
    Set<TaxonName> seen = new HashSet<>();
    int position = 0;
    for (FirstLook look : inOrder) {
      position++;
      why(position, look, seen).ifPresent(why -> queue.add(new Queued(look.call().bone(), why)));
      seen.add(look.call().taxon());
    }
    return queue;
  }

  /**
   * Why a bone is looked at again; empty when it is not.
   *
   * @param position of its first call among all first calls, from 1
   * @param seen taxa that were called before
   */
  public Optional<Queued.Why> why(int position, FirstLook look, Set<TaxonName> seen) {
    if (position % everyNth == 0) {
      return Optional.of(Queued.Why.EVERY_NTH);
    }
    if (look.suggested().filter(s -> !s.equals(look.call().taxon())).isPresent()) {
      return Optional.of(Queued.Why.CALL_AGAINST_SUGGESTION);
    }
    if (!seen.contains(look.call().taxon())) {
      return Optional.of(Queued.Why.FIRST_OF_ITS_KIND);
    }
    return look.typicality().filter(t -> t < lowTypicality).map(t -> Queued.Why.LOW_TYPICALITY);
  }

  /** The rule in words, as it is kept with every draw. */
  public String inWords() {
    return "every " + everyNth + ". first call; typicality below " + lowTypicality;
  }
}

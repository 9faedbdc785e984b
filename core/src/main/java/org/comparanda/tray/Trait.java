package org.comparanda.tray;

import java.util.List;
import org.comparanda.bone.ElementKey;
import org.comparanda.taxon.TaxonName;

/**
 * Something to look at on a bone of a look-alike pair.
 *
 * @param taxa the two that look alike
 * @param look where to look
 * @param question answered yes, no or can't see
 * @param yes the one of the two that yes speaks for
 * @param source where it is said
 */
public record Trait(
    String key,
    List<TaxonName> taxa,
    ElementKey element,
    String look,
    String question,
    TaxonName yes,
    String source) {
  public Trait {
    taxa = List.copyOf(taxa);
  }
}

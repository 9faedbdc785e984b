package org.comparanda.tray;

import java.util.List;
import java.util.Optional;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * What the numbers said when a call was made; never a part of the call.
 *
 * @param named the taxa that they named; empty where they named none
 * @param ruledOut the taxa in the drawer
 * @param typicality of the called taxon, where it was fitted
 */
public record Beside(List<TaxonName> named, List<TaxonName> ruledOut, Optional<Double> typicality) {
  public Beside {
    named = List.copyOf(named);
    ruledOut = List.copyOf(ruledOut);
  }

  /** Nothing was compared, or the house hides it. */
  public static Beside nothing() {
    return new Beside(List.of(), List.of(), Optional.empty());
  }

  /**
   * Whether a call goes against it: the called taxon lies in the drawer, or the numbers named taxa
   * and it is none of them, nor a group around one, nor inside one.
   */
  public boolean against(TaxonName called, TaxonTree tree) {
    if (ruledOut.stream().anyMatch(out -> tree.same(out, called))) {
      return true;
    }
    return !named.isEmpty()
        && named.stream().noneMatch(name -> tree.within(name, called) || tree.within(called, name));
  }
}

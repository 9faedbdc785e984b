package org.comparanda.dossier;

import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.suggestion.TaxonFit;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Beside;
import org.comparanda.tray.TrayBone;

/** What the numbers say beside a call: kept with it, never a part of it. */
public final class BesideCall {
  private BesideCall() {}

  /** Of a measured bone; nothing for one that has no reading or may be human. */
  public static Beside of(Comparison comparison, Dossier bone, TaxonName called) {
    boolean silent = bone.bone().standing() == TrayBone.Standing.STOPPED || bone.values().isEmpty();
    return silent ? Beside.nothing() : of(comparison.suggest(bone.inHand()), called);
  }

  /** Of a suggestion that was made already. */
  public static Beside of(Suggestion suggestion, TaxonName called) {
    return new Beside(
        suggestion.candidates(),
        suggestion.drawer().stream().map(entry -> entry.taxon()).toList(),
        suggestion.taxa().stream()
            .filter(fit -> fit.taxon().equals(called))
            .map(TaxonFit::typicality)
            .findFirst());
  }
}

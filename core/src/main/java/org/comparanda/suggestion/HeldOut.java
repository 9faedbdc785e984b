package org.comparanda.suggestion;

import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.discriminant.Shares;
import org.comparanda.taxon.TaxonName;

/**
 * What the shelf says of one offered bone without its animal.
 *
 * @param set the part of the trial's set that it has
 * @param taxon what it is
 * @param group number of that taxon
 * @param shares by group
 * @param taxonInFit whether other animals of its taxon are left
 * @param fits largest share first; not estimable where the sample is too thin
 * @param beforeGate the answer before the gate
 */
record HeldOut(
    Offered offered,
    List<MeasurementCode> set,
    TaxonName taxon,
    int group,
    Optional<TaxonName> suggested,
    Outcome<Shares> shares,
    boolean taxonInFit,
    Outcome<List<TaxonFit>> fits,
    Answer beforeGate) {
  HeldOut {
    set = List.copyOf(set);
  }

  boolean hit() {
    return suggested.filter(taxon::equals).isPresent();
  }

  /** Whether the answer before the gate names this taxon alone. */
  boolean namesAlone(TaxonName name) {
    return beforeGate == Answer.FITS_ONE && suggested.filter(name::equals).isPresent();
  }
}

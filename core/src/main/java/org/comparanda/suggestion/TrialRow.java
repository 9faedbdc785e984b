package org.comparanda.suggestion;

import java.util.List;
import java.util.Optional;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.AnimalId;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/**
 * One bone of a comparative animal, answered with that animal out of the fit.
 *
 * @param animal whose bone
 * @param side its side
 * @param taxon what it is
 * @param measurements the part of the set that it has
 * @param suggested taxon of largest share; empty where nothing could be fitted (a miss)
 * @param share share of the suggested taxon
 * @param typicality typicality of the suggested taxon
 * @param beforeGate what the Bench says of this bone before the gate: {@code FITS_ONE} may still
 *     become {@code NEVER_TESTED}
 */
public record TrialRow(
    AnimalId animal,
    Side side,
    TaxonName taxon,
    List<MeasurementCode> measurements,
    Optional<TaxonName> suggested,
    Outcome<Double> share,
    Outcome<Double> typicality,
    Answer beforeGate) {
  public TrialRow {
    measurements = List.copyOf(measurements);
  }

  /** Whether the largest share is that of the true taxon. */
  public boolean hit() {
    return suggested.filter(taxon::equals).isPresent();
  }
}

package org.comparanda.tray;

import java.time.Instant;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.taxon.TaxonName;

/**
 * A person's determination of one bone. History is kept: a later call never replaces an earlier
 * one.
 *
 * @param id running number in its collection, given by the repository
 * @param basis compared with which animals, by eye, by measurement or both
 * @param sawSuggestion whether the suggestion was on show before the call
 */
public record Call(
    long id,
    BoneId bone,
    TaxonName taxon,
    Qualifier qualifier,
    PersonId person,
    Instant at,
    String basis,
    boolean sawSuggestion) {

  /** The same call under the number that its repository gave it. */
  public Call withId(long given) {
    return new Call(given, bone, taxon, qualifier, person, at, basis, sawSuggestion);
  }
}

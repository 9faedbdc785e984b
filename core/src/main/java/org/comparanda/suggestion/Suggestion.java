package org.comparanda.suggestion;

import java.util.List;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;

/**
 * What the numbers say about one bone. Never an identification.
 *
 * @param bone its number
 * @param element which bone
 * @param measurements the set S that was used, in protocol order
 * @param answer exactly one answer
 * @param sentence the answer in one plain sentence, first thing shown
 * @param sampleLine the line under it: bone, sample and how the trial of this set went; empty where
 *     nothing was fitted
 * @param details what stands under it: why, what would settle it, when it depends on the prior, ...
 * @param taxa all taxa of the fit by share, largest first; empty for {@code YOUNG_BONE}, {@code
 *     NOT_FITTED}, {@code SHELF_TOO_THIN}
 * @param withoutSize the same taxa when size counts for nothing; empty under 3 measurements and on
 *     other scales than logs
 * @param groups the shares added up the tree, for groups of two or more of these taxa
 * @param candidates the set C of the answer rules
 * @param calibratedList the conformal list
 * @param calibratedLabel what the list promises, and on what condition
 * @param proposal the name proposed to the person, never applied; empty when none is
 * @param drawer taxa that lie in the drawer
 * @param nearest the three nearest comparative animals
 * @param next at most two measurements worth taking next
 * @param warnings what to be careful about
 * @param basis sample, priors, method and thresholds behind the answer
 */
public record Suggestion(
    String bone,
    ElementKey element,
    List<MeasurementCode> measurements,
    Answer answer,
    String sentence,
    String sampleLine,
    List<String> details,
    List<TaxonFit> taxa,
    List<SizeFreeFit> withoutSize,
    List<GroupShare> groups,
    List<TaxonName> candidates,
    List<TaxonName> calibratedList,
    String calibratedLabel,
    Optional<ProposedName> proposal,
    List<DrawerEntry> drawer,
    List<NearestAnimal> nearest,
    List<NextMeasurement> next,
    List<String> warnings,
    Basis basis) {
  public Suggestion {
    measurements = List.copyOf(measurements);
    details = List.copyOf(details);
    taxa = List.copyOf(taxa);
    withoutSize = List.copyOf(withoutSize);
    groups = List.copyOf(groups);
    candidates = List.copyOf(candidates);
    calibratedList = List.copyOf(calibratedList);
    drawer = List.copyOf(drawer);
    nearest = List.copyOf(nearest);
    next = List.copyOf(next);
    warnings = List.copyOf(warnings);
  }

  /**
   * What the answer rests on.
   *
   * @param animals animals in the fit
   * @param taxa taxa in the fit
   * @param priors named: equal, shelf, or the file and its source
   * @param method the method used, with the reason it was chosen
   * @param missing how missing measurements were met
   * @param leftOut the animal that the bone belongs to, out of everything
   * @param setAside taxa that cannot occur here, with the reason
   * @param thresholds the numbers it was decided by
   * @param shelfVersion hash of the rows of the shelf
   */
  public record Basis(
      int animals,
      int taxa,
      String priors,
      String method,
      Missing missing,
      Optional<AnimalId> leftOut,
      List<SetAside> setAside,
      Thresholds thresholds,
      String shelfVersion) {
    public Basis {
      setAside = List.copyOf(setAside);
    }
  }

  /**
   * How measurements that animals of the shelf lack were met.
   *
   * @param way what was done
   * @param words the same in plain sentences
   * @param wholeAnimals animals that have the whole set
   * @param lowestTypicality the smallest typicality that could come out, where it is a rank; empty
   *     where it has no such bound
   */
  public record Missing(
      Way way, String words, int wholeAnimals, Optional<Double> lowestTypicality) {
    /** What is done about holes. */
    public enum Way {
      /** No fit was made. */
      NOT_FITTED,
      /** Only animals that have the whole set are in the fit. */
      EXACT_SUBSET,
      /** Too few have it: holes were filled by expectation and maximisation. */
      FILLED
    }

    static Missing notFitted() {
      return new Missing(Way.NOT_FITTED, "No fit was made.", 0, Optional.empty());
    }
  }
}

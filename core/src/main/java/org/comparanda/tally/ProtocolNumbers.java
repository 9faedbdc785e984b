package org.comparanda.tally;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Symmetry;
import org.comparanda.measurement.Protocol;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/**
 * Numbers per skeleton from the protocol. First comes what a table itself says; then the number of
 * the taxon's group; for a taxon in no group, the number in which all groups agree (every one of
 * them has two humeri), otherwise none.
 */
public final class ProtocolNumbers implements PerSkeleton {
  private final Protocol protocol;
  private final Function<TaxonName, Optional<String>> groupOf;
  private final Map<Bone, Occurrence> told;

  /** An element of a taxon. */
  public record Bone(TaxonName taxon, ElementKey element) {}

  /**
   * Numbers of a protocol.
   *
   * @param groupOf the group of a taxon, as the elements of the protocol name it
   * @param told what a table says for itself
   */
  public ProtocolNumbers(
      Protocol protocol,
      Function<TaxonName, Optional<String>> groupOf,
      Map<Bone, Occurrence> told) {
    this.protocol = protocol;
    this.groupOf = groupOf;
    this.told = Map.copyOf(told);
  }

  @Override
  public Outcome<Occurrence> of(TaxonName taxon, ElementKey element) {
    Occurrence said = told.get(new Bone(taxon, element));
    if (said != null) {
      return Outcome.of(said);
    }
    return protocol
        .element(element)
        .map(e -> number(e, taxon).then(n -> occurrence(n, e.symmetry())))
        .orElseGet(
            () ->
                Outcome.none(
                    "\"" + element + "\" is no element of the protocol.",
                    "Give its number in one skeleton in a column per_skeleton."));
  }

  private static Outcome<Occurrence> occurrence(int number, Symmetry symmetry) {
    return Outcome.of(new Occurrence(number, symmetry));
  }

  private Outcome<Integer> number(Element element, TaxonName taxon) {
    Optional<String> group = groupOf.apply(taxon);
    if (group.isPresent()) {
      Integer number = element.perSkeleton().get(group.get());
      return number == null
          ? notRecorded("its number in one skeleton isn't recorded for " + group.get() + ".")
          : Outcome.of(number);
    }
    Set<Integer> agreed = Set.copyOf(element.perSkeleton().values());
    return agreed.size() == 1
        ? Outcome.of(agreed.iterator().next())
        : notRecorded(
            agreed.isEmpty()
                ? "its number in one skeleton isn't recorded."
                : taxon + " is in no group, and groups differ in its number.");
  }

  private static Outcome<Integer> notRecorded(String reason) {
    return Outcome.none(reason, "Give it in a column per_skeleton, or add it to the protocol.");
  }
}

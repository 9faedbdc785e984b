package org.comparanda.oldcards;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Qualifier;

/**
 * What a card seems to say. A proposal only: nothing of it is stored before a person accepts it.
 *
 * @param taxon name read, if exactly one was
 * @param qualifier of the name
 * @param element which bone, if exactly one was read
 * @param side its side; not known where the card doesn't say
 * @param portion whole where the card doesn't say, which {@code taken} then says
 * @param flags cast, burnt, …
 * @param count how many pieces
 * @param lengths measured values as written, with their unit
 * @param place where from, as written; empty where the card doesn't say
 * @param pieces every word of the card and what it was read as
 * @param taken what the card doesn't say and was taken to be so
 * @param doubts why the card must be looked at by itself; none for a plain one
 */
public record Proposal(
    Optional<TaxonName> taxon,
    Qualifier qualifier,
    Optional<ElementKey> element,
    Side side,
    Portion portion,
    Set<Flag> flags,
    int count,
    Map<MeasurementCode, WrittenLength> lengths,
    String place,
    List<Piece> pieces,
    List<String> taken,
    List<String> doubts) {
  public Proposal {
    flags = Set.copyOf(flags);
    lengths = Collections.unmodifiableMap(new TreeMap<>(lengths));
    pieces = List.copyOf(pieces);
    taken = List.copyOf(taken);
    doubts = List.copyOf(doubts);
  }

  /** Whether it may be accepted together with others of its shape. */
  public boolean plain() {
    return doubts.isEmpty() && taxon.isPresent() && element.isPresent();
  }

  /** Whether the card names human remains; nothing is then made of it. */
  public boolean namesHuman() {
    return pieces.stream().anyMatch(p -> p.part() == Part.HUMAN);
  }

  /** The words that were not read. */
  public List<String> leftOver() {
    return pieces.stream().filter(p -> p.part() == Part.LEFT_OVER).map(Piece::meaning).toList();
  }

  /**
   * The order of what was read, by which cards are accepted together. Words left over are part of
   * it, so that no unknown word rides along unseen; a number left over stands as "number".
   */
  public String shape() {
    return pieces.stream()
        .filter(p -> p.part() != Part.PASSED_OVER)
        .map(
            p ->
                p.part() == Part.LEFT_OVER
                    ? "\"" + (p.meaning().matches("[\\d.,]+") ? "number" : p.meaning()) + "\""
                    : word(p.part()))
        .collect(Collectors.joining(" "));
  }

  /** A part in a word. */
  public static String word(Part part) {
    return part.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }

  /** The same card with a name that a person gives. */
  public Proposal withTaxon(TaxonName other, Qualifier its) {
    return new Proposal(
        Optional.of(other),
        its,
        element,
        side,
        portion,
        flags,
        count,
        lengths,
        place,
        pieces,
        taken,
        doubts);
  }

  /** The same card with the bone that a person says it is. */
  public Proposal withElement(ElementKey other) {
    return new Proposal(
        taxon,
        qualifier,
        Optional.of(other),
        side,
        portion,
        flags,
        count,
        lengths,
        place,
        pieces,
        taken,
        doubts);
  }

  /** The same card with the side that a person says it is. */
  public Proposal withSide(Side other) {
    return new Proposal(
        taxon, qualifier, element, other, portion, flags, count, lengths, place, pieces, taken,
        doubts);
  }
}

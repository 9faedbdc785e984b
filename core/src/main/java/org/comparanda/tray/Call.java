package org.comparanda.tray;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.taxon.TaxonName;

/**
 * A person's determination of one bone. History is kept: a later call never replaces an earlier
 * one, and undoing one is a row of its own.
 *
 * @param id running number in its collection, given by the repository
 * @param basis in the person's words: compared with which animals, by eye, by measurement or both
 * @param sawSuggestion whether the suggestion was on show before the call
 * @param grounds the same in parts
 * @param kind what the row is
 * @param answers the call that it withdraws, looks at again or resolves
 */
public record Call(
    long id,
    BoneId bone,
    TaxonName taxon,
    Qualifier qualifier,
    PersonId person,
    Instant at,
    String basis,
    boolean sawSuggestion,
    Grounds grounds,
    Kind kind,
    Optional<Long> answers) {
  /** What a row of calls is. */
  public enum Kind {
    /** A call as people make them. */
    CALL,
    /** A second person's, made blind; stands beside the first and replaces nothing. */
    SECOND_LOOK,
    /** A third person's, where two differed; holds from then on. */
    THIRD_PERSON,
    /** What people who differed agreed on together; holds from then on. */
    CONSENSUS,
    /** Takes the call that it points at back. */
    WITHDRAWAL
  }

  /** An ordinary call, of whose grounds only the words are kept. */
  public Call(
      long id,
      BoneId bone,
      TaxonName taxon,
      Qualifier qualifier,
      PersonId person,
      Instant at,
      String basis,
      boolean sawSuggestion) {
    this(
        id,
        bone,
        taxon,
        qualifier,
        person,
        at,
        basis,
        sawSuggestion,
        Grounds.notSaid(),
        Kind.CALL,
        Optional.empty());
  }

  /** The same call under the number that its repository gave it. */
  public Call withId(long given) {
    return new Call(
        given, bone, taxon, qualifier, person, at, basis, sawSuggestion, grounds, kind, answers);
  }

  public Call withGrounds(Grounds next) {
    return new Call(
        id, bone, taxon, qualifier, person, at, basis, sawSuggestion, next, kind, answers);
  }

  /** The same words as another kind of row, pointing at a call. */
  public Call as(Kind next, long answered) {
    return new Call(
        id,
        bone,
        taxon,
        qualifier,
        person,
        at,
        basis,
        sawSuggestion,
        grounds,
        next,
        Optional.of(answered));
  }

  /** The name as it is to be read: as written, or with its sign where open nomenclature puts it. */
  public String written() {
    return grounds.asWritten().isBlank()
        ? new WrittenName(taxon, qualifier).text()
        : grounds.asWritten();
  }

  /** What the call rests on, in one line of English; empty where nothing was said. */
  public String basisInWords() {
    return CallWords.in(Locale.ENGLISH).basis(this);
  }
}

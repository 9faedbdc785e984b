package org.comparanda.slips;

import java.time.Instant;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Protocol;

/**
 * What every page says beside its subject.
 *
 * @param paper size of the pages
 * @param collection name of the collection
 * @param program name and version of this program
 * @param at when the page is made
 * @param dayBookHead head hash of the Day Book: proves later what was recorded by then
 * @param data whether bones or animals are simulated; every page then says so
 * @param name the name of a person as it may be printed
 * @param language of the page; English where there are no words in it
 * @param said what other packages say in English, in that language
 */
public record SlipFacts(
    Paper paper,
    String collection,
    String program,
    Instant at,
    String dayBookHead,
    DataKind data,
    Protocol protocol,
    Function<PersonId, String> name,
    Locale language,
    UnaryOperator<String> said) {
  /** A page in English. */
  public SlipFacts(
      Paper paper,
      String collection,
      String program,
      Instant at,
      String dayBookHead,
      DataKind data,
      Protocol protocol,
      Function<PersonId, String> name) {
    this(
        paper,
        collection,
        program,
        at,
        dayBookHead,
        data,
        protocol,
        name,
        Locale.ENGLISH,
        UnaryOperator.identity());
  }

  /** Where the data come from. */
  public enum DataKind {
    RECORDED,
    SIMULATED
  }
}

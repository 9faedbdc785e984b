package org.comparanda.suggestion;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;

/**
 * What of an answer is compared when it is reckoned again.
 *
 * @param taxa by share, largest first
 * @param animals the animals that it rests on, each with its print ({@link
 *     Comparison#animalsBehind})
 */
public record AnswerFigures(
    Answer answer,
    String sentence,
    List<TaxonFit> taxa,
    List<TaxonName> calibratedList,
    String method,
    Suggestion.Missing.Way missing,
    String shelfVersion,
    Map<AnimalId, String> animals) {
  public AnswerFigures {
    taxa = List.copyOf(taxa);
    calibratedList = List.copyOf(calibratedList);
    animals = Collections.unmodifiableMap(new TreeMap<>(animals));
  }

  /** Those of a suggestion. */
  public static AnswerFigures of(Suggestion s, Map<AnimalId, String> animals) {
    return new AnswerFigures(
        s.answer(),
        s.sentence(),
        s.taxa(),
        s.calibratedList(),
        s.basis().method(),
        s.basis().missing().way(),
        s.basis().shelfVersion(),
        animals);
  }

  /** What differs in a later answer on the same readings, in plain sentences; none if nothing. */
  public List<String> changesTo(AnswerFigures now) {
    return new AnswerChanges(this, now).sentences();
  }
}

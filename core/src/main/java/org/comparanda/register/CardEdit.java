package org.comparanda.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.reference.Source;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * What typed texts make of a card: the whole new card, or every reason why not.
 *
 * @param tree the taxa whose names may be used; one that is no longer used gives the one that is
 * @param there names that may be used, too
 * @param today no body measure is later
 */
public record CardEdit(TaxonTree tree, Set<TaxonName> there, LocalDate today) {
  public CardEdit {
    there = Set.copyOf(there);
  }

  /** The edited card, or all that is wrong. */
  public EditedCard apply(AnimalCard before, Map<CardField, String> typed) {
    List<CardProblem> problems = new ArrayList<>();
    AnimalCard card = before;
    for (Map.Entry<CardField, String> entry : typed.entrySet()) {
      AnimalCard here = card;
      card =
          entry
              .getKey()
              .write(here, entry.getValue())
              .fold(
                  written -> written,
                  none -> {
                    problems.add(
                        new CardProblem(
                            entry.getKey(), entry.getValue(), none.reason(), none.remedy()));
                    return here;
                  });
    }
    rules(card, typed.keySet(), problems);
    if (typed.containsKey(CardField.TAXON)) {
      card = card.withAnimal(card.animal().withTaxon(card.animal().taxon().map(tree::accepted)));
    }
    return problems.isEmpty() ? new EditedCard.Sound(card) : new EditedCard.Refused(problems);
  }

  private boolean known(TaxonName name) {
    return tree.taxon(name).isPresent() || there.contains(name);
  }

  private void rules(AnimalCard card, Set<CardField> typed, List<CardProblem> problems) {
    boolean own = card.animal().source() == Source.OWN_DRAWER;
    if (typed.contains(CardField.TAXON)
        && card.animal().taxon().filter(name -> !known(name)).isPresent()) {
      problem(
          problems,
          card,
          CardField.TAXON,
          "is no name that this house knows.",
          "Correct the spelling, or bring the name in with its authority first.");
    }
    if (!own && card.animal().drawer().isPresent()) {
      problem(
          problems,
          card,
          CardField.DRAWER,
          "is a drawer, and only own skeletons lie in one.",
          "Empty the drawer, or make it the own drawer's.");
    }
    if (!own && card.sourceName().isEmpty() && typed.contains(CardField.SOURCE)) {
      problem(
          problems,
          card,
          CardField.SOURCE_NAME,
          "doesn't say where it is.",
          "Name the other house or the publication.");
    }
    measured(card, card.animal().bodyLengthMm(), card.length(), LENGTH, problems);
    measured(card, card.animal().bodyMassG(), card.mass(), MASS, problems);
  }

  private static final List<CardField> LENGTH = List.of(CardField.BODY_LENGTH, CardField.LENGTH_ON);
  private static final List<CardField> MASS = List.of(CardField.BODY_MASS, CardField.MASS_ON);

  private void measured(
      AnimalCard card,
      Optional<Double> value,
      BodyMeasure how,
      List<CardField> fields,
      List<CardProblem> problems) {
    if (value.isEmpty() && !how.equals(BodyMeasure.notKnown())) {
      problem(
          problems,
          card,
          fields.get(0),
          "is missing, while its day, method or kind is said.",
          "Give the value, or empty those too.");
    }
    if (how.on().filter(day -> day.isAfter(today)).isPresent()) {
      problem(problems, card, fields.get(1), "lies ahead.", "Give the day it was taken.");
    }
  }

  private static void problem(
      List<CardProblem> problems, AnimalCard card, CardField field, String message, String remedy) {
    problems.add(new CardProblem(field, field.text(card), message, remedy));
  }
}

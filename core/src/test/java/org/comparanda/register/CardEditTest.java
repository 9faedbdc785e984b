package org.comparanda.register;

import static org.comparanda.register.Invented.code;
import static org.comparanda.register.Invented.sheep;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Side;
import org.comparanda.reference.Source;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.junit.jupiter.api.Test;

class CardEditTest {
  private static final CardEdit EDIT =
      new CardEdit(
          TaxonTree.empty(), Set.of(new TaxonName("Capra hircus")), LocalDate.of(2026, 11, 25));
  private static final AnimalCard SHEEP = sheep("A-1", Side.LEFT, Map.of(code("GL"), 150.0));

  private static List<String> refused(Map<CardField, String> typed) {
    return EDIT.apply(SHEEP, typed)
        .fold(
            card -> List.of("not refused"),
            problems -> problems.stream().map(CardProblem::line).toList());
  }

  private static AnimalCard sound(Map<CardField, String> typed) {
    return EDIT.apply(SHEEP, typed)
        .fold(
            card -> card,
            problems -> {
              throw new AssertionError(problems.toString());
            });
  }

  @Test
  void everyFieldReadsBackAsItWasTyped() {
    Map<CardField, String> typed =
        Map.ofEntries(
            Map.entry(CardField.TAXON, "Capra hircus"),
            Map.entry(CardField.SOURCE, "another house"),
            Map.entry(CardField.SOURCE_NAME, "invented house"),
            Map.entry(CardField.SEX, "female"),
            Map.entry(CardField.AGE_CLASS, "subadult"),
            Map.entry(CardField.ORIGIN, "captive"),
            Map.entry(CardField.FLAGS, "cast|gnawed"),
            Map.entry(CardField.BODY_LENGTH, "1234.5 mm"),
            Map.entry(CardField.LENGTH_ON, "2026-11-24"),
            Map.entry(CardField.LENGTH_HOW, "tape along the back"),
            Map.entry(CardField.LENGTH_KIND, "fresh"),
            Map.entry(CardField.BODY_MASS, "45000 g"),
            Map.entry(CardField.MASS_ON, "2026-11-23"),
            Map.entry(CardField.MASS_HOW, "spring balance"),
            Map.entry(CardField.MASS_KIND, "estimated"),
            Map.entry(CardField.PERMIT, "P 17"),
            Map.entry(CardField.PERMIT_WORDS, "to be returned"),
            Map.entry(CardField.EXPORT, "forbidden"),
            Map.entry(CardField.HAND_OVER_BY, "2027-01-31"),
            Map.entry(CardField.REMARKS, "found in spring"));
    AnimalCard edited = sound(typed);
    typed.forEach((field, text) -> assertEquals(text, field.text(edited), field.words()));
    assertEquals(Source.ANOTHER_HOUSE, edited.animal().source());
    assertEquals(Set.of(Flag.CAST, Flag.GNAWED), edited.animal().flags());
  }

  @Test
  void unitsAreTurnedIntoMillimetresAndGrams() {
    AnimalCard edited =
        sound(Map.of(CardField.BODY_LENGTH, "1.5 m", CardField.BODY_MASS, "45,5kg"));
    assertEquals(Optional.of(1500.0), edited.animal().bodyLengthMm());
    assertEquals(Optional.of(45_500.0), edited.animal().bodyMassG());
  }

  @Test
  void everythingWrongIsNamedAtOnce() {
    assertEquals(
        4,
        refused(
                Map.of(
                    CardField.ORIGIN, "zoo",
                    CardField.FLAGS, "plaster",
                    CardField.BODY_MASS, "1,234",
                    CardField.HAND_OVER_BY, "soon"))
            .size());
  }

  @Test
  void anUnknownTaxonIsRefusedWithWhatToDo() {
    assertEquals(
        List.of(
            "taxon: \"Capra hirkus\" is no name that this house knows. Correct the spelling, or"
                + " bring the name in with its authority first."),
        refused(Map.of(CardField.TAXON, "Capra hirkus")));
  }

  @Test
  void onlyOwnSkeletonsLieInADrawer() {
    assertEquals(
        List.of(
            "drawer: \"3\" is a drawer, and only own skeletons lie in one. Empty the drawer, or"
                + " make it the own drawer's."),
        refused(
            Map.of(
                CardField.DRAWER, "3",
                CardField.SOURCE, "publication",
                CardField.SOURCE_NAME, "an invented paper")));
  }

  @Test
  void aDayAheadAndAMethodWithoutAValueAreRefused() {
    assertEquals(
        List.of(
            "body_mass: \"\" is missing, while its day, method or kind is said. Give the value, or"
                + " empty those too.",
            "body_mass_on: \"2026-11-26\" lies ahead. Give the day it was taken."),
        refused(Map.of(CardField.MASS_ON, "2026-11-26")));
  }

  @Test
  void changesNameFieldBoneOldAndNew() {
    AnimalCard edited =
        sound(Map.of(CardField.SEX, "female"))
            .withAnimal(
                SHEEP
                    .animal()
                    .withSex("female")
                    .withBones(sheep("x", Side.LEFT, Map.of(code("GL"), 151.5)).animal().bones()));
    assertEquals(
        List.of(new Change("sex", "", "female"), new Change("humerus left GL", "150", "151.5")),
        Changes.between(SHEEP, edited));
  }

  @Test
  void handOverIsRemindedOfAndLeftToThePermit() {
    AnimalCard due =
        SHEEP.withRestriction(
            new Restriction(
                "P 17",
                "returned by the end of January",
                Restriction.Export.FORBIDDEN,
                Optional.of(LocalDate.of(2027, 1, 24))));
    assertEquals(
        List.of(
            "A-1 is to be handed over by 2027-01-24. Permit P 17 decides. It says: \"returned by"
                + " the end of January\"."),
        HandOver.due(List.of(due, SHEEP), LocalDate.of(2026, 11, 25)).stream()
            .map(HandOver::sentence)
            .toList());
    assertEquals(
        List.of(), HandOver.due(List.of(due), LocalDate.of(2026, 11, 24)), "61 days before");
  }
}

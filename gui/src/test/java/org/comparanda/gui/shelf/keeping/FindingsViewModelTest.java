package org.comparanda.gui.shelf.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.check.FindingKind;
import org.comparanda.check.Judgement;
import org.comparanda.gui.shelf.keeping.FindingsViewModel.Which;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.ChangeNote;
import org.comparanda.register.HandOver;
import org.comparanda.register.Restriction;
import org.comparanda.storage.Collection;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shelf's T-1 has a left and a right humerus that differ by a tenth. */
class FindingsViewModelTest {
  @TempDir Path folder;
  private Collection collection;
  private FindingsViewModel findings;

  @BeforeEach
  void open() {
    collection = KeepersRoom.collection(folder);
    findings = new FindingsViewModel(KeepersRoom.of(collection), Runnable::run, Runnable::run);
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private Judgement sides() {
    return findings.listed().stream()
        .filter(j -> j.finding().kind() == FindingKind.SIDES_DIFFER)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void itSaysWhichCheckRunsAndHowManyWereFound() {
    List<String> said = new ArrayList<>();
    findings.sentenceProperty().addListener((o, was, is) -> said.add(is));
    findings.look();
    assertTrue(said.contains("Check 1 of 12: another unit …"), said.toString());
    assertEquals("2 findings are open; 0 accepted.", said.get(said.size() - 1));
  }

  @Test
  void anAcceptedFindingIsRememberedWithItsReason() {
    findings.look();
    findings.accept(sides().finding());
    assertEquals(
        "A finding is accepted with a reason; type it first.", findings.sentenceProperty().get());
    findings.reasonProperty().set("healed break");
    findings.accept(sides().finding());
    assertEquals("One finding is open; 1 accepted.", findings.sentenceProperty().get());
    findings.look();
    findings.whichProperty().set(Which.ACCEPTED);
    assertEquals("healed break", sides().accepted().orElseThrow().reason());
    assertTrue(
        collection.dayBook().entries().stream()
            .anyMatch(e -> e.subject().startsWith("accepted finding")));
  }

  @Test
  void aHandOverIsRemindedOfInThePermitsWords() {
    AnimalCard card = collection.register().card(new AnimalId("T-1")).orElseThrow();
    AnimalCard due =
        card.withRestriction(
            new Restriction(
                "X 17",
                "back by new year",
                Restriction.Export.ALLOWED,
                Optional.of(LocalDate.of(2026, 12, 31))));
    assertTrue(
        collection
            .register()
            .change(card, due, new ChangeNote(new PersonId("p1"), "permit found"))
            .value()
            .isPresent());
    findings.look();
    assertEquals(
        List.of(
            "T-1 is to be handed over by 2026-12-31. Permit X 17 decides. It says: \"back by new"
                + " year\"."),
        findings.due().stream().map(HandOver::sentence).toList());
  }
}

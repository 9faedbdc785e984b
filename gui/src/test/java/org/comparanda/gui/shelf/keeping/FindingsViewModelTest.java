package org.comparanda.gui.shelf.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.Flag;
import org.comparanda.check.Correction;
import org.comparanda.check.Finding;
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
  private final Signature signature = new Signature();
  private Collection collection;
  private FindingsViewModel findings;

  @BeforeEach
  void open() {
    collection = KeepersRoom.collection(folder);
    findings =
        new FindingsViewModel(
            KeepersRoom.of(collection),
            signature,
            Runnable::run,
            Runnable::run,
            Runnable::run,
            () -> {});
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private Judgement sides() {
    return of(FindingKind.SIDES_DIFFER);
  }

  private Judgement of(FindingKind kind) {
    return findings.listed().stream()
        .filter(j -> j.finding().kind() == kind)
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
  void stoppedItLeavesTheListAsItWas() {
    List<Runnable> waiting = new ArrayList<>();
    FindingsViewModel slow =
        new FindingsViewModel(
            KeepersRoom.of(collection),
            signature,
            Runnable::run,
            waiting::add,
            Runnable::run,
            () -> {});
    slow.sentenceProperty()
        .addListener(
            (o, was, is) -> {
              if (is.startsWith("Check 3 of 12")) {
                slow.stop();
              }
            });
    slow.look();
    assertTrue(slow.runningProperty().get());
    waiting.remove(0).run();
    assertEquals("Stopped before the end; the list is as it was.", slow.sentenceProperty().get());
    assertEquals(List.of(), slow.listed());
    assertTrue(!slow.runningProperty().get());
  }

  @Test
  void anAcceptedFindingIsRememberedWithItsReason() {
    findings.look();
    findings.accept(sides().finding());
    assertEquals(
        "Say who answers the finding and why (e.g. healed break, seen on the bone); nothing was"
            + " stored.",
        findings.sentenceProperty().get());
    signature.whoProperty().set("mb");
    signature.whyProperty().set("healed break");
    findings.accept(sides().finding());
    assertEquals("One finding is open; 1 accepted.", findings.sentenceProperty().get());
    findings.look();
    findings.whichProperty().set(Which.ACCEPTED);
    assertEquals("healed break", sides().accepted().orElseThrow().reason());
    assertEquals(Optional.of(new PersonId("mb")), sides().accepted().orElseThrow().who());
    assertTrue(
        collection.dayBook().entries().stream()
            .anyMatch(e -> e.subject().startsWith("accepted finding")));
  }

  @Test
  void aRemedyIsDoneFromTheListWithNameAndReason() {
    AnimalCard two = collection.register().card(new AnimalId("T-2")).orElseThrow();
    assertTrue(
        collection
            .register()
            .change(
                two,
                two.withAnimal(two.animal().withAgeClass("juvenile")),
                new ChangeNote(new PersonId("p1"), "teeth"))
            .value()
            .isPresent());
    findings.look();
    Finding young = of(FindingKind.YOUNG_IN_FIT).finding();
    assertEquals(
        "Proposed: T-2: the animal gets the flag juvenile, for all its bones.",
        new CorrectionWords(findings.room().words(), Locale.ENGLISH).proposal(young));
    findings.correct(young);
    assertTrue(collection.register().card(new AnimalId("T-2")).orElseThrow().animal().feedsFits());
    signature.whoProperty().set("mb");
    signature.whyProperty().set("milk teeth seen");
    findings.correct(young);
    assertEquals(
        Set.of(Flag.JUVENILE),
        collection.register().card(new AnimalId("T-2")).orElseThrow().animal().flags());
    assertEquals(
        "T-2 was put right. 2 findings are open; 0 accepted.", findings.sentenceProperty().get());
    assertEquals(
        "T-2 is no longer as it was when the list was made. Nothing was stored. Look again.",
        saidWith("again"));
    findings.correct(sides().finding());
    assertTrue(findings.sentenceProperty().get().startsWith("Nothing is proposed"));
  }

  private String saidWith(String why) {
    Finding young =
        new Finding(
            FindingKind.YOUNG_IN_FIT,
            Optional.of("T-2"),
            Optional.of("all"),
            Optional.of("age_class"),
            Optional.of("juvenile"),
            "",
            "",
            Optional.empty(),
            Optional.of(new Correction.AnimalFlag(Flag.JUVENILE)));
    signature.whyProperty().set(why);
    findings.correct(young);
    return findings.sentenceProperty().get();
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

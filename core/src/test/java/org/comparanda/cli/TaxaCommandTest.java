package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.comparanda.measurement.BoneId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.TrayBone;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names come from a file, are renamed and moved. Authorities are from memory, animals invented. */
class TaxaCommandTest {
  private static final String NAMES =
      """
      taxonID,scientificName,scientificNameAuthorship,taxonRank,parentNameUsageID,acceptedNameUsageID,taxonomicStatus,vernacularName,kingdom
      1,Lepus,"Linnaeus, 1758",genus,,,accepted,hares,Animalia
      2,"Lepus europaeus Pallas, 1778","Pallas, 1778",species,1,,accepted,brown hare,Animalia
      3,Lepus invented,,species,1,2,synonym,,Animalia
      """;

  @TempDir Path folder;
  private Path room;

  @BeforeEach
  void fill() throws IOException {
    room = folder.resolve("room.comparanda");
    Path table =
        Files.writeString(
            folder.resolve("shelf.csv"),
            """
            animal,taxon,element,side,GL [mm]
            HB-1,Ovis aries,humerus,left,150
            HB-2,Ovis aries,humerus,right,151
            """);
    assertEquals(0, Typed.command("shelf", "add", table, "--collection", room).code());
  }

  private Typed taxa(Object... words) {
    Object[] all = new Object[words.length + 7];
    all[0] = "taxa";
    System.arraycopy(words, 0, all, 1, words.length);
    Object[] change = {"--collection", room, "--by", "p1", "--why", "new list"};
    System.arraycopy(change, 0, all, words.length + 1, 6);
    return Typed.command(all);
  }

  private String list(String words) {
    return Typed.command("taxa", "list", words, "--collection", room).out();
  }

  @Test
  void namesComeWithAuthorityAndSynonymsAfterADryRun() throws IOException {
    Path names = Files.writeString(folder.resolve("names.csv"), NAMES);
    Typed dry = taxa("add", names, "--dry-run");
    assertEquals(0, dry.code(), dry.err());
    assertTrue(dry.out().contains("Would bring in 3 names; nothing was stored."), dry.out());
    assertEquals("", list("Lepus"));
    assertEquals(0, taxa("add", names).code());
    assertEquals(
        "Lepus europaeus Pallas, 1778, species (brown hare), under Lepus < Vertebrata; synonyms:"
            + " Lepus invented",
        list("invented").strip());
  }

  @Test
  void everyWrongRowIsNamedAndNothingIsStored() throws IOException {
    Path names =
        Files.writeString(
            folder.resolve("names.csv"),
            """
            taxonID,scientificName,parentNameUsageID,taxonomicStatus
            1,Lepus,9,accepted
            2,,1,accepted
            3,Lepus invented,1,synonym
            """);
    Typed added = taxa("add", names);
    assertEquals(2, added.code());
    assertTrue(added.err().contains("no row has this taxonID"), added.err());
    assertTrue(added.err().contains("the name is missing"), added.err());
    assertTrue(added.err().contains("no accepted name is given for the synonym"), added.err());
    assertEquals("", list("Lepus"));
  }

  @Test
  void animalsFollowANewNameAndCallsKeepWhatWasWritten() {
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      opened.trays().save(Room.tray("T", "lot", "place"));
      opened.trays().save(Room.bone("B-1", "T", TrayBone.Standing.OPEN, ""));
      opened.trays().record(Room.call("B-1", "Ovis aries", Qualifier.NONE, "by eye"));
    }
    Typed renamed = taxa("rename", "Ovis aries", "Ovis gmelini");
    assertEquals(0, renamed.code(), renamed.err());
    assertTrue(renamed.out().contains("2 animals with it"), renamed.out());
    assertTrue(list("Ovis aries").startsWith("Ovis gmelini"), list("Ovis aries"));
    Typed show = Typed.command("shelf", "show", "HB-1", "--collection", room, "--history");
    assertTrue(show.out().contains("taxon: \"Ovis aries\" -> \"Ovis gmelini\""), show.out());
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      assertEquals("Ovis aries", opened.trays().callsOn(new BoneId("B-1")).get(0).taxon().value());
    }
    assertEquals(0, Typed.command("daybook", "verify", "--collection", room).code());
  }

  @Test
  void aTaxonIsMovedInTheTree() {
    assertEquals(0, taxa("move", "Ovis", "--under", "Bovidae").code());
    assertTrue(list("Ovis aries").contains("under Ovis < Bovidae <"), list("Ovis aries"));
    Typed ring = taxa("move", "Bovidae", "--under", "Ovis");
    assertEquals(2, ring.code());
    assertFalse(ring.err().contains("program itself failed"), ring.err());
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static void says(Typed typed, String words) {
    assertTrue((typed.out() + typed.err()).contains(words), typed.out() + typed.err());
  }

  @Test
  void anOldNameIsUnderstoodWhereverItIsTypedAndTheAnswerSaysWhatItIsNow() throws IOException {
    assertEquals(0, taxa("rename", "Ovis aries", "Ovis nova").code());
    String now = "Ovis aries stands here as Ovis nova.";
    Typed stock = Typed.command("shelf", "stock", "--taxon", "Ovis aries", "--collection", room);
    says(stock, now);
    says(stock, "Ovis nova        2");
    Typed none = Typed.command("shelf", "stock", "--taxon", "Bos taurus", "--collection", room);
    assertEquals(2, none.code());
    Path more =
        file(
            "more.csv",
            """
            animal,taxon,element,side,GL [mm]
            HB-3,Ovis aries,humerus,left,152
            """);
    Typed added = Typed.command("shelf", "add", more, "--collection", room);
    assertEquals(0, added.code(), added.err());
    says(added, now);
    says(Typed.command("shelf", "show", "HB-3", "--collection", room), "taxon: Ovis nova");
    Object[] edit = {
      "shelf",
      "edit",
      "HB-4",
      "--new",
      "--set",
      "taxon=Ovis aries",
      "--collection",
      room,
      "--by",
      "p1",
      "--why",
      "came in"
    };
    says(Typed.command(edit), now);
    says(Typed.command("shelf", "show", "HB-4", "--collection", room), "taxon: Ovis nova");
    Object[] arrival = {
      "pile", "add", "P1", "--taxon", "Ovis aries", "--from", "invented", "--collection", room
    };
    says(Typed.command(arrival), now);
    says(taxa("rename", "Ovis aries", "Ovis alia"), now + " Nothing was renamed.");
  }

  @Test
  void animalsUnderANameThatBecameASynonymFollowByARename() throws IOException {
    Path names =
        file(
            "syn.csv",
            """
            taxonID,scientificName,parentNameUsageID,acceptedNameUsageID,taxonomicStatus
            1,Ovis,,,accepted
            2,Ovis nova,1,,accepted
            3,Ovis aries,1,2,synonym
            """);
    says(taxa("add", names), "Rename them with: taxa rename \"Ovis aries\" \"Ovis nova\".");
    says(taxa("rename", "Ovis aries", "Ovis nova"), "2 animals with it");
    says(Typed.command("shelf", "show", "HB-1", "--collection", room), "taxon: Ovis nova");
  }

  @Test
  void theNamesGoOutAsATableAndComeBackEqual() throws IOException {
    assertEquals(0, taxa("rename", "Ovis aries", "Ovis nova").code());
    assertEquals(0, taxa("move", "Ovis nova", "--under", "Caprini").code());
    Path out = folder.resolve("out.csv");
    Typed wrote = Typed.command("export", "taxa", out, "--collection", room);
    assertEquals(0, wrote.code(), wrote.err());
    String table = Files.readString(out);
    assertTrue(
        table.startsWith("scientificName,scientificNameAuthorship,taxonRank,parentNameUsage,"),
        table);
    assertTrue(table.contains(",Ovis nova,synonym,"), table);
    Path other = folder.resolve("other.comparanda");
    Path shelf =
        file("shelf2.csv", "animal,taxon,element,side,GL [mm]\nX-1,Bos taurus,humerus,left,300\n");
    assertEquals(0, Typed.command("shelf", "add", shelf, "--collection", other).code());
    Object[] add = {
      "taxa", "add", out, "--collection", other, "--by", "p1", "--why", "the other house's list"
    };
    assertEquals(0, Typed.command(add).code());
    try (Collection here = Collection.open(room, Typed.CLOCK);
        Collection there = Collection.open(other, Typed.CLOCK)) {
      assertEquals(
          java.util.Set.copyOf(HouseTables.of(here).taxa().taxa()),
          java.util.Set.copyOf(HouseTables.of(there).taxa().taxa()));
    }
  }

  @Test
  void oneNameIsBroughtInAndCorrectedWithItsHistory() {
    says(taxa("put", "Ovis vignei"), "is new. Nothing was stored. Say by --under");
    says(
        taxa("put", "Ovis vignei", "--under", "Ovis", "--rank", "species"),
        "Ovis vignei was brought in.");
    says(taxa("put", "Ovis vignei", "--authority", "Blyth, 1841"), "Ovis vignei was corrected.");
    assertTrue(list("vignei").startsWith("Ovis vignei Blyth, 1841, species, under Ovis <"));
    Typed book =
        Typed.command("daybook", "show", "--of", "taxon Ovis vignei", "--collection", room);
    says(book, "authority: \"\" -> \"Blyth, 1841\"");
    says(book, "why: new list");
    assertEquals(0, taxa("rename", "Ovis aries", "Ovis nova").code());
    says(
        taxa("put", "Ovis aries", "--rank", "x"),
        "Ovis aries stands here as Ovis nova. Nothing was stored.");
    says(taxa("put", "Ovis vignei", "--under", "Nowhere"), "is no name of this house");
  }

  @Test
  void aCallUnderTheOldNameIsKeptAsWrittenAndCountsUnderTheNewOne() throws IOException {
    assertEquals(0, taxa("rename", "Ovis aries", "Ovis nova").code());
    Path bones =
        file(
            "tray.csv",
            """
            bone,element,side,GL [mm],taxon
            b-1,humerus,left,150,Ovis aries
            b-2,humerus,left,151,Ovis nova
            """);
    Object[] add = {
      "tray", "add", bones, "--collection", room, "--tray", "t", "--place", "invented", "--by", "p1"
    };
    says(Typed.command(add), "Ovis aries stands here as Ovis nova.");
    for (String[] call : new String[][] {{"b-1", "Ovis aries"}, {"b-2", "Ovis nova"}}) {
      Object[] typed = {
        "tray", "call", call[0], call[1], "--by", "p1", "--basis", "seen", "--collection", room
      };
      Typed made = Typed.command(typed);
      assertEquals(0, made.code(), made.err());
      says(made, "on " + call[0] + ": " + call[1] + ".");
    }
    Typed counted = Typed.command("tally", "--collection", room);
    says(counted, "Ovis nova");
    assertFalse(counted.out().contains("Ovis aries"), counted.out());
  }

  @Test
  void anEquationOfARenamedTaxonIsTriedOnItsAnimals() throws IOException {
    assertEquals(0, taxa("rename", "Ovis aries", "Ovis nova").code());
    Typed size = Typed.command("size", "--equation", "sheep-withers-humerus", "--collection", room);
    says(size, "Ovis aries stands here as Ovis nova.");
    assertFalse((size.out() + size.err()).contains("No animal on the shelf is of"), size.out());
  }

  @Test
  void anEquationOfOnesOwnMayBeOfATaxonOfTheHouse() throws IOException {
    assertEquals(0, taxa("put", "Ovis vignei", "--under", "Ovis", "--rank", "species").code());
    Path own =
        file(
            "own.json",
            """
            {"equations": [{"key": "own", "name": "invented", "taxon": "Ovis vignei",
            "appliesTo": "invented", "predicts": "withers_height", "resultUnit": "mm",
            "element": "humerus", "code": "GL", "predictor": "greatest length",
            "predictorUnit": "mm", "form": "FACTOR", "coefficient": 4, "citation": "invented",
            "howVerified": "invented", "verified": false, "caution": "", "worked": []}]}
            """);
    Object[] size = {"size", "--equation", "own", "--equations", own, "--collection", room};
    says(Typed.command(size), "invented (own), for invented.");
  }

  @Test
  void aTaxonSetAsideOrGivenAPriorUnderItsOldNameIsMeant() throws IOException {
    StringBuilder rows = new StringBuilder("animal,taxon,element,side,GL [mm]\n");
    for (int i = 0; i < 8; i++) {
      rows.append("S-%d,Ovis aries,humerus,left,%d\n".formatted(i, 150 + i));
      rows.append("G-%d,Capra hircus,humerus,left,%d\n".formatted(i, 140 + i));
    }
    Path two = folder.resolve("two.comparanda");
    Typed.command("shelf", "add", file("two.csv", rows.toString()), "--collection", two);
    Typed.command(
        "taxa",
        "rename",
        "Ovis aries",
        "Ovis nova",
        "--collection",
        two,
        "--by",
        "p",
        "--why",
        "w");
    Path bones = file("bones.csv", "bone,element,side,GL [mm]\nb,humerus,left,153\n");
    Typed aside =
        Typed.command(
            "suggest", bones, "--collection", two, "--set-aside", "Ovis aries=too far north");
    says(aside, "Set aside: Ovis aries, now Ovis nova (too far north).");
    assertFalse(aside.out().contains("Fits one: Ovis nova"), aside.out());
    Path priors = file("priors.csv", "taxon,prior\nOvis aries,1\n");
    Typed prior = Typed.command("suggest", bones, "--collection", two, "--priors", priors);
    assertEquals(0, prior.code(), prior.out() + prior.err());
    assertFalse(prior.out().contains("names no taxon"), prior.out());
  }
}

package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Call;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code tally}, from a table or a collection to the JSON; figures of the trade's handbooks. */
class TallyCommandTest {
  @TempDir Path folder;

  private JsonNode tally(String csv, Object... words) throws IOException {
    Path table = Files.writeString(folder.resolve("counts.csv"), csv);
    Path json = folder.resolve("tally.json");
    Object[] line = new Object[words.length + 4];
    line[0] = "tally";
    line[1] = table;
    line[2] = "--json";
    line[3] = json;
    System.arraycopy(words, 0, line, 4, words.length);
    Typed typed = Typed.command(line);
    assertEquals(0, typed.code(), typed.err());
    return new ObjectMapper().readTree(json.toFile()).get("places");
  }

  // Facts E04: list post on Binford 1984, MAU of 50 tibiae is 25.
  @Test
  void fiftyTibiaeAreTwentyFiveUnits() throws IOException {
    JsonNode places = tally("taxon,element,side,count\nOvis aries,tibia,,50\n");
    JsonNode tibia = places.get(0).get("taxa").get(0).get("elements").get(0);
    assertEquals(50, tibia.get("mne").intValue());
    assertEquals(25.0, tibia.get("mau").doubleValue());
  }

  // Facts E06: Lyman 2008, table 6.4; first phalanx 8, 4, 16, 20 by bovid, equid, suid, canid.
  @Test
  void numberInOneSkeletonFollowsTheGroupOfTheTaxon() throws IOException {
    JsonNode taxa =
        tally(
                """
                taxon,element,count
                Bos taurus,phalanx-1,80
                Equus caballus,phalanx-1,80
                Sus scrofa,phalanx-1,80
                Vulpes vulpes,phalanx-1,80
                """)
            .get(0)
            .get("taxa");
    assertEquals("Bos taurus", taxa.get(0).get("taxon").textValue());
    assertEquals(10, taxa.get(0).get("mni").intValue());
    assertEquals(20, taxa.get(1).get("mni").intValue());
    assertEquals("Sus scrofa", taxa.get(2).get("taxon").textValue());
    assertEquals(5, taxa.get(2).get("mni").intValue());
    assertEquals(4, taxa.get(3).get("mni").intValue());
  }

  // Facts E08: Lyman 2008, table 2.14: 5 and 10, 1 and 2, 1 and 2; pooled 7 and 14 right humeri.
  // Strata 2 and 3 with as many right humeri as their published MNI.
  private static final String THREE_STRATA =
      """
      taxon,element,side,place,count
      Taxon one,humerus,right,stratum 1,5
      Taxon one,humerus,left,stratum 1,4
      Taxon one,femur,right,stratum 1,4
      Taxon one,femur,left,stratum 1,3
      Taxon two,humerus,right,stratum 1,10
      Taxon two,humerus,left,stratum 1,5
      Taxon two,femur,right,stratum 1,4
      Taxon two,femur,left,stratum 1,8
      Taxon one,humerus,right,stratum 2,1
      Taxon two,humerus,right,stratum 2,2
      Taxon one,humerus,right,stratum 3,1
      Taxon two,humerus,right,stratum 3,2
      """;

  @Test
  void publishedStrataApartAndTogether() throws IOException {
    JsonNode apart = tally(THREE_STRATA, "--register");
    assertEquals(5, apart.get(0).get("taxa").get(0).get("mni").intValue());
    assertEquals(10, apart.get(0).get("taxa").get(1).get("mni").intValue());
    assertEquals(1, apart.get(1).get("taxa").get(0).get("mni").intValue());
    assertEquals(2, apart.get(2).get("taxa").get(1).get("mni").intValue());
    JsonNode pooled = tally(THREE_STRATA, "--register", "--together");
    assertEquals(1, pooled.size());
    assertEquals(7, pooled.get(0).get("taxa").get(0).get("mni").intValue());
    assertEquals(14, pooled.get(0).get("taxa").get(1).get("mni").intValue());
  }

  // Facts E09 and E10, worked by hand there.
  private static final String TWO_UNITS =
      """
      taxon;element;side;place;count
      Ovis aries;humerus;left;unit 1;3
      Ovis aries;humerus;right;unit 1;1
      Ovis aries;femur;left;unit 1;1
      Ovis aries;femur;right;unit 1;4
      Ovis aries;humerus;left;unit 2;3
      Ovis aries;femur;left;unit 2;2
      Ovis aries;femur;right;unit 2;1
      """;

  @Test
  void handExampleWithTheEffectOfPooling() throws IOException {
    JsonNode apart = tally(TWO_UNITS);
    assertEquals(4, apart.get(0).get("taxa").get(0).get("mni").intValue());
    assertEquals(3, apart.get(1).get("taxa").get(0).get("mni").intValue());
    JsonNode all = tally(TWO_UNITS, "--together").get(0).get("taxa").get(0);
    assertEquals(6, all.get("mni").intValue());
    assertEquals(15, all.get("nisp").intValue());
    JsonNode femur = all.get("elements").get(0);
    assertEquals(8, femur.get("mne").intValue());
    assertEquals(4.0, femur.get("mau").doubleValue());
    assertEquals(100.0, femur.get("percentMau").doubleValue());
    JsonNode humerus = all.get("elements").get(1);
    assertEquals(7, humerus.get("mne").intValue());
    assertEquals(3.5, humerus.get("mau").doubleValue());
    assertEquals(87.5, humerus.get("percentMau").doubleValue());
  }

  // Facts E12: 9 bovid first phalanges of 8 in a skeleton are 2 animals.
  @Test
  void nineUnsidedPhalangesAreTwoAnimals() throws IOException {
    assertEquals(
        2,
        tally("taxon,element,count\nBovidae,phalanx-1,9\n")
            .get(0)
            .get("taxa")
            .get(0)
            .get("mni")
            .intValue());
  }

  // By hand: 5 left of 4 in one skeleton, 2 a side, are ⌈5/2⌉ = 3.
  @Test
  void registeredElementBringsItsNumber() throws IOException {
    JsonNode taxon =
        tally("taxon,element,side,count,per_skeleton\nOvis aries,knuckle,left,5,4\n", "--register")
            .get(0)
            .get("taxa")
            .get(0);
    assertEquals(3, taxon.get("mni").intValue());
    assertEquals(1.25, taxon.get("elements").get(0).get("mau").doubleValue());
  }

  @Test
  void unknownNumberGivesNoUnitsAndSaysWhy() throws IOException {
    JsonNode taxon = tally("taxon,element\nOvis aries,fibula\n").get(0).get("taxa").get(0);
    assertEquals(1, taxon.get("mni").intValue());
    assertTrue(taxon.get("elements").get(0).get("mau").has("notEstimable"));
  }

  @Test
  void everyProblemOfATableIsSaidAndNothingCounted() throws IOException {
    Path table =
        Files.writeString(
            folder.resolve("bad.csv"),
            """
            taxon,element,side,count
            Ovis arise,humerus,left,0
            Ovis aries,humerus,lef,1
            """);
    Typed typed = Typed.command("tally", table);
    assertEquals(2, typed.code());
    assertTrue(typed.err().contains("row 2, column taxon"), typed.err());
    assertTrue(typed.err().contains("row 2, column count"), typed.err());
    assertTrue(typed.err().contains("row 3, column side"), typed.err());
    assertEquals("", typed.out());
  }

  private Path twoLots(String firstPlace, String secondPlace) {
    Path file = folder.resolve("room.comparanda");
    try (Collection room = Collection.create(file, Typed.CLOCK)) {
      lot(room, "A", firstPlace, "Ovis aries", Qualifier.CF);
      lot(room, "B", secondPlace, "Ovis aries", Qualifier.NONE);
    }
    return file;
  }

  private static void lot(
      Collection room, String lot, String place, String taxon, Qualifier qualifier) {
    TrayId tray = new TrayId("tray " + lot);
    room.trays().save(new Tray(tray, lot, lot, BoneAge.RECENT, place, "", Tray.State.WAITING));
    for (String number : List.of("1", "2", "3")) {
      BoneId bone = new BoneId(lot + number);
      room.trays()
          .save(
              new TrayBone(
                  bone,
                  tray,
                  Optional.empty(),
                  new ElementKey("humerus"),
                  Side.LEFT,
                  Portion.WHOLE,
                  BoneState.notRecorded(),
                  TrayBone.Standing.OPEN,
                  ""));
      if (!number.equals("3")) {
        room.trays()
            .record(
                new Call(
                    0,
                    bone,
                    new TaxonName(taxon),
                    qualifier,
                    new PersonId("p1"),
                    Instant.parse("2026-11-25T09:00:00Z"),
                    "by eye",
                    false));
      }
    }
  }

  @Test
  void lotsOfOnePlaceAreCountedTogetherByTheirCalls() throws IOException {
    Path json = folder.resolve("lots.json");
    Typed typed =
        Typed.command(
            "tally", "--collection", twoLots("the same pit", "the same pit"), "--json", json);
    assertEquals(0, typed.code(), typed.err());
    JsonNode taxon =
        new ObjectMapper().readTree(json.toFile()).get("places").get(0).get("taxa").get(0);
    assertEquals(4, taxon.get("nisp").intValue());
    assertEquals(4, taxon.get("mni").intValue());
    assertTrue(typed.err().contains("not counted: 2"), typed.err());
  }

  @Test
  void lotsThatShareNoPlaceAreRefused() throws IOException {
    Path json = folder.resolve("lots.json");
    Path room = twoLots("this pit", "that ditch");
    Typed typed = Typed.command("tally", "--collection", room, "--json", json);
    assertEquals(2, typed.code());
    assertTrue(
        new ObjectMapper()
            .readTree(json.toFile())
            .get("refused")
            .textValue()
            .startsWith("The lots A, B have no recorded place in common"));
    assertEquals(0, Typed.command("tally", "--collection", room, "--lot", "B").code());
  }
}

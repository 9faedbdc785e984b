package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.comparanda.measurement.BoneId;
import org.comparanda.photo.Photo;
import org.comparanda.photo.PhotoSubject;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.ChangeNote;
import org.comparanda.storage.Collection;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Keeping;
import org.comparanda.tray.TrayBone;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures go out without position; made by Pillow with GPS tags (outside/scripts). */
class ExportPhotosTest {
  @TempDir Path folder;
  private Path room = Path.of("");
  private byte[] picture = {};

  @BeforeEach
  void bonesWithPictures() throws IOException {
    room = folder.resolve("room.comparanda");
    try (InputStream in =
        Objects.requireNonNull(getClass().getResourceAsStream("/outside/photos/gps.jpg"))) {
      picture = in.readAllBytes();
    }
    try (Collection opened = Collection.create(room, Typed.CLOCK)) {
      opened.trays().save(Room.tray("pit", "Pit lot", "Field 7, invented"));
      opened.trays().save(Room.bone("P-1", "pit", TrayBone.Standing.OPEN, ""));
      opened
          .trays()
          .save(
              Room.bone("P-2", "pit", TrayBone.Standing.OPEN, "")
                  .withKeeping(new Keeping("", Keeping.Access.RESTRICTED)));
      for (String bone : List.of("P-1", "P-2")) {
        opened
            .photos()
            .attach(PhotoSubject.of(new BoneId(bone)), "spot.jpg", picture, Optional.empty());
      }
    }
  }

  @Test
  void copiesHaveNoPositionAndTheStoredPictureStaysAsItCame() throws IOException {
    Path out = folder.resolve("out");
    Typed done = Typed.command("export", "photos", out, "--collection", room);
    assertEquals(0, done.code(), done.err());
    assertTrue(done.out().contains("1 picture without position tags"), done.out());
    assertTrue(done.out().contains("1 restricted"), done.out());
    String copy =
        new String(Files.readAllBytes(out.resolve("photo-0001.jpg")), StandardCharsets.ISO_8859_1);
    assertFalse(copy.contains("GPS"));
    assertFalse(copy.contains("found at"));
    List<String> lines = Files.readAllLines(out.resolve("photos.csv"));
    assertEquals(2, lines.size());
    assertTrue(lines.get(1).startsWith("bone,P-1,photo-0001.jpg,"), lines.get(1));
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      for (Photo photo : opened.photos().all()) {
        assertArrayEquals(picture, Files.readAllBytes(opened.photos().file(photo)));
      }
    }
  }

  @Test
  void picturesOfRestrictedAnimalsGoOutOnTheWordOfAPersonWithThatRight() throws IOException {
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      for (String id : List.of("A-1", "A-2")) {
        opened
            .register()
            .add(
                AnimalCard.of(animal(id, id.equals("A-2") ? "restricted (invented)" : "")),
                new ChangeNote(Room.PERSON, "invented"));
        opened
            .photos()
            .attach(PhotoSubject.of(new AnimalId(id)), "card.jpg", picture, Optional.empty());
      }
    }
    Typed held = Typed.command("export", "photos", folder.resolve("held"), "--collection", room);
    assertTrue(held.out().contains("2 pictures"), held.out());
    assertTrue(held.out().contains("held back: 1 restricted animal"), held.out());
    Typed refused =
        Typed.command(
            "export",
            "photos",
            folder.resolve("no"),
            "--collection",
            room,
            "--restricted-opened-by",
            "ann");
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("has not the right open_restricted"), refused.err());
    Typed.command("people", "name", "ann", "Ann (invented)", "--collection", room);
    for (String right : List.of("keeper", "open_restricted")) {
      Typed given =
          Typed.command("rights", "give", "ann", right, "--by", "ann", "--collection", room);
      assertEquals(0, given.code(), given.err());
    }
    Path out = folder.resolve("all");
    Typed opened =
        Typed.command(
            "export", "photos", out, "--collection", room, "--restricted-opened-by", "ann");
    assertEquals(0, opened.code(), opened.err());
    assertTrue(opened.out().contains("4 pictures"), opened.out());
    assertTrue(opened.out().contains("what is restricted opened by ann"), opened.out());
  }

  private static Animal animal(String id, String remarks) {
    return Animal.blank(new AnimalId(id))
        .withTaxon(Optional.of(new TaxonName("Ovis aries")))
        .withRemarks(remarks);
  }

  @Test
  void aFolderThatHoldsFilesIsLeftAlone() throws IOException {
    Path out = Files.createDirectory(folder.resolve("full"));
    Files.writeString(out.resolve("mine.txt"), "mine");
    Typed done = Typed.command("export", "photos", out, "--collection", room);
    assertEquals(2, done.code());
    assertTrue(done.err().contains("holds files already. Nothing was written."), done.err());
    assertFalse(Files.exists(out.resolve("photos.csv")));
  }
}

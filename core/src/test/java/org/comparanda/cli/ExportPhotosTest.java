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
import org.comparanda.storage.Collection;
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
  void aFolderThatHoldsFilesIsLeftAlone() throws IOException {
    Path out = Files.createDirectory(folder.resolve("full"));
    Files.writeString(out.resolve("mine.txt"), "mine");
    Typed done = Typed.command("export", "photos", out, "--collection", room);
    assertEquals(2, done.code());
    assertTrue(done.err().contains("holds files already. Nothing was written."), done.err());
    assertFalse(Files.exists(out.resolve("photos.csv")));
  }
}

package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.photo.Photo;
import org.comparanda.photo.PhotoSubject;
import org.comparanda.reference.AnimalId;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures beside the collection: as they came, once, and never of what may be human. */
class PhotosInFileTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);
  private static final PhotoSubject BONE = PhotoSubject.of(new BoneId("B-1"));

  @TempDir private Path folder;
  private Collection collection;
  private byte[] picture = {};

  @BeforeEach
  void open() throws IOException {
    collection = Collection.create(folder.resolve("room.comparanda"), CLOCK);
    collection
        .trays()
        .save(new Tray(new TrayId("t"), "L", "T", BoneAge.RECENT, "", "", Tray.State.WAITING));
    collection.trays().save(bone("B-1", TrayBone.Standing.OPEN));
    collection.trays().save(bone("B-2", TrayBone.Standing.STOPPED));
    try (InputStream in =
        Objects.requireNonNull(getClass().getResourceAsStream("/outside/photos/gps.jpg"))) {
      picture = in.readAllBytes();
    }
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private static TrayBone bone(String id, TrayBone.Standing standing) {
    return TrayBone.fresh(
            new BoneId(id), new TrayId("t"), new ElementKey("humerus"), Side.LEFT, Portion.WHOLE)
        .withStanding(standing);
  }

  private Photo attached(PhotoSubject subject, String name) {
    return collection
        .photos()
        .attach(subject, name, picture, Optional.empty())
        .fold(
            photo -> photo,
            none -> {
              throw new AssertionError(none.reason());
            });
  }

  private String refused(PhotoSubject subject, byte[] bytes) {
    return collection
        .photos()
        .attach(subject, "x", bytes, Optional.empty())
        .fold(photo -> "stored", none -> none.reason());
  }

  private List<Path> files() throws IOException {
    if (!Files.exists(folder.resolve("room.photos"))) {
      return List.of();
    }
    try (var all = Files.walk(folder.resolve("room.photos"))) {
      return all.filter(Files::isRegularFile).toList();
    }
  }

  @Test
  void aPictureLiesBesideTheCollectionByteForByteUnderItsHash() throws IOException {
    Photo photo = attached(BONE, "left side.jpg");
    Path file = collection.photos().file(photo);
    assertEquals(photo.hash() + ".jpg", String.valueOf(file.getFileName()));
    assertArrayEquals(picture, Files.readAllBytes(file));
    collection.close();
    collection = Collection.open(folder.resolve("room.comparanda"), CLOCK);
    assertEquals(List.of(photo), collection.photos().of(BONE));
    assertEquals("left side.jpg", photo.name());
  }

  @Test
  void theSamePictureTwiceIsOneFileAndOneRowASubject() throws IOException {
    collection.trays().save(bone("B-3", TrayBone.Standing.OPEN));
    attached(BONE, "a.jpg");
    attached(BONE, "b.jpg");
    attached(PhotoSubject.of(new BoneId("B-3")), "c.jpg");
    assertEquals(1, files().size());
    assertEquals(2, collection.photos().all().size());
  }

  @Test
  void aBoneThatMayBeHumanTakesNoPicture() throws IOException {
    assertEquals(
        "\"B-2\" may be human: it is not photographed.",
        refused(PhotoSubject.of(new BoneId("B-2")), picture));
    assertEquals(List.of(), files());
  }

  @Test
  void whatIsNoPictureOrOfNothingThereStoresNothing() throws IOException {
    assertTrue(refused(BONE, new byte[] {1, 2, 3}).startsWith("This is no picture"));
    assertTrue(refused(PhotoSubject.of(new BoneId("none")), picture).contains("no bone"));
    assertTrue(refused(PhotoSubject.of(new AnimalId("none")), picture).contains("no animal"));
    assertEquals(List.of(), files());
    assertFalse(Files.exists(folder.resolve("room.photos")));
  }

  @Test
  void aBackupTakesThePicturesAlongAndSaysWhichIsGoneOrAltered() throws IOException {
    Photo photo = attached(BONE, "gps.jpg");
    Path copy = folder.resolve("monday.backup");
    assertEquals(new PhotoCopies(1, List.of()), collection.copyPhotosBeside(copy));
    Path there = folder.resolve("monday.backup.photos").resolve(photo.hash().substring(0, 2));
    try (java.util.stream.Stream<Path> files = Files.list(there)) {
      assertArrayEquals(picture, Files.readAllBytes(files.findFirst().orElseThrow()));
    }
    Path stored = collection.photos().file(photo);
    byte[] altered = picture.clone();
    altered[altered.length / 2] ^= 1;
    Files.write(stored, altered);
    PhotoCopies second = collection.copyPhotosBeside(folder.resolve("tuesday.backup"));
    assertEquals(0, second.copied());
    assertTrue(second.problems().get(0).contains("was altered"), second.problems().toString());
    Files.delete(stored);
    assertEquals(new PhotoCopies(1, List.of()), collection.takePhotosBeside(copy));
    assertArrayEquals(picture, Files.readAllBytes(stored));
  }
}

package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.photos.PhotosViewModel;
import org.comparanda.photo.Photo;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures of the bone in hand; made by the Java platform's own writer. */
class PhotosOnBenchTest {
  @TempDir private Path folder;
  private BareBench room;
  private BenchViewModel bench;

  @BeforeEach
  void open() {
    room = BareBench.in(folder);
    bench = new BenchViewModel(room.place());
    bench.choose(BareBench.TRAY);
    bench.state().typed('\n');
  }

  @AfterEach
  void close() {
    room.close();
  }

  private static byte[] png() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(7, 5, BufferedImage.TYPE_INT_RGB), "png", out);
    return out.toByteArray();
  }

  /** 192 pixels high: twice what is shown; 300 / 400 of it wide. */
  @Test
  void aSmallCopyIsKeptUnderTheSameHashAndThePictureIsLeftAlone() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(300, 400, BufferedImage.TYPE_INT_RGB), "png", out);
    bench.photos().add(List.of(Files.write(folder.resolve("tall.png"), out.toByteArray())));
    PhotosViewModel.Shown shown = bench.photos().shown().get(0);
    Path small = shown.small().orElseThrow();
    assertEquals(room.collection().photos().thumbnail(shown.photo()), small);
    BufferedImage drawn = ImageIO.read(small.toFile());
    assertEquals(List.of(144, 192), List.of(drawn.getWidth(), drawn.getHeight()));
    Path whole = room.collection().photos().file(shown.photo());
    assertArrayEquals(out.toByteArray(), Files.readAllBytes(whole));
    Files.delete(whole);
    Files.delete(small);
    bench.step(1);
    bench.step(-1);
    assertEquals(Optional.empty(), bench.photos().shown().get(0).small());
  }

  @Test
  void aFileIsStoredAsItIsAndShownWithItsBone() throws IOException {
    Path file = Files.write(folder.resolve("left.png"), png());
    bench.photos().add(List.of(file));
    assertEquals(1, bench.photos().shown().size());
    Photo stored = bench.photos().shown().get(0).photo();
    assertArrayEquals(png(), Files.readAllBytes(room.collection().photos().file(stored)));
    assertEquals("Stored: left.png.", bench.photos().messageProperty().get());
    assertEquals(
        Optional.of(bench.personProperty().get().id()),
        bench.photos().shown().get(0).photo().person());
    bench.step(1);
    assertEquals(List.of(), bench.photos().shown());
    bench.step(-1);
    assertEquals(1, bench.photos().shown().size());
  }

  @Test
  void whatIsNoPictureIsRefusedWithItsReason() throws IOException {
    Path file = Files.writeString(folder.resolve("notes.txt"), "GIF89a pretends");
    bench.photos().add(List.of(file));
    assertEquals(
        "\"notes.txt\" was refused. This is a GIF, not a JPEG or PNG. Save it as JPEG or PNG and"
            + " attach that. Nothing was stored.",
        bench.photos().messageProperty().get());
    assertEquals(List.of(), bench.photos().shown());
  }

  @Test
  void aBoneThatMayBeHumanShowsAndTakesNoPicture() throws IOException {
    bench.photos().add("pasted picture", png());
    bench.askStop();
    bench.readings().pressed(NamedKey.ENTER);
    assertTrue(bench.stopped());
    assertEquals(List.of(), bench.photos().shown());
    bench.photos().add("pasted picture", png());
    assertEquals(1, room.collection().photos().all().size());
  }
}

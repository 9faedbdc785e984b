package org.comparanda.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pictures with position tags made by Pillow 12.3.0 (outside/scripts/make_photos.py); pixels are
 * compared by the Java platform's own decoder.
 */
class PictureTest {
  private static byte[] outside(String name) {
    try (InputStream in =
        Objects.requireNonNull(
            PictureTest.class.getResourceAsStream("/outside/photos/" + name), name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Picture read(byte[] bytes) {
    return Picture.read(bytes)
        .fold(
            picture -> picture,
            none -> {
              throw new AssertionError(none.reason());
            });
  }

  private static int[] pixels(byte[] bytes) throws IOException {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(bytes));
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }

  private static String latin(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  @ParameterizedTest
  @CsvSource({"gps.jpg, JPEG", "gps.png, PNG"})
  void formAndSizeAreRead(String name, PictureForm form) {
    Picture picture = read(outside(name));
    assertEquals(form, picture.form());
    assertEquals(48, picture.width());
    assertEquals(32, picture.height());
  }

  @ParameterizedTest
  @ValueSource(strings = {"gps.jpg", "gps.png"})
  void theCopyHasTheSamePixelsAndNoTagWhileTheOriginalIsUntouched(String name) throws IOException {
    byte[] original = outside(name);
    assertTrue(latin(original).contains("GPSLatitude"), "the picture has tags to lose");
    assertTrue(latin(original).contains("found at"), "the picture has a comment to lose");
    Picture picture = read(original);
    byte[] copy = picture.withoutTags();
    assertArrayEquals(pixels(original), pixels(copy));
    for (String tag : new String[] {"GPS", "xmp", "adobe:ns", "found at", "Invented camera"}) {
      assertFalse(latin(copy).contains(tag), tag);
    }
    assertArrayEquals(original, picture.bytes());
  }

  @Test
  void howAJpegIsToBeTurnedStays() {
    String copy = latin(read(outside("gps.jpg")).withoutTags());
    // Exif 2.3, 4.6.4: tag 0x0112, type 3 (short), one value, 6 = turned a quarter to the right
    assertTrue(copy.contains("\u0001\u0012\0\u0003\0\0\0\u0001\0\u0006"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"gps.jpg", "gps.png"})
  void whatStandsBehindTheEndIsNotCopied(String name) {
    byte[] original = outside(name);
    byte[] more = Arrays.copyOf(original, original.length + 500);
    System.arraycopy(
        "second picture with GPS".getBytes(StandardCharsets.ISO_8859_1),
        0,
        more,
        original.length,
        23);
    assertArrayEquals(read(original).withoutTags(), read(more).withoutTags());
  }

  @ParameterizedTest
  @ValueSource(strings = {"gps.jpg", "gps.png"})
  void aPictureCutShortAnywhereIsRefused(String name) {
    byte[] original = outside(name);
    for (int length = 1; length < original.length - 2; length++) {
      assertTrue(Picture.read(Arrays.copyOf(original, length)).value().isEmpty(), "" + length);
    }
  }

  @Test
  void noDamageMakesThePictureThrow() {
    for (String name : new String[] {"gps.jpg", "gps.png"}) {
      SplittableRandom random = new SplittableRandom(20417);
      byte[] original = outside(name);
      for (int i = 0; i < 5_000; i++) {
        byte[] damaged = original.clone();
        damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
        damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
        int size = Picture.read(damaged).fold(p -> p.withoutTags().length, none -> 0);
        assertTrue(size < original.length + 50, "a copy is never much longer");
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "GIF89a, This is a GIF",
    "%PDF-1.7, This is a PDF",
    "'bone,element', This is no picture that is known here",
    "'0000ftypheic', This is a HEIC picture of a telephone",
    "'', This is an empty file",
  })
  void whatIsNoPictureIsRefusedWithItsName(String content, String reason) {
    String said =
        Picture.read(content.getBytes(StandardCharsets.ISO_8859_1))
            .fold(p -> "read", none -> none.reason() + " " + none.remedy());
    assertTrue(said.startsWith(reason), said);
    assertTrue(said.endsWith("Nothing was stored."), said);
  }

  @Test
  void theHashIsTheOneOfTheFile() {
    // sha256sum of GNU coreutils 9.1 on outside/photos/gps.jpg
    assertEquals(HASH_OF_JPEG, read(outside("gps.jpg")).hash());
  }

  private static final String HASH_OF_JPEG =
      "110da1dba47cc7e1d31ef2f61388ed1992f9f78d36b5e0499bb587d19ff71dae";
}

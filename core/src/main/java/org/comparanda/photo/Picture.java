package org.comparanda.photo;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.comparanda.statistics.Outcome;

/** The bytes of a picture, looked through to its end. Never altered; safe for many threads. */
public final class Picture {
  /** No picture may be larger; a camera's are a tenth of that. */
  public static final int MOST_BYTES = 100_000_000;

  private static final String REMEDY =
      "Save it as JPEG or PNG and attach that. Nothing was stored.";

  private final PictureForm form;
  private final int width;
  private final int height;
  private final byte[] bytes;

  private Picture(PictureForm form, int width, int height, byte[] bytes) {
    this.form = form;
    this.width = width;
    this.height = height;
    this.bytes = bytes;
  }

  /** How the first bytes of other files read, and what those files are. */
  private record Other(String begins, int at, String what) {}

  private static final List<Other> OTHERS =
      List.of(
          new Other("GIF8", 0, "a GIF"),
          new Other("BM", 0, "a Windows bitmap"),
          new Other("II*\0", 0, "a TIFF or a camera's raw picture"),
          new Other("MM\0*", 0, "a TIFF or a camera's raw picture"),
          new Other("ftyphei", 4, "a HEIC picture of a telephone"),
          new Other("ftypmif1", 4, "a HEIC picture of a telephone"),
          new Other("ftyp", 4, "a film"),
          new Other("WEBP", 8, "a WebP picture"),
          new Other("%PDF", 0, "a PDF"),
          new Other("PK", 0, "a packed or an office file"));

  /** Reads a picture whole; not possible for anything but a sound JPEG or PNG, with the reason. */
  public static Outcome<Picture> read(byte[] given) {
    byte[] bytes = given.clone();
    if (bytes.length > MOST_BYTES) {
      return Outcome.none("The file has more than 100 MB.", REMEDY);
    }
    if (PngChunks.beginsLikePng(bytes)) {
      return PngChunks.read(bytes)
          .then(png -> sized(PictureForm.PNG, png.width(), png.height(), bytes));
    }
    if (JpegSegments.beginsLikeJpeg(bytes)) {
      return JpegSegments.read(bytes)
          .then(jpeg -> sized(PictureForm.JPEG, jpeg.width(), jpeg.height(), bytes));
    }
    return Outcome.none("This is " + what(bytes) + ", not a JPEG or PNG.", REMEDY);
  }

  private static Outcome<Picture> sized(PictureForm form, int width, int height, byte[] bytes) {
    return width < 1 || height < 1
        ? Outcome.none("The picture says that it is empty.", REMEDY)
        : Outcome.of(new Picture(form, width, height, bytes));
  }

  private static String what(byte[] bytes) {
    if (bytes.length == 0) {
      return "an empty file";
    }
    String head = new String(bytes, 0, Math.min(bytes.length, 32), StandardCharsets.ISO_8859_1);
    return OTHERS.stream()
        .filter(other -> head.startsWith(other.begins(), other.at()))
        .map(Other::what)
        .findFirst()
        .orElse("no picture that is known here");
  }

  public PictureForm form() {
    return form;
  }

  /** In pixels. */
  public int width() {
    return width;
  }

  /** In pixels. */
  public int height() {
    return height;
  }

  /** The bytes as they came. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** SHA-256 of the bytes as they came, in hexadecimal. */
  public String hash() {
    return sha256(bytes);
  }

  /**
   * The same picture for others: pixels and colours untouched, everything else dropped that a
   * camera or a program wrote beside them (position, owner, comments, previews), but how it is to
   * be turned.
   */
  public byte[] withoutTags() {
    return switch (form) {
      case JPEG ->
          JpegSegments.read(bytes).fold(JpegSegments::withoutTags, none -> unread(none.reason()));
      case PNG -> PngChunks.read(bytes).fold(PngChunks::withoutTags, none -> unread(none.reason()));
    };
  }

  private static byte[] unread(String reason) {
    throw new IllegalStateException("A picture was read before and can't be read now: " + reason);
  }

  static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException problem) {
      throw new IllegalStateException("Every Java has SHA-256; this one lacks it.", problem);
    }
  }
}

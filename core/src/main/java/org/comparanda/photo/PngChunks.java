package org.comparanda.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.zip.CRC32;
import org.comparanda.statistics.Outcome;

/** A PNG as its chunks (ISO/IEC 15948), each with a sound check sum, up to the last one. */
final class PngChunks {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final int FRAME = 12; // length, name and check sum around the data

  /** What a decoder needs for pixels and colours; everything else is a tag. */
  private static final Set<String> NEEDED =
      Set.of(
          "IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "sBIT", "bKGD",
          "pHYs", "cICP", "acTL", "fcTL", "fdAT");

  private static final String REMEDY = "Open it elsewhere, save it anew and attach that.";

  private final byte[] bytes;
  private final List<Chunk> chunks;

  /** One chunk, with its frame. */
  private record Chunk(String name, int from, int to) {}

  private PngChunks(byte[] bytes, List<Chunk> chunks) {
    this.bytes = bytes;
    this.chunks = List.copyOf(chunks);
  }

  static boolean beginsLikePng(byte[] bytes) {
    return bytes.length >= SIGNATURE.length
        && Arrays.equals(bytes, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length);
  }

  /** Reads it to its end; not possible where it is cut off or a check sum is wrong. */
  static Outcome<PngChunks> read(byte[] bytes) {
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    List<Chunk> chunks = new ArrayList<>();
    int place = SIGNATURE.length;
    while (place + FRAME <= bytes.length) {
      int length = buffer.getInt(place);
      if (length < 0 || length > bytes.length - place - FRAME) {
        return broken("is cut off");
      }
      String name = new String(bytes, place + 4, 4, StandardCharsets.ISO_8859_1);
      CRC32 sum = new CRC32();
      sum.update(bytes, place + 4, length + 4);
      if ((int) sum.getValue() != buffer.getInt(place + 8 + length)) {
        return broken("is damaged: the check sum of its part \"" + name + "\" is wrong");
      }
      if (chunks.isEmpty() && !(name.equals("IHDR") && length == 13)) {
        return broken("doesn't begin with its head");
      }
      chunks.add(new Chunk(name, place, place + FRAME + length));
      place += FRAME + length;
      if (name.equals("IEND")) {
        return Outcome.of(new PngChunks(bytes, chunks));
      }
    }
    return broken("is cut off");
  }

  private static Outcome<PngChunks> broken(String how) {
    return Outcome.none("The PNG " + how + ". Nothing was stored.", REMEDY);
  }

  int width() {
    return ByteBuffer.wrap(bytes).getInt(SIGNATURE.length + 8);
  }

  int height() {
    return ByteBuffer.wrap(bytes).getInt(SIGNATURE.length + 12);
  }

  /** The image alone. */
  byte[] withoutTags() {
    ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length);
    out.writeBytes(SIGNATURE);
    chunks.stream()
        .filter(chunk -> NEEDED.contains(chunk.name()))
        .forEach(chunk -> out.write(bytes, chunk.from(), chunk.to() - chunk.from()));
    return out.toByteArray();
  }
}

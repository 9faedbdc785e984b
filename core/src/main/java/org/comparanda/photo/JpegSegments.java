package org.comparanda.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.comparanda.statistics.Outcome;

/**
 * A JPEG as its segments (ISO/IEC 10918-1, annex B): markers with their data up to the first scan,
 * then everything to the end of the image. What stands behind the end (previews, films, second
 * pictures) is not part of it.
 */
final class JpegSegments {
  private static final int APP0 = 0xe0;
  private static final int APP1 = 0xe1;
  private static final int APP2 = 0xe2;
  private static final int APP14 = 0xee;
  private static final int APP15 = 0xef;
  private static final int COMMENT = 0xfe;
  private static final int START_OF_SCAN = 0xda;
  private static final int END = 0xd9;
  private static final int ORIENTATION = 0x0112;
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.ISO_8859_1);
  private static final String REMEDY = "Open it elsewhere, save it anew and attach that.";

  private final byte[] bytes;
  private final List<Segment> segments;
  private final int width;
  private final int height;

  /** One segment: from its marker's first byte to its end. */
  private record Segment(int marker, int from, int to) {}

  private JpegSegments(byte[] bytes, List<Segment> segments, int width, int height) {
    this.bytes = bytes;
    this.segments = List.copyOf(segments);
    this.width = width;
    this.height = height;
  }

  static boolean beginsLikeJpeg(byte[] bytes) {
    return bytes.length > 3 && at(bytes, 0) == 0xff && at(bytes, 1) == 0xd8 && at(bytes, 2) == 0xff;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  private static int at(byte[] bytes, int place) {
    return bytes[place] & 0xff;
  }

  private static int two(byte[] bytes, int place) {
    return at(bytes, place) << 8 | at(bytes, place + 1);
  }

  /** Reads it to its end; not possible where it is cut off or no JPEG. */
  static Outcome<JpegSegments> read(byte[] bytes) {
    List<Segment> segments = new ArrayList<>();
    int width = 0;
    int height = 0;
    int place = 2;
    while (place + 4 <= bytes.length) {
      if (at(bytes, place) != 0xff) {
        return broken("holds something else between its parts");
      }
      int marker = at(bytes, place + 1);
      if (marker == 0xff) {
        place++; // a fill byte
        continue;
      }
      if (marker == END) {
        break;
      }
      int end = place + 2 + two(bytes, place + 2);
      if (end > bytes.length || two(bytes, place + 2) < 2) {
        return broken("is cut off");
      }
      if (isFrame(marker) && end - place >= 9) {
        height = two(bytes, place + 5);
        width = two(bytes, place + 7);
      }
      if (marker == START_OF_SCAN) {
        end = afterScan(bytes, end);
        if (end < 0) {
          return broken("is cut off");
        }
      }
      segments.add(new Segment(marker, place, end));
      place = end;
      if (marker == START_OF_SCAN && at(bytes, place + 1) == END) {
        return Outcome.of(new JpegSegments(bytes, segments, width, height));
      }
    }
    return broken("is cut off");
  }

  private static Outcome<JpegSegments> broken(String how) {
    return Outcome.none("The JPEG " + how + ". Nothing was stored.", REMEDY);
  }

  /** Start of frame, all kinds, but not the tables that share their range of markers. */
  private static boolean isFrame(int marker) {
    return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
  }

  /** The next marker after entropy-coded data, where 0xff stands with 0 or a restart behind it. */
  private static int afterScan(byte[] bytes, int from) {
    for (int i = from; i + 1 < bytes.length; i++) {
      int next = at(bytes, i + 1);
      boolean restart = next >= 0xd0 && next <= 0xd7;
      if (at(bytes, i) == 0xff && next != 0 && next != 0xff && !restart) {
        return i;
      }
    }
    return -1;
  }

  /** The image alone: what a decoder needs, the colour profile, and how it is to be turned. */
  byte[] withoutTags() {
    ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length);
    out.write(bytes, 0, 2);
    boolean turned = false;
    for (Segment segment : segments) {
      boolean tag = isTag(segment);
      if (!turned && segment.marker() != APP0) {
        writeOrientation(out); // behind APP0, where readers look for it
        turned = true;
      }
      if (!tag) {
        out.write(bytes, segment.from(), segment.to() - segment.from());
      }
    }
    out.write(0xff);
    out.write(END);
    return out.toByteArray();
  }

  private boolean isTag(Segment segment) {
    boolean application = segment.marker() >= APP0 && segment.marker() <= APP15;
    boolean colour =
        (segment.marker() == APP2 && begins(segment, "ICC_PROFILE\0"))
            || (segment.marker() == APP14 && begins(segment, "Adobe"));
    boolean plain = segment.marker() == APP0 && begins(segment, "JFIF\0");
    return segment.marker() == COMMENT || (application && !colour && !plain);
  }

  private boolean begins(Segment segment, String text) {
    byte[] wanted = text.getBytes(StandardCharsets.ISO_8859_1);
    int from = segment.from() + 4;
    return segment.to() - from >= wanted.length
        && java.util.Arrays.equals(bytes, from, from + wanted.length, wanted, 0, wanted.length);
  }

  /** An Exif segment that says nothing but how the picture is to be turned; none for upright. */
  private void writeOrientation(ByteArrayOutputStream out) {
    int orientation = orientation();
    if (orientation < 2 || orientation > 8) {
      return;
    }
    ByteBuffer exif = ByteBuffer.allocate(4 + EXIF.length + 26).order(ByteOrder.BIG_ENDIAN);
    exif.putShort((short) (0xff00 | APP1)).putShort((short) (2 + EXIF.length + 26)).put(EXIF);
    exif.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(8); // TIFF head
    exif.putShort((short) 1); // one entry
    exif.putShort((short) ORIENTATION).putShort((short) 3).putInt(1);
    exif.putShort((short) orientation).putShort((short) 0);
    exif.putInt(0); // no further directory
    out.writeBytes(exif.array());
  }

  /** The orientation of the first directory of the first Exif segment; 0 where there is none. */
  private int orientation() {
    return segments.stream()
        .filter(s -> s.marker() == APP1 && begins(s, "Exif\0\0"))
        .mapToInt(s -> orientation(s.from() + 4 + EXIF.length, s.to()))
        .findFirst()
        .orElse(0);
  }

  private int orientation(int from, int to) {
    if (to - from < 14) {
      return 0;
    }
    ByteBuffer tiff = ByteBuffer.wrap(bytes, from, to - from).slice();
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = tiff.getInt(4);
    if (directory < 8 || directory > tiff.limit() - 2) {
      return 0;
    }
    int entries = tiff.getShort(directory) & 0xffff;
    for (int i = 0; i < entries && directory + 2 + 12 * (i + 1) <= tiff.limit(); i++) {
      int entry = directory + 2 + 12 * i;
      if ((tiff.getShort(entry) & 0xffff) == ORIENTATION) {
        return tiff.getShort(entry + 8) & 0xffff;
      }
    }
    return 0;
  }
}

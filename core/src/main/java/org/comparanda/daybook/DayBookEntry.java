package org.comparanda.daybook;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * One change, chained to the one before it on its bench.
 *
 * @param bench chain that it belongs to
 * @param number 1, 2, 3, … in its chain, without a gap
 * @param at when
 * @param subject what changed, for example {@code reading 12}
 * @param content fingerprint of what it is now; for a joining entry the heads it joins
 * @param previous hash of the entry before it; empty for the first
 * @param hash SHA-256, hexadecimal, over all of the above
 */
public record DayBookEntry(
    String bench,
    long number,
    Instant at,
    String subject,
    String content,
    String previous,
    String hash) {

  /** The entry that follows the last one of a bench. */
  public static DayBookEntry after(
      Optional<DayBookEntry> last, String bench, Instant at, String subject, String content) {
    long number = last.map(DayBookEntry::number).orElse(0L) + 1;
    String previous = last.map(DayBookEntry::hash).orElse("");
    return new DayBookEntry(
        bench,
        number,
        at,
        subject,
        content,
        previous,
        hash(bench, number, at, subject, content, previous));
  }

  /** Whether the hash is the one that the rest of the entry gives. */
  boolean holds() {
    return hash.equals(hash(bench, number, at, subject, content, previous));
  }

  /** Whether this entry may stand after that one, or first. */
  boolean follows(Optional<DayBookEntry> before) {
    return number == before.map(DayBookEntry::number).orElse(0L) + 1
        && previous.equals(before.map(DayBookEntry::hash).orElse(""));
  }

  private static String hash(
      String bench, long number, Instant at, String subject, String content, String previous) {
    return fingerprint(
        List.of(bench, String.valueOf(number), at.toString(), subject, content, previous));
  }

  /** SHA-256 over the parts, each with its length, so that no two lists run into one text. */
  public static String fingerprint(List<String> parts) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (String part : parts) {
        byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
        digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
        digest.update(bytes);
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException problem) {
      throw new IllegalStateException("Every Java has SHA-256; this one lacks it.", problem);
    }
  }
}

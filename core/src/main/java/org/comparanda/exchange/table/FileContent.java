package org.comparanda.exchange.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** What a file holds, as a fingerprint, so that it is known again under another name. */
public final class FileContent {
  private FileContent() {}

  /** SHA-256 in hexadecimal. Errors: {@link IOException} if the file can't be read. */
  public static String sha256(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      new DigestInputStream(in, digest).transferTo(java.io.OutputStream.nullOutputStream());
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException problem) {
      throw new IllegalStateException("Every Java has SHA-256; this one lacks it.", problem);
    }
  }
}

package org.comparanda.exchange.table;

import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalLong;

/**
 * Whether a file is text that a table can be read from: not empty, not binary, UTF-8, every quote
 * closed. One quick pass before anything is read; finds the separator on the way.
 */
final class TextCheck {
  private static final int BLOCK = 1 << 16;

  private final Path path;
  private final String file;

  TextCheck(Path path) {
    this.path = path;
    file = String.valueOf(path.getFileName());
  }

  /** The separator of the header row; problems are added where the file can't be read. */
  Separator separator(long headerRow, ProblemList problems) throws IOException {
    plain(problems);
    return problems.isEmpty() ? openQuoteChecked(headerRow, problems) : Separator.COMMA;
  }

  /** Whether it is text at all; a problem is added where it is not. */
  void plain(ProblemList problems) throws IOException {
    if (Files.isDirectory(path)) {
      problems.file("is a folder", "Name the table itself.");
    } else if (Files.size(path) == 0) {
      problems.file("the file is empty", "Save the table again, with a header row.");
    } else if (utf16()) {
      problems.file(
          "the text is UTF-16, not UTF-8",
          "Save the table with the encoding UTF-8 and import it again.");
    } else if (zeroByte()) {
      problems.file(
          "the file is binary, not a text table",
          "Save it as CSV (UTF-8) from the spreadsheet that made it.");
    } else {
      OptionalLong broken = lineThatIsNotUtf8();
      if (broken.isPresent()) {
        problems.row(
            broken.getAsLong(),
            "the text is not UTF-8",
            "Save the table with the encoding UTF-8 and import it again.");
      }
    }
  }

  /** By the two bytes that such a file begins with. */
  private boolean utf16() throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      byte[] mark = in.readNBytes(2);
      return mark.length == 2
          && ((mark[0] == (byte) 0xFF && mark[1] == (byte) 0xFE)
              || (mark[0] == (byte) 0xFE && mark[1] == (byte) 0xFF));
    }
  }

  private boolean zeroByte() throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      byte[] block = new byte[BLOCK];
      for (int n = in.read(block); n > 0; n = in.read(block)) {
        for (int i = 0; i < n; i++) {
          if (block[i] == 0) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** The first line that is not UTF-8 of what looks like text otherwise. */
  OptionalLong lineThatIsNotText() throws IOException {
    return Files.isDirectory(path) || Files.size(path) == 0 || utf16() || zeroByte()
        ? OptionalLong.empty()
        : lineThatIsNotUtf8();
  }

  /** The bytes of a line, counted from 1. */
  static byte[] bytesOf(Path path, long line) throws IOException {
    try (InputStream in = new BufferedInputStream(Files.newInputStream(path), BLOCK)) {
      byte[] bytes = line(in);
      for (long at = 1; at < line; at++) {
        bytes = line(in);
      }
      return bytes;
    }
  }

  private OptionalLong lineThatIsNotUtf8() throws IOException {
    try (Reader text = text(path)) {
      char[] block = new char[BLOCK];
      while (text.read(block) > 0) {
        // only the decoder's opinion is wanted here
      }
      return OptionalLong.empty();
    } catch (CharacterCodingException notUtf8) {
      return OptionalLong.of(firstBrokenLine());
    }
  }

  private long firstBrokenLine() throws IOException {
    long line = 1;
    try (InputStream in = new BufferedInputStream(Files.newInputStream(path), BLOCK)) {
      while (true) {
        byte[] bytes = line(in);
        if (bytes.length == 0 || !decodes(bytes)) {
          return line;
        }
        line++;
      }
    }
  }

  /** The bytes up to and with the next line end, or a block of them where a line never ends. */
  private static byte[] line(InputStream in) throws IOException {
    var bytes = new java.io.ByteArrayOutputStream();
    for (int b = in.read(); b >= 0; b = in.read()) {
      bytes.write(b);
      if (b == '\n') {
        break;
      }
    }
    return bytes.toByteArray();
  }

  private static boolean decodes(byte[] bytes) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(java.nio.ByteBuffer.wrap(bytes));
      return true;
    } catch (CharacterCodingException broken) {
      return false;
    }
  }

  private Separator openQuoteChecked(long headerRow, ProblemList problems) throws IOException {
    Separator separator;
    try (BufferedReader text = text(path)) {
      separator = HeaderSeparator.of(text, headerRow);
    }
    try (Reader text = text(path)) {
      OptionalLong line = QuoteBalance.lineOfUnclosed(text, separator);
      if (line.isPresent()) {
        problems.row(
            line.getAsLong(),
            "a quote (\") is opened here and never closed",
            "Close it, or double it (\"\") if it belongs to the text.");
      }
    }
    return separator;
  }

  /** The file as text, a byte-order mark skipped; reading fails where it is not UTF-8. */
  static BufferedReader text(Path path) throws IOException {
    return text(Files.newInputStream(path));
  }

  static BufferedReader text(InputStream bytes) throws IOException {
    Reader reader =
        new InputStreamReader(
            bytes,
            StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT));
    BufferedReader buffered = new BufferedReader(reader, BLOCK);
    buffered.mark(1);
    if (buffered.read() != '\uFEFF') {
      buffered.reset();
    }
    return buffered;
  }

  String file() {
    return file;
  }
}

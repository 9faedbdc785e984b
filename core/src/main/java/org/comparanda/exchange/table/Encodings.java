package org.comparanda.exchange.table;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Collectors;

/** Old lists in the encodings that were usual before UTF-8: offered, never guessed. */
public final class Encodings {
  private Encodings() {}

  /** Windows, DOS and old Macintosh, as far as this Java knows them. */
  public static List<Charset> offered() {
    return java.util.stream.Stream.of("windows-1252", "IBM850", "x-MacRoman")
        .filter(Charset::isSupported)
        .map(Charset::forName)
        .toList();
  }

  /** A problem where text is not UTF-8, with what its first such line would be in each. */
  static void doubts(Path list, ProblemList problems) throws IOException {
    OptionalLong broken = new TextCheck(list).lineThatIsNotText();
    if (broken.isPresent()) {
      byte[] line = TextCheck.bytesOf(list, broken.getAsLong());
      problems.row(
          broken.getAsLong(),
          "the text is not UTF-8",
          "Say in which encoding it was saved (in a terminal --encoding). This line would read: "
              + offered().stream()
                  .map(e -> e.name() + " \"" + shown(new String(line, e)) + "\"")
                  .collect(Collectors.joining(", "))
              + ".");
    }
  }

  private static String shown(String line) {
    String plain = line.strip().replace('"', '\'');
    return plain.length() <= 60 ? plain : plain.substring(0, 59) + "…";
  }

  /** Something that is done with a file. */
  interface WithText {
    void in(Path text) throws IOException;
  }

  /** Gives a copy in UTF-8 of the same name, which is gone afterwards. */
  static void inUtf8(Path list, Charset encoding, ProblemList problems, WithText does)
      throws IOException {
    String text;
    try {
      text =
          encoding
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(Files.readAllBytes(list)))
              .toString();
    } catch (CharacterCodingException other) {
      problems.file("the text is not " + encoding.name(), "Say in which encoding it was saved.");
      return;
    }
    Path folder = Files.createTempDirectory("list");
    Path copy = folder.resolve(String.valueOf(list.getFileName()));
    try {
      Files.writeString(copy, text);
      does.in(copy);
    } finally {
      Files.deleteIfExists(copy);
      Files.delete(folder);
    }
  }
}

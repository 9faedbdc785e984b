package org.comparanda.gui.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.comparanda.statistics.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Every sentence that core can say to a person at a screen has its German. They are read where the
 * compiler puts them, in the constants of core's classes, so a new one is found as soon as it is
 * written.
 */
class CoreSentencesTest {
  private static final Pattern PARTS =
      Pattern.compile(
          "(capture|check|exchange/mapping|exchange/table|house|oldcards|photo|pile|register"
              + "|secondlook|sizeestimate|statistics|stock|storage|suggestion|tally|taxon|tray)"
              + "/.*\\.class");

  private static final Pattern SENTENCE = Pattern.compile("[\"A-Z{].*[a-z]{2,} .*[.?]");

  /** What only a programmer or a terminal can bring about, never a screen. */
  private static final Pattern NEVER_ON_SCREEN =
      Pattern.compile(
          "Every (Java|row|nth) .*|A (caliper|size|tray needs) .*|An element occurs .*");

  private static final Pattern PLACE = Pattern.compile("\u0001|%(?:\\.\\d)?[sdfg]");

  @Test
  void everySentenceOfCoreHasItsGerman() throws IOException, URISyntaxException {
    Words german = Words.of("app", Locale.GERMAN);
    Set<String> missing = new TreeSet<>();
    for (Path file : classes()) {
      for (String constant : constants(file)) {
        String said = PLACE.matcher(constant).replaceAll("7").replace("%%", "%").strip();
        if (SENTENCE.matcher(said).matches()
            && !NEVER_ON_SCREEN.matcher(said).matches()
            && german.said(said).equals(said)) {
          missing.add(file.getFileName() + ": " + said);
        }
      }
    }
    assertEquals("", String.join("\n", missing));
  }

  private static List<Path> classes() throws IOException, URISyntaxException {
    Path core = Path.of(Outcome.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    Path root =
        (Files.isDirectory(core) ? core : FileSystems.newFileSystem(core).getPath("/"))
            .resolve("org/comparanda");
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .filter(file -> PARTS.matcher(root.relativize(file).toString()).matches())
          .toList();
    }
  }

  /** The texts among the constants of a class file (Java Virtual Machine Specification, 4.4). */
  private static List<String> constants(Path file) throws IOException {
    Map<Integer, String> texts = new HashMap<>();
    List<Integer> strings = new ArrayList<>();
    try (DataInputStream in =
        new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
      in.skipNBytes(8);
      int count = in.readUnsignedShort();
      for (int i = 1; i < count; i++) {
        int tag = in.readUnsignedByte();
        switch (tag) {
          case 1 -> texts.put(i, in.readUTF());
          case 8 -> strings.add(in.readUnsignedShort());
          case 5, 6 -> {
            in.skipNBytes(8);
            i++;
          }
          case 7, 16, 19, 20 -> in.skipNBytes(2);
          case 15 -> in.skipNBytes(3);
          default -> in.skipNBytes(4);
        }
      }
    }
    return strings.stream()
        .map(at -> Objects.requireNonNull(texts.get(at), "no text " + at))
        .toList();
  }
}

package org.comparanda.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.comparanda.bone.ElementNames;
import org.comparanda.slips.Slips;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PhrasesTest {
  private static final Pattern PLACE = Pattern.compile("\\{(\\d)");

  @ParameterizedTest
  @ValueSource(classes = {Phrases.class, Slips.class})
  void germanSaysEverythingWithTheSamePlaces(Class<?> part) throws IOException {
    Properties english = file(part, "phrases.properties");
    Properties german = file(part, "phrases_de.properties");
    assertEquals(
        new TreeSet<>(english.stringPropertyNames()), new TreeSet<>(german.stringPropertyNames()));
    for (String key : english.stringPropertyNames()) {
      // A number that English needs twice, for one and for many, may stand once in German.
      assertEquals(places(english.getProperty(key)), places(german.getProperty(key)), key);
    }
  }

  @Test
  void oneAndManyAreTold() {
    Phrases english = Phrases.in(Locale.ENGLISH);
    assertEquals("1 animal", english.say("animals", 1));
    assertEquals("1234 animals", english.say("animals", 1234));
    assertEquals("1 Tier", Phrases.in(Locale.GERMAN).say("animals", 1));
    assertEquals("A, B oder C", Phrases.in(Locale.GERMAN).either(List.of("A", "B", "C")));
  }

  @Test
  void numbersAreWrittenInTheLanguageOfTheWords() {
    assertEquals("7,3", Phrases.in(Locale.GERMANY).number(7.3));
    assertEquals("7.3", Phrases.in(Locale.FRANCE).number(7.3)); // no French words: English
  }

  @Test
  void everyElementHasAGermanNameAndNoNameIsLeftOver() throws IOException {
    ElementNames german = ElementNames.in(Locale.GERMAN);
    Properties names = new Properties();
    try (var in = ElementNames.class.getResourceAsStream("elements_de.properties")) {
      names.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    var elements = ReferenceTables.shipped().protocol().elements();
    assertEquals(
        elements.stream().map(e -> e.key().value()).collect(Collectors.toCollection(TreeSet::new)),
        new TreeSet<>(names.stringPropertyNames()));
    assertEquals(
        "Oberarmbein",
        elements.stream()
            .filter(e -> e.key().value().equals("humerus"))
            .map(german::of)
            .findFirst()
            .orElseThrow());
  }

  private static Set<String> places(String text) {
    return PLACE
        .matcher(text)
        .results()
        .map(r -> r.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Properties file(Class<?> part, String name) throws IOException {
    Properties properties = new Properties();
    try (var in = part.getResourceAsStream(name)) {
      properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    return properties;
  }
}

package org.comparanda.gui.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordsTest {
  private static final Pattern PLACE = Pattern.compile("\\{\\d[^}]*}");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "app",
        "bench",
        "caliper",
        "calling",
        "daybook",
        "houserules",
        "terms",
        "photos",
        "welcome",
        "shelf",
        "tray",
        "secondlook",
        "sizedesk",
        "oldcards",
        "pile",
        "keeper"
      })
  void germanSaysEverythingWithTheSamePlaces(String part) throws IOException {
    Properties english = file(part + ".properties");
    Properties german = file(part + "_de.properties");
    assertEquals(
        new TreeSet<>(english.stringPropertyNames()), new TreeSet<>(german.stringPropertyNames()));
    for (String key : english.stringPropertyNames()) {
      assertEquals(places(english.getProperty(key)), places(german.getProperty(key)), key);
    }
  }

  @Test
  void aLanguageWithoutWordsSpeaksEnglish() {
    assertEquals("Bench", Words.of("app", Locale.KOREAN).get("screen.bench"));
  }

  private static Set<String> places(String text) {
    return PLACE
        .matcher(text)
        .results()
        .map(r -> r.group().substring(0, 2))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Properties file(String name) throws IOException {
    Properties properties = new Properties();
    try (var in = Words.class.getResourceAsStream(name)) {
      properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    return properties;
  }
}

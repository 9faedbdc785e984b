package org.comparanda.gui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Contrast of the theme's tokens. Source of formula and bars: W3C, Web Content Accessibility
 * Guidelines 2.1, definitions "relative luminance" and "contrast ratio", criteria 1.4.3 (text 4.5)
 * and 1.4.11 (marks 3).
 */
class ContrastTest {
  private static final Pattern TOKEN = Pattern.compile("(-[a-z-]+): #([0-9A-Fa-f]{6});");
  private static final List<String> GROUNDS =
      List.of("-ground", "-card", "-rail", "-field", "-drawer", "-accent-tint");
  private static final List<String> TEXTS = List.of("-ink", "-muted", "-accent", "-helpful");

  @ParameterizedTest
  @EnumSource(Theme.class)
  void everyTextStandsOutFromEveryGround(Theme theme) throws IOException {
    Map<String, Integer> tokens = tokens(theme);
    List<String> weak = new ArrayList<>();
    for (String ground : GROUNDS) {
      for (String text : TEXTS) {
        double ratio = contrast(colour(tokens, text), colour(tokens, ground));
        if (ratio < 4.5) {
          weak.add(text + " on " + ground + " " + ratio);
        }
      }
    }
    assertEquals(List.of(), weak);
    assertTrue(contrast(colour(tokens, "-on-accent"), colour(tokens, "-accent")) >= 4.5);
  }

  @ParameterizedTest
  @EnumSource(Theme.class)
  void boneAndJawsStandOutFromTheirGround(Theme theme) throws IOException {
    Map<String, Integer> tokens = tokens(theme);
    for (String ground : List.of("-card", "-bone")) {
      assertTrue(contrast(colour(tokens, "-bone-edge"), colour(tokens, ground)) >= 3, ground);
      assertTrue(contrast(colour(tokens, "-accent"), colour(tokens, ground)) >= 3, ground);
    }
  }

  // The lines within a drawing are let through a little; comparanda.css, .bone-line.
  @ParameterizedTest
  @EnumSource(Theme.class)
  void linesWithinABoneStandOutFromIt(Theme theme) throws IOException {
    Map<String, Integer> tokens = tokens(theme);
    int bone = colour(tokens, "-bone");
    double through = number(".bone-line", "-fx-opacity");
    assertTrue(contrast(mixed(colour(tokens, "-bone-edge"), bone, through), bone) >= 3);
  }

  private static double number(String style, String property) throws IOException {
    String sheet = sheet("comparanda.css");
    Matcher rule =
        Pattern.compile(Pattern.quote(style) + " \\{[^}]*" + property + ": ([0-9.]+);")
            .matcher(sheet);
    assertTrue(rule.find(), style);
    return Double.parseDouble(rule.group(1));
  }

  private static int mixed(int upper, int lower, double part) {
    int mixed = 0;
    for (int shift : new int[] {16, 8, 0}) {
      double channel = (upper >> shift & 0xFF) * part + (lower >> shift & 0xFF) * (1 - part);
      mixed |= (int) Math.round(channel) << shift;
    }
    return mixed;
  }

  private static int colour(Map<String, Integer> tokens, String name) {
    return Objects.requireNonNull(tokens.get(name), name);
  }

  private static Map<String, Integer> tokens(Theme theme) throws IOException {
    Matcher found = TOKEN.matcher(sheet(theme.tokens()));
    Map<String, Integer> tokens = new HashMap<>();
    while (found.find()) {
      tokens.put(found.group(1), Integer.parseInt(found.group(2), 16));
    }
    return tokens;
  }

  private static String sheet(String name) throws IOException {
    try (InputStream sheet = Objects.requireNonNull(Theme.class.getResourceAsStream(name), name)) {
      return new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static double contrast(int one, int other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16 & 0xFF)
        + 0.7152 * linear(rgb >> 8 & 0xFF)
        + 0.0722 * linear(rgb & 0xFF);
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}

package org.comparanda.gui.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.ElementNames;

/**
 * What core says in English, said in another language. Core finishes its sentences (reasons,
 * remedies, warnings); a screen finds them again by their English form, in which places stand for
 * what differs. {@code sentences_de.txt} beside this class holds them in pairs of lines. What is
 * not found stays English; a test looks at every sentence of core.
 */
final class Sentences {
  private static final Pattern END = Pattern.compile("[.?!] (?=[^a-z ])");
  private static final Pattern NUMBER =
      Pattern.compile("([-−+]?\\d+)\\.(\\d+)( (mm|cm|m|g|kg|%))?");
  private static final String ITEM = "[A-Z][A-Za-z]*(?: (?:cf\\. )?[a-z-]+)?";
  private static final Pattern NAMES =
      Pattern.compile("(" + ITEM + "(?:, " + ITEM + ")*) (and|or) (" + ITEM + ")");

  private final Map<String, String> plain;
  private final List<Form> forms;
  private final Numbers numbers;
  private final ElementNames elements;

  private Sentences(Map<String, String> plain, List<Form> forms, Locale language) {
    this.plain = plain;
    this.forms = forms;
    this.numbers = new Numbers(language);
    this.elements = ElementNames.in(language);
  }

  /** The sentences in a language; none of them where it has no file. */
  static Sentences in(Locale language) {
    Map<String, String> plain = new HashMap<>();
    List<Form> forms = new ArrayList<>();
    List<String> lines = lines("sentences_" + language.getLanguage() + ".txt");
    for (int i = 0; i + 1 < lines.size(); i += 2) {
      if (lines.get(i).contains("{0}")) {
        forms.add(Form.of(lines.get(i), lines.get(i + 1)));
      } else {
        plain.put(lines.get(i), lines.get(i + 1));
      }
    }
    forms.sort(Comparator.comparing(Form::length).reversed());
    return new Sentences(Map.copyOf(plain), List.copyOf(forms), language);
  }

  /** The text, one sentence after the other where it isn't known as a whole. */
  String said(String english) {
    if (plain.isEmpty()) {
      return english;
    }
    return whole(english)
        .orElseGet(
            () -> {
              List<Integer> ends =
                  END.matcher(english).results().map(end -> end.start() + 1).toList();
              for (int i = ends.size() - 1; i >= 0; i--) {
                Optional<String> before = whole(english.substring(0, ends.get(i)));
                if (before.isPresent()) {
                  return before.get() + " " + said(english.substring(ends.get(i) + 1));
                }
              }
              return ends.isEmpty()
                  ? english
                  : english.substring(0, ends.get(0) + 1)
                      + said(english.substring(ends.get(0) + 1));
            });
  }

  private Optional<String> whole(String english) {
    String core = english.strip();
    return Optional.ofNullable(plain.get(core))
        .or(
            () ->
                forms.stream()
                    .flatMap(form -> form.read(core).stream())
                    .findFirst()
                    .map(this::fill))
        .map(text -> english.replace(core, text));
  }

  private String fill(Form.Found found) {
    String text = found.form().said();
    Matcher places = Pattern.compile("\\{(\\d)}").matcher(text);
    return places.replaceAll(
        place ->
            Matcher.quoteReplacement(place(found.places().get(Integer.parseInt(place.group(1))))));
  }

  private String place(Form.Place place) {
    String text = place.text();
    if (NUMBER.matcher(text).matches() && !place.quoted()) {
      return numbers.written(text);
    }
    Matcher names = NAMES.matcher(text);
    if (names.matches() && plain.get(names.group(2)) != null) {
      return names.group(1) + " " + plain.get(names.group(2)) + " " + names.group(3);
    }
    return text.isBlank()
        ? text
        : whole(text).orElseGet(() -> elements.of(new ElementKey(text), text));
  }

  private static List<String> lines(String file) {
    try (InputStream in = Sentences.class.getResourceAsStream(file)) {
      return in == null
          ? List.of()
          : new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> !line.isBlank() && !line.startsWith("#"))
              .collect(Collectors.toList());
    } catch (IOException e) {
      throw new UncheckedIOException(file + " could not be read.", e);
    }
  }

  /**
   * A sentence with places.
   *
   * @param fixed what stands between the places of its English form
   * @param form the English form, a group for each place
   * @param said its form in the other language
   */
  record Form(List<String> fixed, Pattern form, String said) {
    private static final Pattern PLACE = Pattern.compile("\\{\\d}");
    private static final String WITHIN_QUOTES = "(.*?)";
    private static final String ONE_SENTENCE = "((?:(?![.?!] [^a-z ]).)*?)";

    /** Which form, and what stood in its places. */
    record Found(Form form, List<Place> places) {}

    /** What stood in a place; within quotation marks it is as a person typed it. */
    record Place(String text, boolean quoted) {}

    static Form of(String english, String said) {
      List<String> fixed = List.of(PLACE.split(english, -1));
      StringBuilder form = new StringBuilder(Pattern.quote(fixed.get(0)));
      for (int i = 1; i < fixed.size(); i++) {
        form.append(quoted(fixed, i) ? WITHIN_QUOTES : ONE_SENTENCE)
            .append(Pattern.quote(fixed.get(i)));
      }
      return new Form(fixed, Pattern.compile(form.toString(), Pattern.DOTALL), said);
    }

    /** How much of it is fixed; of two that fit, the one with more is meant. */
    int length() {
      return String.join("", fixed).length();
    }

    /** What stands in the places of a text of this form. */
    Optional<Found> read(String text) {
      Matcher found = form.matcher(text);
      if (!fixed.stream().allMatch(text::contains) || !found.matches()) {
        return Optional.empty();
      }
      List<Place> places = new ArrayList<>();
      for (int i = 1; i <= found.groupCount(); i++) {
        places.add(new Place(found.group(i), quoted(fixed, i)));
      }
      return Optional.of(new Found(this, places));
    }

    private static boolean quoted(List<String> fixed, int place) {
      return fixed.get(place - 1).endsWith("\"") && fixed.get(place).startsWith("\"");
    }
  }
}

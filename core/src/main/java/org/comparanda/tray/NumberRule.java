package org.comparanda.tray;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.comparanda.measurement.BoneId;
import org.comparanda.statistics.Outcome;

/**
 * How the bones of a tray are numbered, for example {@code H-{year}-{number:4}}: plain text, any of
 * {@code {year}}, {@code {lot}} and {@code {tray}}, and once {@code {number}}, with the fewest
 * digits after a colon.
 *
 * @param pattern the rule as written
 */
public record NumberRule(String pattern) {
  private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)(?::([1-9]))?\\}");
  private static final List<String> PLACES = List.of("year", "lot", "tray");
  private static final String REMEDY =
      "Write for example \"H-{year}-{number:4}\"; {lot} and {tray} may stand in it, too.";

  /**
   * Errors: {@link IllegalArgumentException} with the sentence of {@link #read} if it is no rule.
   */
  public NumberRule {
    trouble(pattern)
        .forEach(
            why -> {
              throw new IllegalArgumentException(why + " " + REMEDY);
            });
  }

  /** Year and a running number of at least four digits. */
  public static NumberRule withDefaults() {
    return new NumberRule("B-{year}-{number:4}");
  }

  /** Reads a rule as a person writes it. */
  public static Outcome<NumberRule> read(String text) {
    List<String> trouble = trouble(text.strip());
    return trouble.isEmpty()
        ? Outcome.of(new NumberRule(text.strip()))
        : Outcome.none(trouble.get(0), REMEDY);
  }

  /** The series of numbers that this rule makes for a tray in a year. */
  public NumberSeries series(Tray tray, int year) {
    StringBuilder text = new StringBuilder();
    Matcher place = PLACE.matcher(pattern);
    int from = 0;
    int numberAt = 0;
    int digits = 1;
    while (place.find()) {
      text.append(pattern, from, place.start());
      from = place.end();
      switch (String.valueOf(place.group(1))) {
        case "year" -> text.append(year);
        case "lot" -> text.append(tray.lot());
        case "tray" -> text.append(tray.id().value());
        default -> {
          numberAt = text.length();
          digits = place.group(2) == null ? 1 : Integer.parseInt(place.group(2));
        }
      }
    }
    text.append(pattern, from, pattern.length());
    return new NumberSeries(text.substring(0, numberAt), digits, text.substring(numberAt));
  }

  private static List<String> trouble(String text) {
    List<String> places = new ArrayList<>();
    Matcher place = PLACE.matcher(text);
    while (place.find()) {
      places.add(String.valueOf(place.group(1)));
    }
    long numbers = places.stream().filter("number"::equals).count();
    if (numbers != 1) {
      return List.of("\"" + text + "\" must hold {number} once; it does so " + numbers + " times.");
    }
    for (String name : places) {
      if (!name.equals("number") && !PLACES.contains(name)) {
        return List.of("\"" + text + "\" holds {" + name + "}, which is not known here.");
      }
    }
    String plain = place.replaceAll("");
    return plain.chars().anyMatch(c -> c == '{' || c == '}' || c < ' ')
        ? List.of("\"" + text + "\" holds a brace or a line break that stands for nothing.")
        : List.of();
  }

  /**
   * The numbers that share everything but their running part.
   *
   * @param before what stands before the running number
   * @param digits its fewest digits
   * @param after what stands after it
   */
  public record NumberSeries(String before, int digits, String after) {
    /** The bone number with this running number. */
    public BoneId number(long running) {
      String bare = Long.toString(running);
      return new BoneId(before + "0".repeat(Math.max(0, digits - bare.length())) + bare + after);
    }

    /** The running number of a bone of this series; 0 for a bone of none or of another. */
    public long runningIn(BoneId bone) {
      String text = bone.value();
      boolean framed =
          text.length() > before.length() + after.length()
              && text.startsWith(before)
              && text.endsWith(after);
      String middle = framed ? text.substring(before.length(), text.length() - after.length()) : "";
      return middle.matches("[0-9]{1,15}") ? Long.parseLong(middle) : 0;
    }

    /** One text for the series, whatever its digits. */
    public String key() {
      return before + "#" + after;
    }
  }
}

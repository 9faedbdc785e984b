package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.comparanda.measurement.LengthUnit;

/**
 * Guesses what the columns of a table are, by their headers: the same name; another word for it; or
 * a name one letter away. Each role is guessed once.
 */
final class ColumnGuesses {
  private static final Pattern UNIT_BEHIND =
      Pattern.compile("(.*?)[\\s_]*(?:\\[([^\\]]*)\\]|\\(([^)]*)\\)|[_ ](mm|cm|m|in))");

  private final Map<String, String> roles = new HashMap<>();
  private final Map<String, String> others = new HashMap<>();
  private final Set<String> taken = new HashSet<>();

  /** With other words for roles, by role. */
  ColumnGuesses(KnownWords known, Map<String, List<String>> otherWords, TableOptions.Shape shape) {
    otherWords.forEach((role, words) -> words.forEach(word -> others.put(plain(word), role)));
    for (ReservedColumn column : ReservedColumn.values()) {
      if (shape == TableOptions.Shape.LONG || !column.ofLongTables()) {
        roles.put(plain(column.header()), column.header());
      }
    }
    known.codeNames().forEach(code -> roles.putIfAbsent(code, code));
  }

  List<ColumnGuess> of(List<String> headers) {
    List<ColumnGuess> guesses = new ArrayList<>();
    headers.forEach(header -> guesses.add(guess(header)));
    return guesses;
  }

  private ColumnGuess guess(String header) {
    Matcher behind = UNIT_BEHIND.matcher(header);
    String name = behind.matches() ? behind.group(1) : header;
    Optional<LengthUnit> unit =
        behind.matches()
            ? LengthUnit.ofSymbol(
                behind.group(2) != null
                    ? behind.group(2).strip()
                    : behind.group(3) != null ? behind.group(3).strip() : behind.group(4))
            : Optional.empty();
    Optional<String> same = Optional.ofNullable(roles.get(name)).or(() -> role(plain(name)));
    if (same.filter(taken::add).isPresent()) {
      return new ColumnGuess(header, same, unit, ColumnGuess.Why.SAME_NAME);
    }
    Optional<String> word =
        Optional.ofNullable(others.get(plain(name))).filter(roles::containsValue);
    if (word.filter(taken::add).isPresent()) {
      return new ColumnGuess(header, word, unit, ColumnGuess.Why.ANOTHER_WORD);
    }
    Optional<String> alike = alike(name);
    if (alike.filter(taken::add).isPresent()) {
      return new ColumnGuess(header, alike, unit, ColumnGuess.Why.ALIKE);
    }
    return new ColumnGuess(header, Optional.empty(), unit, ColumnGuess.Why.NOTHING);
  }

  private Optional<String> role(String plain) {
    return Optional.ofNullable(roles.get(plain));
  }

  /** One capital more or less, or one letter away from a longer name. */
  private Optional<String> alike(String name) {
    Optional<String> capitals =
        roles.values().stream().filter(role -> role.equalsIgnoreCase(name)).findFirst();
    if (capitals.isPresent() || name.length() < 5) {
      return capitals;
    }
    return NearestName.to(name, roles.values())
        .filter(near -> near.length() > 4 && NearestName.oneLetterAway(plain(name), plain(near)));
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s.-]+", "_").replaceAll("_$", "");
  }
}

package org.comparanda.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.comparanda.tray.Trait;
import org.comparanda.tray.TraitAnswer;

/** What was seen of a trait, as typed: key=yes. */
final class TraitWord {
  private TraitWord() {}

  static TraitAnswer read(String text) {
    int equals = text.indexOf('=');
    String seen = text.substring(equals + 1).toUpperCase(Locale.ROOT).replace('-', '_');
    if (equals < 1 || !List.of("YES", "NO", "CANT_SEE").contains(seen)) {
      throw new CannotDo(
          "\""
              + text
              + "\" is no answer to a trait. Nothing was recorded. Write for example KEY=yes, KEY=no"
              + " or KEY=cant_see.");
    }
    return new TraitAnswer(text.substring(0, equals), TraitAnswer.Seen.valueOf(seen));
  }

  static void everyKeyKnown(List<TraitAnswer> answers, List<Trait> traits) {
    for (TraitAnswer answer : answers) {
      if (traits.stream().noneMatch(t -> t.key().equals(answer.trait()))) {
        throw new CannotDo(
            "There is no trait \""
                + answer.trait()
                + "\". Nothing was recorded. Known are: "
                + traits.stream().map(Trait::key).collect(Collectors.joining(", "))
                + ".");
      }
    }
  }
}

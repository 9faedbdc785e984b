package org.comparanda.gui.daybook;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.daybook.DayBookPage;
import org.comparanda.daybook.Verdict;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;

/** Entries and verdicts in words. */
final class BookWords {
  private final Words words;
  private final List<String> kinds;
  private final DateTimeFormatter times;

  BookWords(DayBookRoom room) {
    words = room.words();
    kinds = room.pages().kinds();
    times =
        DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM)
            .withLocale(room.locale())
            .withZone(room.clock().getZone());
  }

  String get(String key, Object... places) {
    return words.get(key, places);
  }

  String when(Instant at) {
    return times.format(at);
  }

  /** The word of a kind in the person's language, else as the book writes it. */
  String kind(String kind) {
    return words.find("kind." + kind.replace(' ', '_')).orElse(kind);
  }

  /** Who it is; the id stays where the name was blanked. */
  static Map<String, String> names(List<Person> people) {
    return people.stream()
        .filter(p -> !p.name().isBlank())
        .collect(Collectors.toMap(p -> p.id().value(), Person::name));
  }

  EntryLine line(DayBookPage.Line line, Map<String, String> names, Set<String> blanked) {
    return new EntryLine(
        line.entry(),
        when(line.entry().at()),
        who(line.by(), names, blanked),
        what(line.entry().subject()),
        line.words());
  }

  private String who(String id, Map<String, String> names, Set<String> blanked) {
    return blanked.contains(id) ? words.get("who.blanked", id) : names.getOrDefault(id, id);
  }

  String person(Person person, Set<String> blanked) {
    PersonId id = person.id();
    return person.name().isBlank() ? who(id.value(), Map.of(), blanked) : person.name();
  }

  private String what(String subject) {
    return kinds.stream()
        .filter(kind -> subject.startsWith(kind + " "))
        .max(java.util.Comparator.comparing(String::length))
        .map(kind -> kind(kind) + subject.substring(kind.length()))
        .orElse(subject);
  }

  /** What a proof found, in words. */
  String verdict(Verdict verdict, Optional<String> head) {
    if (verdict instanceof Verdict.Sound sound) {
      return words.get(head.isPresent() ? "proof.sound" : "proof.sound.nohead", sound.entries());
    }
    Verdict.Broken broken = (Verdict.Broken) verdict;
    String key = "damage." + broken.damage().name().toLowerCase(Locale.ROOT);
    return words.get(key, broken.places().toArray()) + " " + words.get("proof.broken");
  }
}

package org.comparanda.storage;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.comparanda.measurement.Person;
import org.comparanda.tray.FoldedWords;
import org.comparanda.tray.OtherNames;

/**
 * What a person typed into the search field: words, and words between quotation marks. Whatever
 * signs stand in it, it makes a sound question for the index.
 */
record SearchQuestion(List<Term> terms) {
  /** More words than this are not looked for; nobody types them. */
  private static final int MOST_TERMS = 24;

  private static final int FEWEST_LETTERS_OF_A_NAME = 2;

  SearchQuestion {
    terms = List.copyOf(terms);
  }

  /** One word or one phrase; the last word of an open one is perhaps only begun. */
  record Term(FoldedWords words, Ending ending) {}

  /** Whether more letters may follow. */
  enum Ending {
    OPEN,
    WHOLE
  }

  /** Reads what was typed; a quotation mark that is not closed holds to the end. */
  static SearchQuestion of(String typed) {
    List<Term> terms = new ArrayList<>();
    String[] parts = typed.replaceAll("[“”„«»]", "\"").split("\"", -1);
    for (int i = 0; i < parts.length; i++) {
      boolean quoted = i % 2 == 1;
      if (quoted) {
        terms.add(
            new Term(FoldedWords.of(parts[i]), i < parts.length - 1 ? Ending.WHOLE : Ending.OPEN));
      } else {
        for (String word : parts[i].split("\\s+", -1)) {
          terms.add(new Term(FoldedWords.of(word), Ending.OPEN));
        }
      }
    }
    return new SearchQuestion(
        terms.stream().filter(t -> !t.words().words().isEmpty()).limit(MOST_TERMS).toList());
  }

  /** The question in the language of the index, about one part of the record. */
  String about(String part, OtherNames names, List<Person> people) {
    return "part : \"%s\" AND ".formatted(part)
        + terms.stream()
            .map(term -> "(" + alternatives(term, names, people) + ")")
            .collect(Collectors.joining(" AND "));
  }

  private static String alternatives(Term term, OtherNames names, List<Person> people) {
    String ending = term.ending() == Ending.OPEN ? " *" : "";
    return Stream.concat(
            Stream.of("content : " + quoted(term.words()) + ending),
            Stream.concat(
                names.of(term.words()).stream().map(n -> "content : " + quoted(FoldedWords.of(n))),
                people.stream()
                    .filter(person -> names(term.words(), person))
                    .map(person -> "who : \"" + hex(person.id().value()) + "\"")))
        .collect(Collectors.joining(" OR "));
  }

  private static boolean names(FoldedWords words, Person person) {
    return words.length() >= FEWEST_LETTERS_OF_A_NAME
        && (words.standIn(FoldedWords.of(person.name()))
            || words.standIn(FoldedWords.of(person.id().value())));
  }

  private static String quoted(FoldedWords words) {
    return "\"" + String.join(" ", words.words()) + "\"";
  }

  /** As the file writes the id of a person into the index. */
  private static String hex(String id) {
    return HexFormat.of().formatHex(id.getBytes(StandardCharsets.UTF_8)).toUpperCase(Locale.ROOT);
  }
}

package org.comparanda.oldcards;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * All words that an old card is read by: the names of the taxon tree, the elements and codes of the
 * protocol, and the rows of the vocabulary. A phrase that means two things means nothing.
 */
public final class CardWords {
  /** Longest phrase, in words. */
  static final int LONGEST = 4;

  private final Map<List<String>, Set<Meaning>> phrases = new HashMap<>();
  private final Set<String> codes = new LinkedHashSet<>();
  private final Protocol protocol;

  /** What one phrase stands for. */
  record Meaning(Part part, String value) {}

  private CardWords(Protocol protocol) {
    this.protocol = protocol;
  }

  public static CardWords of(List<CardWord> vocabulary, Protocol protocol, TaxonTree tree) {
    CardWords words = new CardWords(protocol);
    protocol.elements().forEach(e -> words.add(e.name(), Part.ELEMENT, e.key().value()));
    protocol
        .elements()
        .forEach(e -> words.add(e.key().value().replace('-', ' '), Part.ELEMENT, e.key().value()));
    for (Taxon taxon : tree.taxa()) {
      String now = tree.accepted(taxon.name()).value();
      words.add(taxon.name().value(), Part.TAXON, now);
      words.shortened(taxon, now);
    }
    for (CardWord row : vocabulary) {
      String value =
          row.part() == Part.TAXON
              ? tree.accepted(new TaxonName(row.value())).value()
              : row.value();
      row.words().forEach(text -> words.add(text, row.part(), value));
    }
    protocol.measurements().stream()
        .map(Measurement::code)
        .map(MeasurementCode::value)
        .forEach(words.codes::add);
    return words;
  }

  /** "O. aries" for Ovis aries; where two genera share the letter it means two things. */
  private void shortened(Taxon taxon, String now) {
    String name = taxon.name().value();
    int blank = name.indexOf(' ');
    if (blank > 1) {
      add(name.charAt(0) + name.substring(blank), Part.TAXON, now);
    }
  }

  private void add(String phrase, Part part, String value) {
    List<String> words = new ArrayList<>();
    for (Token token : Token.of(phrase.toLowerCase(Locale.ROOT))) {
      words.add(token.plain());
    }
    phrases.computeIfAbsent(words, w -> new LinkedHashSet<>()).add(new Meaning(part, value));
  }

  /** What the words mean; empty where they mean nothing, or two things. */
  Optional<Meaning> meaning(List<Token> tokens) {
    Set<Meaning> all = phrases.getOrDefault(tokens.stream().map(Token::plain).toList(), Set.of());
    return all.size() == 1 ? all.stream().findFirst() : Optional.empty();
  }

  /** Whether the word is the code of a measurement, exactly as written. */
  boolean isCode(String text) {
    return codes.contains(text);
  }

  Protocol protocol() {
    return protocol;
  }
}

package org.comparanda.oldcards;

import java.util.List;
import java.util.Optional;
import org.comparanda.oldcards.CardWords.Meaning;

/**
 * Reads a card's text from left to right, the longest phrase first. Rules, in this order: human
 * remains; a place after its marker, up to a semicolon or the end; a code with a number; a number
 * with a word for pieces; a phrase of the vocabulary. Whatever is left is left over, and shown so.
 */
public final class CardParser {
  private final CardWords words;

  public CardParser(CardWords words) {
    this.words = words;
  }

  /** What the text seems to say. */
  public Proposal read(String text) {
    List<Token> tokens = Token.of(text);
    Findings found = new Findings(words.protocol());
    int at = 0;
    while (at < tokens.size()) {
      at += piece(text, tokens, at, found);
    }
    return found.proposal();
  }

  /** Reads one piece and says how many tokens it took. */
  private int piece(String text, List<Token> tokens, int at, Findings found) {
    Token token = tokens.get(at);
    int measured = measurement(tokens, at, found);
    if (measured > 0) {
      return measured;
    }
    if (token.number()) {
      return number(tokens, at, found);
    }
    for (int length = Math.min(CardWords.LONGEST, tokens.size() - at); length > 0; length--) {
      List<Token> phrase = tokens.subList(at, at + length);
      Optional<Meaning> meaning = words.meaning(phrase);
      if (meaning.isPresent()) {
        return phrase(text, tokens, at, length, meaning.get(), found);
      }
    }
    if (token.is("?")) {
      found.questionMark(token);
    } else if (token.word()) {
      found.leftOver(token);
    }
    return 1; // signs between words carry nothing
  }

  private static int phrase(
      String text, List<Token> tokens, int at, int length, Meaning meaning, Findings found) {
    int from = tokens.get(at).from();
    if (meaning.part() == Part.PLACE) {
      int last = at + length;
      while (last < tokens.size() && !tokens.get(last).is(";")) {
        last++;
      }
      int begin = at + length;
      while (begin < last && tokens.get(begin).is(":")) {
        begin++;
      }
      String place =
          begin == last ? "" : text.substring(tokens.get(begin).from(), tokens.get(last - 1).to());
      found.place(new Piece(from, tokens.get(last - 1).to(), Part.PLACE, place));
      return last - at;
    }
    found.phrase(
        new Piece(from, tokens.get(at + length - 1).to(), meaning.part(), meaning.value()));
    return length;
  }

  /** A code, perhaps = or :, a number, perhaps its unit; 0 where that isn't there. */
  private int measurement(List<Token> tokens, int at, Findings found) {
    if (!words.isCode(tokens.get(at).text())) {
      return 0;
    }
    int next = at + 1;
    while (next < tokens.size() && (tokens.get(next).is("=") || tokens.get(next).is(":"))) {
      next++;
    }
    if (next >= tokens.size() || !tokens.get(next).number()) {
      return 0;
    }
    Optional<Meaning> unit = unit(tokens, next + 1);
    int last = unit.isPresent() ? next + 1 : next;
    found.measured(
        tokens.get(at), tokens.get(next), unit.map(Meaning::value), tokens.get(last).to());
    return last - at + 1;
  }

  private int number(List<Token> tokens, int at, Findings found) {
    Token number = tokens.get(at);
    Optional<Meaning> next =
        at + 1 < tokens.size() ? words.meaning(tokens.subList(at + 1, at + 2)) : Optional.empty();
    if (next.filter(m -> m.part() == Part.COUNT).isPresent() && number.text().matches("\\d{1,4}")) {
      found.count(new Piece(number.from(), tokens.get(at + 1).to(), Part.COUNT, number.text()));
      return 2;
    }
    if (unit(tokens, at + 1).isPresent()) {
      found.lengthOfNothing(number, tokens.get(at + 1));
      return 2;
    }
    found.leftOver(number);
    return 1;
  }

  private Optional<Meaning> unit(List<Token> tokens, int at) {
    return at < tokens.size()
        ? words.meaning(tokens.subList(at, at + 1)).filter(m -> m.part() == Part.UNIT)
        : Optional.empty();
  }
}

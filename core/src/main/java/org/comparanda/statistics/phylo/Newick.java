package org.comparanda.statistics.phylo;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.comparanda.statistics.Outcome;

/**
 * Reads a tree in Newick notation: quoted labels ('' for a quote inside), comments in square
 * brackets, lengths with exponents, a branch above the root, branchings of any number.
 *
 * <p>Source: the Newick standard of 1986 as described by its authors (from memory).
 */
public final class Newick {
  private static final String MARKS = "(),:;";
  private static final int DEEPEST = 2000;

  private final String text;
  private int at;

  private Newick(String text) {
    this.text = text;
  }

  /** The tree that the text writes, or where it can't be read. */
  public static Outcome<PhyloTree> read(String text) {
    Newick reader = new Newick(text.strip());
    if (reader.text.isEmpty()) {
      return Outcome.none("The tree is empty.", "Give a tree in Newick notation.");
    }
    try {
      PhyloTree.Node root = reader.node(0);
      reader.expect(';');
      reader.skip();
      if (reader.at < reader.text.length()) {
        throw reader.unreadable("something after the end");
      }
      return PhyloTree.of(root);
    } catch (Unreadable e) {
      return Outcome.none(
          "The tree can't be read: " + e.getMessage(),
          "Give one tree in Newick notation, ending with a semicolon.");
    }
  }

  private PhyloTree.Node node(int depth) throws Unreadable {
    if (depth > DEEPEST) {
      throw unreadable("more than " + DEEPEST + " brackets inside each other");
    }
    List<PhyloTree.Node> children = new ArrayList<>();
    if (next() == '(') {
      at++;
      children.add(node(depth + 1));
      while (next() == ',') {
        at++;
        children.add(node(depth + 1));
      }
      expect(')');
    }
    return new PhyloTree.Node(label(), length(), children);
  }

  private String label() throws Unreadable {
    if (next() != '\'') {
      return word().replace('\t', ' ');
    }
    StringBuilder label = new StringBuilder();
    for (at++; at < text.length(); at++) {
      boolean quote = text.charAt(at) == '\'';
      if (quote && !text.startsWith("''", at)) {
        at++;
        return label.toString();
      }
      label.append(text.charAt(at));
      at += quote ? 1 : 0;
    }
    throw unreadable("a quoted name without its end");
  }

  private OptionalDouble length() throws Unreadable {
    if (next() != ':') {
      return OptionalDouble.empty();
    }
    at++;
    String word = word();
    try {
      double value = Double.parseDouble(word);
      if (Double.isFinite(value) && word.matches("[-+0-9.eE]+")) {
        return OptionalDouble.of(value);
      }
    } catch (NumberFormatException e) {
      // Falls through to the same message as an infinite or oddly written number.
    }
    throw unreadable("\"" + word + "\" is no branch length");
  }

  /** Text up to the next mark or comment, without blanks around it. */
  private String word() throws Unreadable {
    skip();
    int from = at;
    while (at < text.length() && MARKS.indexOf(text.charAt(at)) < 0 && text.charAt(at) != '[') {
      at++;
    }
    return text.substring(from, at).strip();
  }

  private void expect(char mark) throws Unreadable {
    if (next() != mark) {
      throw unreadable("\"" + mark + "\" is missing");
    }
    at++;
  }

  /** The next character that is neither blank nor comment; 0 at the end. */
  private char next() throws Unreadable {
    skip();
    return at < text.length() ? text.charAt(at) : 0;
  }

  private void skip() throws Unreadable {
    while (at < text.length()) {
      if (Character.isWhitespace(text.charAt(at))) {
        at++;
      } else if (text.charAt(at) == '[') {
        int end = text.indexOf(']', at);
        if (end < 0) {
          throw unreadable("a comment without its end");
        }
        at = end + 1;
      } else {
        return;
      }
    }
  }

  private Unreadable unreadable(String what) {
    int from = Math.max(0, Math.min(at, text.length()) - 20);
    String before = text.substring(from, Math.min(at, text.length()));
    return new Unreadable(what + ", at character " + (at + 1) + " after \"" + before + "\".");
  }

  private static final class Unreadable extends Exception {
    Unreadable(String message) {
      super(message);
    }
  }
}

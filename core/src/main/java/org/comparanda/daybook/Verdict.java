package org.comparanda.daybook;

/** What looking through a Day Book found. */
public sealed interface Verdict {
  /** Nothing was changed, dropped, cut or rebuilt up to the head; so many entries. */
  record Sound(int entries) implements Verdict {}

  /** Something was; the sentence says where. */
  record Broken(String sentence) implements Verdict {}
}

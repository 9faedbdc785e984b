package org.comparanda.gui.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The words of the trade and our own, as the design lists them (its section on words). */
class GlossaryTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "element",
        "side",
        "portion",
        "animal",
        "taxon",
        "comparative skeleton",
        "lot",
        "tray",
        "determination",
        "open nomenclature",
        "cf.",
        "aff.",
        "sp.",
        "indet.",
        "NISP",
        "MNI",
        "MNE",
        "MAU",
        "TEM",
        "OLS",
        "SMA",
        "the Shelf",
        "reading",
        "the Bench",
        "Intake",
        "call",
        "suggestion",
        "share",
        "typicality",
        "stock",
        "drawer",
        "look-alike",
        "kappa"
      })
  void everyWordOfTheTradeIsExplained(String word) {
    List<Glossary.Term> found = Glossary.in(Locale.ENGLISH).seenIn(Stream.of("a " + word + " b"));
    assertTrue(found.stream().anyMatch(t -> t.meaning().length() > 20), word);
  }

  @Test
  void germanExplainsTheSameWords() {
    assertEquals(
        Glossary.in(Locale.ENGLISH).terms().stream().map(Glossary.Term::key).sorted().toList(),
        Glossary.in(Locale.GERMAN).terms().stream().map(Glossary.Term::key).sorted().toList());
    assertEquals(
        List.of("share"),
        Glossary.in(Locale.GERMAN).seenIn(Stream.of("Anteil 0,93")).stream()
            .map(Glossary.Term::key)
            .toList());
  }

  @Test
  void aWordInsideAnotherIsNotSeen() {
    assertEquals(
        List.of(),
        Glossary.in(Locale.ENGLISH).seenIn(Stream.of("shareholder", "misspelling", "plot")));
  }
}

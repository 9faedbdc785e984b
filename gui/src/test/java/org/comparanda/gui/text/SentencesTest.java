package org.comparanda.gui.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentencesTest {
  // English as the classes of core say it, each place filled as they fill it.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "All values are equal. | Alle Werte sind gleich.",
        "Ten times too large for the shelf: did you mean 30.5 mm?"
            + " | Zehnmal zu groß für das Regal: gemeint ist vielleicht 30,5 mm?",
        "\"12.5a\" is no length. Put the jaws on the bone and send the value again."
            + " | \"12.5a\" ist keine Länge. Die Schnäbel an den Knochen setzen und den Wert noch"
            + " einmal senden.",
        "This is a GIF, not a JPEG or PNG. Save it as JPEG or PNG and attach that. Nothing was"
            + " stored. | Das ist ein GIF, kein JPEG oder PNG. Als JPEG oder PNG speichern und das"
            + " anhängen. Nichts wurde gespeichert.",
        "No calibrated list: Too few animals for any calibrated list."
            + " | Keine kalibrierte Liste: Zu wenige Tiere für eine kalibrierte Liste.",
        "By proportions it fits Ovis aries or Capra hircus, by size it doesn't."
            + " | Nach den Proportionen passt Ovis aries oder Capra hircus, nach der Größe nicht.",
        "Nobody wrote this. All values are equal. | Nobody wrote this. Alle Werte sind gleich."
      })
  void aSentenceIsFoundByItsEnglishForm(String english, String german) {
    assertEquals(german, Words.of("app", Locale.GERMAN).said(english));
    assertEquals(english, Words.of("app", Locale.ENGLISH).said(english));
  }
}

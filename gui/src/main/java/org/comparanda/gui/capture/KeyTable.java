package org.comparanda.gui.capture;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.capture.Errand;
import org.comparanda.capture.NotPossible;
import org.comparanda.gui.text.Words;

/**
 * All keys of the Bench, for the screen and for the printed card.
 *
 * @param words the words of the Bench
 */
public record KeyTable(Words words) {
  private static final List<String> PLAIN =
      List.of("digits", "enter", "minus", "times", "slash", "plus", "points", "stop");
  private static final List<String> FAR =
      List.of("f1", "f2", "f3", "f4", "page", "keys", "picture");

  /** One key and what it does. */
  public record Row(String key, String does) {}

  /** Readings first, then the reasons why not, what is no reading, keys beyond the number pad. */
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (String key : PLAIN) {
      rows.add(new Row(words.get("keys." + key + ".key"), words.get("keys." + key)));
    }
    for (NotPossible reason : NotPossible.values()) {
      rows.add(new Row("- " + reason.number(), words.get("notpossible." + reason.name())));
    }
    for (Errand errand : Errand.values()) {
      rows.add(new Row("0 " + errand.number(), words.get("errand." + errand.name())));
    }
    for (String key : FAR) {
      rows.add(new Row(words.get("keys." + key + ".key"), words.get("keys." + key)));
    }
    return rows;
  }
}

package org.comparanda.gui.oldcards;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.oldcards.CardOnFile;
import org.comparanda.oldcards.Part;
import org.comparanda.oldcards.Piece;
import org.comparanda.oldcards.Proposal;

/**
 * The open card.
 *
 * @param card as found, with its history
 * @param said what it seems to say
 * @param alike how many plain cards wait with its shape, itself included
 */
public record CardShown(CardOnFile card, Proposal said, int alike) {
  /**
   * A stretch of the card's text.
   *
   * @param text as found
   * @param part what it was read as; null-free: PASSED_OVER for signs and words that carry nothing
   */
  public record Stretch(String text, Part part) {}

  /** The whole text in stretches, in its order. */
  public List<Stretch> stretches() {
    List<Stretch> stretches = new ArrayList<>();
    String text = card.card().text();
    int at = 0;
    for (Piece piece : said.pieces()) {
      add(stretches, text.substring(at, piece.from()), Part.PASSED_OVER);
      add(stretches, text.substring(piece.from(), piece.to()), piece.part());
      at = piece.to();
    }
    add(stretches, text.substring(at), Part.PASSED_OVER);
    return stretches;
  }

  private static void add(List<Stretch> stretches, String text, Part part) {
    if (!text.isBlank()) {
      stretches.add(new Stretch(text.strip(), part));
    }
  }
}

package org.comparanda.gui.oldcards;

import java.time.Clock;
import java.util.function.Supplier;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Protocol;
import org.comparanda.oldcards.CardParser;
import org.comparanda.oldcards.OldCards;
import org.comparanda.tray.Trays;

/**
 * What the screen of the old cards looks at.
 *
 * @param reading by the names that the house uses now
 */
public record CardsRoom(
    OldCards cards,
    Trays trays,
    Supplier<CardParser> reading,
    Protocol protocol,
    Words words,
    Clock clock) {
  CardParser parser() {
    return reading.get();
  }
}

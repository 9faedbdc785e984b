package org.comparanda.gui.oldcards;

import java.time.Clock;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Protocol;
import org.comparanda.oldcards.CardParser;
import org.comparanda.oldcards.OldCards;
import org.comparanda.tray.Trays;

/** What the screen of the old cards looks at. */
public record CardsRoom(
    OldCards cards, Trays trays, CardParser parser, Protocol protocol, Words words, Clock clock) {}

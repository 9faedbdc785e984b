package org.comparanda.gui.capture;

import java.time.Clock;
import org.comparanda.capture.CaliperCards;
import org.comparanda.capture.Drafts;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Protocol;
import org.comparanda.measurement.ReadingLog;

/**
 * What a place works with where bones are measured.
 *
 * @param name under which it keeps what lies open
 * @param words the words of the Bench
 */
public record ReadingPlace(
    String name,
    Clock clock,
    Words words,
    Numbers numbers,
    Protocol protocol,
    ReadingLog readings,
    Drafts drafts,
    CaliperCards cards,
    Memory memory) {}

package org.comparanda.gui.app;

import java.time.Clock;
import java.util.Locale;
import java.util.concurrent.Executor;
import org.comparanda.gui.capture.Memory;
import org.comparanda.measurement.Protocol;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;

/**
 * What the screens are wired from; a screen is handed the parts that it needs, never all of it.
 *
 * @param work runs what takes long, off the window's thread
 * @param idle runs what may wait, beside it
 * @param ui runs what touches the window
 * @param locale language and notation
 * @param clock for the time of readings and calls
 * @param look theme, size of the text, motion
 * @param tables protocol, outlines, taxa, published equations
 * @param memory what this computer remembers
 * @param taxa as the house names them now
 * @param collection the open collection: animals, trays, readings, people
 */
public record Workplace(
    Executor work,
    Executor idle,
    Executor ui,
    Locale locale,
    Clock clock,
    Look look,
    ReferenceTables tables,
    HouseTaxa taxa,
    Collection collection,
    Memory memory) {
  private static final Executor NOTHING_WAITS = waits -> {};

  /** Runs what takes so long that answers must not stand behind it. */
  Executor beside() {
    return idle.equals(NOTHING_WAITS) ? work : idle;
  }

  /** A workplace with the taxa of the open collection. */
  public Workplace(
      Executor work,
      Executor idle,
      Executor ui,
      Locale locale,
      Clock clock,
      Look look,
      ReferenceTables tables,
      Collection collection,
      Memory memory) {
    this(
        work,
        idle,
        ui,
        locale,
        clock,
        look,
        tables,
        new HouseTaxa(collection.names(), tables.taxa()),
        collection,
        memory);
  }

  /** A workplace where nothing is done that may wait. */
  public Workplace(
      Executor work,
      Executor ui,
      Locale locale,
      Clock clock,
      Look look,
      ReferenceTables tables,
      Collection collection,
      Memory memory) {
    this(work, NOTHING_WAITS, ui, locale, clock, look, tables, collection, memory);
  }

  /** The protocol in English, the language of the words on old cards. */
  Protocol inEnglish() {
    return ReferenceTables.shipped().protocol();
  }
}

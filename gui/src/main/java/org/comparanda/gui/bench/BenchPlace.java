package org.comparanda.gui.bench;

import java.time.Clock;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import org.comparanda.capture.CaliperCards;
import org.comparanda.capture.Drafts;
import org.comparanda.gui.capture.Memory;
import org.comparanda.gui.capture.ReadingPlace;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Outline;
import org.comparanda.measurement.People;
import org.comparanda.measurement.Protocol;
import org.comparanda.measurement.ReadingLog;
import org.comparanda.reference.ReferenceAnimals;
import org.comparanda.taxon.TaxonTree;
import org.comparanda.tray.Trays;

/**
 * What the Bench works with.
 *
 * @param work runs what takes long
 * @param idle runs what may wait: reckoned ahead, compared in the background
 * @param taxa as the house names them now
 * @param ui runs what touches properties; both may run at once, in a test
 */
public record BenchPlace(
    Executor work,
    Executor idle,
    Executor ui,
    Clock clock,
    Words words,
    Numbers numbers,
    Protocol protocol,
    List<Outline> outlines,
    Supplier<TaxonTree> taxa,
    ReferenceAnimals animals,
    Trays trays,
    ReadingLog readings,
    People people,
    Drafts drafts,
    CaliperCards cards,
    Books books,
    Memory memory,
    SlipDesk slips) {
  public BenchPlace {
    outlines = List.copyOf(outlines);
  }

  /** Under which name this bench keeps what lies open. */
  static final String BENCH = "bench 1";

  TaxonTree tree() {
    return taxa.get();
  }

  /** What measuring a bone needs of it. */
  ReadingPlace reading() {
    return new ReadingPlace(
        BENCH, clock, words, numbers, protocol, readings, drafts, cards, memory);
  }

  /** The same with another executor for what may wait. */
  BenchPlace withIdle(Executor other) {
    return new BenchPlace(
        work, other, ui, clock, words, numbers, protocol, outlines, taxa, animals, trays, readings,
        people, drafts, cards, books, memory, slips);
  }

  /** A place where nothing is done that may wait. */
  public BenchPlace(
      Executor work,
      Executor ui,
      Clock clock,
      Words words,
      Numbers numbers,
      Protocol protocol,
      List<Outline> outlines,
      Supplier<TaxonTree> taxa,
      ReferenceAnimals animals,
      Trays trays,
      ReadingLog readings,
      People people,
      Drafts drafts,
      CaliperCards cards,
      Books books,
      Memory memory,
      SlipDesk slips) {
    this(
        work,
        waits -> {},
        ui,
        clock,
        words,
        numbers,
        protocol,
        outlines,
        taxa,
        animals,
        trays,
        readings,
        people,
        drafts,
        cards,
        books,
        memory,
        slips);
  }
}

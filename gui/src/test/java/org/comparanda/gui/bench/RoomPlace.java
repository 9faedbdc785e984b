package org.comparanda.gui.bench;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import org.comparanda.gui.capture.Memory;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonTree;

/** What a bench works with when it stands in a collection, in English, at one moment. */
final class RoomPlace {
  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);

  private RoomPlace() {}

  static BenchPlace of(Collection collection, Executor work, Memory memory) {
    return of(collection, work, memory, ReferenceTables.shipped()::taxa);
  }

  static BenchPlace of(
      Collection collection, Executor work, Memory memory, Supplier<TaxonTree> taxa) {
    ReferenceTables tables = ReferenceTables.shipped();
    return new BenchPlace(
        work,
        Runnable::run,
        CLOCK,
        Words.of("bench", Locale.ENGLISH),
        new Numbers(Locale.ENGLISH),
        tables.protocol(),
        tables.outlines(),
        taxa,
        collection.animals(),
        collection.trays(),
        collection.readings(),
        collection.people(),
        collection.drafts(),
        collection.caliperCards(),
        new Books(
            collection.numbering(),
            collection.keying(),
            collection.associations(),
            collection.refits(),
            collection.photos(),
            collection.keptAnswers(),
            collection.stops(),
            collection.houseRules()),
        memory,
        new SlipsInMemory(new ArrayList<>()));
  }
}

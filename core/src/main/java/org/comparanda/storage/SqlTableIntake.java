package org.comparanda.storage;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.comparanda.reference.ImportedTable;
import org.comparanda.reference.Progress;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.SetDown;
import org.comparanda.register.TableIntake;
import org.jdbi.v3.core.Handle;

/**
 * Whole tables into the collection's file; long ones by way of an {@link AsideFile}.
 *
 * @param chunk animals that are set down at a time; a table with no more is written at once
 */
record SqlTableIntake(
    Database database, Path file, SqlRegister register, DayBookRows dayBook, Clock clock, int chunk)
    implements TableIntake {
  @Override
  public Optional<SetDown> begun(String content) {
    return AsideFile.existing(AsideFile.place(file, content))
        .flatMap(
            aside -> {
              try (aside) {
                return aside.setDown();
              }
            });
  }

  @Override
  public void forget(String content) {
    AsideFile.remove(AsideFile.place(file, content));
  }

  @Override
  public long bringIn(String content, String name, List<AnimalCard> cards, Progress progress) {
    AsideFile.removeOlder(file, clock.instant().minus(Duration.ofDays(KEPT_DAYS)));
    ImportedTable table = new ImportedTable(content, name, clock.instant(), cards.size());
    if (content.isEmpty() || cards.size() <= chunk) {
      return database.write(
          h ->
              SqlRegister.orNothing(
                  h, known(h, table, register.addAll(h, cards.iterator(), name, progress))));
    }
    Path place = AsideFile.place(file, content);
    long stored = 0;
    if (allSetDown(place, table, cards, progress)) {
      stored =
          database.writeBeside(place, h -> SqlRegister.orNothing(h, moved(h, table, progress)));
    }
    if (stored > 0) {
      AsideFile.remove(place);
    }
    return stored;
  }

  /** False when progress stopped it; what is set down by then stays. */
  private boolean allSetDown(
      Path place, ImportedTable table, List<AnimalCard> cards, Progress progress) {
    try (AsideFile aside = AsideFile.open(place, database.read(AsideFile::form))) {
      if (!aside.agreesWith(cards, table.file())) {
        aside.empty();
      }
      int from = aside.setDown().map(down -> (int) down.animals()).orElse(0);
      while (from < cards.size()) {
        if (!progress.goOn(from)) {
          return false;
        }
        int to = Math.min(from + chunk, cards.size());
        aside.add(
            cards.subList(from, to), new SetDown(table.file(), clock.instant(), to, cards.size()));
        from = to;
      }
      return progress.goOn(from);
    }
  }

  private long moved(Handle h, ImportedTable table, Progress progress) {
    dayBook.wroteAll(h, Kept.ANIMAL, AsideFile.moveIn(h), "");
    long stored = known(h, table, register.grown(h, table.animals(), table.file()));
    return progress.goOn(stored) ? stored : 0;
  }

  /** Keeps that the table was imported, if any of it was stored. */
  private long known(Handle h, ImportedTable table, long stored) {
    if (stored > 0 && !table.content().isEmpty()) {
      SqlImportedTables.add(h, dayBook, table);
    }
    return stored;
  }
}

package org.comparanda.storage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteException;

/**
 * Reading and writing transactions on one file. A writing transaction is on the disk when {@code
 * write} returns; a reading one sees one moment.
 *
 * <p>Errors: {@link CollectionProblem} if the file is locked, full or damaged.
 */
final class Database implements AutoCloseable {
  private final Path file;
  private final Jdbi reading;
  private final Jdbi writing;
  private final Connection keepsOpen;
  private volatile boolean closed;

  /** One question or change to be run in a transaction. */
  interface Work<T> {
    T in(Handle handle);
  }

  Database(Path file) throws SQLException {
    this.file = file;
    reading = Jdbi.create(SqliteConnections.reading(file));
    writing = Jdbi.create(SqliteConnections.writing(file));
    keepsOpen = SqliteConnections.reading(file).openConnection();
  }

  <T> T read(Work<T> work) {
    return run(reading, work);
  }

  <T> T write(Work<T> work) {
    return run(
        writing,
        h -> {
          T done = work.in(h);
          SearchIndex.takeIn(h);
          return done;
        });
  }

  /** Writes into a file that is no collection, so that nothing of it is to be found by search. */
  <T> T writeUnsearched(Work<T> work) {
    return run(writing, work);
  }

  private <T> T run(Jdbi jdbi, Work<T> work) {
    if (closed) {
      throw new IllegalStateException("\"" + file + "\" was closed. Open it again.");
    }
    try {
      return jdbi.inTransaction(work::in);
    } catch (RuntimeException problem) {
      throw told(file, problem).<RuntimeException>map(p -> p).orElse(problem);
    }
  }

  /** Writes while another file can be read beside as {@code aside}. */
  <T> T writeBeside(Path other, Work<T> work) {
    try {
      return writing.withHandle(
          h -> {
            h.execute("attach database ? as aside", other.toString());
            return h.inTransaction(
                inside -> {
                  T done = work.in(inside);
                  SearchIndex.takeIn(inside);
                  return done;
                });
          });
    } catch (RuntimeException problem) {
      throw told(file, problem).<RuntimeException>map(p -> p).orElse(problem);
    }
  }

  /** A whole copy of the file as of one moment, at a place where nothing stands. */
  void copyTo(Path place) {
    try {
      reading.useHandle(h -> h.execute("vacuum into ?", place.toString()));
    } catch (JdbiException problem) {
      throw told(place, problem).<RuntimeException>map(p -> p).orElse(problem);
    }
  }

  /** What a failure of the database means for the person at the bench, where we know it. */
  static Optional<CollectionProblem> told(Path file, Throwable problem) {
    for (Throwable cause = problem; cause != null; cause = cause.getCause()) {
      if (cause instanceof CollectionProblem known) {
        return Optional.of(known);
      }
      if (cause instanceof SQLiteException sqlite) {
        return told(file, sqlite);
      }
    }
    return Optional.empty();
  }

  private static Optional<CollectionProblem> told(Path file, SQLiteException problem) {
    int primaryCode = problem.getResultCode().code & 0xff; // SQLite: extended codes add high bits
    return switch (primaryCode) {
      case 5, 6 -> Optional.of(CollectionProblem.locked(file));
      case 8, 14 -> Optional.of(CollectionProblem.notWritable(file));
      case 11 -> Optional.of(CollectionProblem.damaged(file, "the database says it is malformed"));
      case 13 -> Optional.of(CollectionProblem.full(file));
      case 26 -> Optional.of(CollectionProblem.foreign(file, "it is no database"));
      default -> Optional.empty();
    };
  }

  /** Writes the log back into the file and lets go of it. */
  @Override
  public void close() {
    if (closed) {
      return;
    }
    closed = true;
    try (Connection last = keepsOpen) {
      DurabilitySettings.pragma(last, "wal_checkpoint(truncate)");
    } catch (SQLException problem) {
      String message =
          "\"" + file + "\" was not closed well; keep the file ending in -wal beside it.";
      throw told(file, problem)
          .<RuntimeException>map(p -> p)
          .orElseGet(() -> new IllegalStateException(message, problem));
    }
  }
}

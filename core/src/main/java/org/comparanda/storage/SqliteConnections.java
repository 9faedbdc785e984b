package org.comparanda.storage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.jdbi.v3.core.ConnectionFactory;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteOpenMode;

/**
 * Opens connections to one collection's file. Each one is told to keep a write-ahead log, to sync
 * fully and to check foreign keys, and is asked back whether it does.
 *
 * <p>Errors: {@link CollectionProblem} if a setting was not taken.
 */
final class SqliteConnections implements ConnectionFactory {
  private final Path file;
  private final SQLiteConfig config;

  private SqliteConnections(Path file, SQLiteConfig.TransactionMode mode) {
    this.file = file;
    config = new SQLiteConfig();
    config.resetOpenMode(SQLiteOpenMode.CREATE);
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.enforceForeignKeys(true);
    config.setTransactionMode(mode);
    config.setBusyTimeout(5_000);
    config.setGetGeneratedKeys(false); // nobody asks; it would cost a query for each row written
  }

  /** Connections whose transactions may read beside a writer. */
  static SqliteConnections reading(Path file) {
    return new SqliteConnections(file, SQLiteConfig.TransactionMode.DEFERRED);
  }

  /** Connections whose transactions hold the write lock from their first statement. */
  static SqliteConnections writing(Path file) {
    return new SqliteConnections(file, SQLiteConfig.TransactionMode.IMMEDIATE);
  }

  @Override
  public Connection openConnection() throws SQLException {
    Connection connection = config.createConnection("jdbc:sqlite:" + file);
    try {
      DurabilitySettings.readBack(connection).require(file);
      return connection;
    } catch (SQLException | RuntimeException problem) {
      connection.close();
      throw problem;
    }
  }

  /** A connection that can change nothing, not even the log; for looking at a file. */
  static Connection looking(Path file) throws SQLException {
    SQLiteConfig looking = new SQLiteConfig();
    looking.setReadOnly(true);
    looking.setBusyTimeout(2_000);
    return looking.createConnection("jdbc:sqlite:" + file);
  }
}

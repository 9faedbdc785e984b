package org.comparanda.storage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.flywaydb.core.Flyway;
import org.sqlite.SQLiteDataSource;

/**
 * The form of the file: which marks it carries, and the steps that bring it to the present form.
 * Plain tables stand in {@code schema/} (SQL that PostgreSQL reads, too), what only SQLite knows in
 * {@code sqlite/}.
 */
final class Schema {
  /** Marks our files in their header: the letters Cmpr. */
  static final int APPLICATION_ID = 0x436d7072;

  /** Number of the last step; stands in the header as {@code user_version}. */
  static final int VERSION = 26;

  /** The form since which the Day Book keeps every row; older ones are taken over as they are. */
  static final int BOOK_KEEPS_ALL = 9;

  /** The form since which lots have provenance and hazards of their own. */
  static final int LOTS_HAVE_NOTES = 25;

  private static final Logger FLYWAY_LOG = Logger.getLogger("org.flywaydb");

  private Schema() {}

  /** Takes all steps that the file still lacks, each in a transaction, and marks it as ours. */
  static void bringUpToDate(Path file) throws SQLException {
    FLYWAY_LOG.setLevel(Level.WARNING);
    SQLiteDataSource source = new SQLiteDataSource();
    source.setUrl("jdbc:sqlite:" + file);
    Flyway.configure(Schema.class.getClassLoader())
        .dataSource(source)
        .locations(
            "classpath:org/comparanda/storage/schema", "classpath:org/comparanda/storage/sqlite")
        .load()
        .migrate();
    try (Connection connection = SqliteConnections.writing(file).openConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("pragma application_id = " + APPLICATION_ID);
      statement.execute("pragma user_version = " + VERSION);
    }
  }
}

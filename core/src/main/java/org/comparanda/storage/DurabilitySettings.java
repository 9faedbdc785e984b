package org.comparanda.storage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * What a connection says of itself, read back after it was set.
 *
 * @param journalMode must be {@code wal}
 * @param synchronous must be 2 (FULL): a commit returns after the log is on the disk
 * @param foreignKeys must be 1
 */
record DurabilitySettings(String journalMode, int synchronous, int foreignKeys) {
  static DurabilitySettings readBack(Connection connection) throws SQLException {
    return new DurabilitySettings(
        pragma(connection, "journal_mode"),
        Integer.parseInt(pragma(connection, "synchronous")),
        Integer.parseInt(pragma(connection, "foreign_keys")));
  }

  /** Errors: {@link CollectionProblem} if a setting is not the safe one. */
  void require(Path file) {
    if (!journalMode.equals("wal") || synchronous != 2 || foreignKeys != 1) {
      throw CollectionProblem.settings(
          file,
          "journal_mode "
              + journalMode
              + ", synchronous "
              + synchronous
              + ", foreign_keys "
              + foreignKeys);
    }
  }

  static String pragma(Connection connection, String name) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("pragma " + name)) {
      return row.next() ? row.getString(1) : "";
    }
  }
}

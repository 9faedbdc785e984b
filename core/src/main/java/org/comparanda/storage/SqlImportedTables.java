package org.comparanda.storage;

import java.time.Instant;
import java.util.Optional;
import org.comparanda.reference.ImportedTable;
import org.comparanda.reference.ImportedTables;
import org.jdbi.v3.core.Handle;

/** Tables that were imported, in the collection's file. */
record SqlImportedTables(Database database) implements ImportedTables {
  @Override
  public Optional<ImportedTable> ofContent(String sha256) {
    return database.read(
        h ->
            h.createQuery("select * from imported_table where content = :content")
                .bind("content", sha256)
                .map(
                    (row, context) ->
                        new ImportedTable(
                            row.getString("content"),
                            row.getString("file_name"),
                            Instant.parse(row.getString("at")),
                            row.getLong("animals")))
                .findOne());
  }

  /** Keeps that a table was imported, in the transaction that brings its animals. */
  static void add(Handle h, DayBookRows dayBook, ImportedTable table) {
    h.createUpdate(
            "insert into imported_table (content, file_name, at, animals) values (:content,"
                + " :file, :at, :animals) on conflict (content) do nothing")
        .bind("content", table.content())
        .bind("file", table.file())
        .bind("at", table.at().toString())
        .bind("animals", table.animals())
        .execute();
    dayBook.wrote(h, Kept.IMPORTED, table.content(), table.file());
  }
}

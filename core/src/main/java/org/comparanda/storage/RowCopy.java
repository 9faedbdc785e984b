package org.comparanda.storage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Update;

/** All rows of all tables out, and into an empty collection, just as they stand. */
final class RowCopy {
  private final Handle handle;
  private final Map<String, List<String>> columnsOf = new HashMap<>();

  RowCopy(Handle handle) {
    this.handle = handle;
  }

  /** Gives every row: name of its table, its columns in order, those without a value left out. */
  static void out(Handle handle, BiConsumer<String, Map<String, Object>> taker) {
    for (String tableAndKey : ContentHash.TABLES_AND_KEYS) {
      String table = tableAndKey.substring(0, tableAndKey.indexOf(' '));
      handle
          .createQuery("select * from " + tableAndKey)
          .scanResultSet(
              (rows, context) -> {
                ResultSet row = rows.get();
                while (row.next()) {
                  taker.accept(table, columns(row));
                }
                return table;
              });
    }
  }

  private static Map<String, Object> columns(ResultSet row) throws SQLException {
    Map<String, Object> columns = new LinkedHashMap<>();
    ResultSetMetaData form = row.getMetaData();
    for (int i = 1; i <= form.getColumnCount(); i++) {
      Object value = row.getObject(i);
      if (value != null) {
        columns.put(form.getColumnName(i), value);
      }
    }
    return columns;
  }

  /** Adds all rows of a filling, or none. Errors: {@link IOException} if they can't be read. */
  static void in(Database database, Collection.Filling filling) throws IOException {
    try {
      database.write(
          handle -> {
            try {
              filling.rows(new RowCopy(handle)::in);
              return handle;
            } catch (IOException unreadable) {
              throw new UncheckedIOException(unreadable);
            }
          });
    } catch (UncheckedIOException unreadable) {
      throw new IOException(unreadable.getMessage(), unreadable);
    }
  }

  /** Adds one row. Errors: {@link CollectionProblem} if there is no such table or column. */
  void in(String table, Map<String, Object> columns) {
    List<String> known = columnsOf.computeIfAbsent(table, this::columnsOf);
    for (String column : columns.keySet()) {
      if (!known.contains(column)) {
        throw CollectionProblem.foreignRow(table + "." + column);
      }
    }
    List<String> names = new ArrayList<>(columns.keySet());
    String insert =
        "insert into "
            + table
            + " ("
            + String.join(", ", names)
            + ") values (:"
            + String.join(", :", names)
            + ")";
    try (Update update = handle.createUpdate(insert)) {
      columns.forEach(update::bind);
      update.execute();
    }
  }

  private List<String> columnsOf(String table) {
    if (ContentHash.TABLES_AND_KEYS.stream().noneMatch(t -> t.startsWith(table + " order by "))) {
      throw CollectionProblem.foreignRow(table);
    }
    return handle
        .createQuery("select name from pragma_table_info(:table)")
        .bind("table", table)
        .mapTo(String.class)
        .list();
  }
}

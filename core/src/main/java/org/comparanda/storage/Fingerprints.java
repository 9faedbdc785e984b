package org.comparanda.storage;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleConsumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/**
 * What the Day Book keeps of a row: SHA-256 over its columns by name. A column without a value is
 * left out, so that a form of the file with one column more, still empty, changes no fingerprint.
 * The rows that belong to a row are chained behind it in their order.
 */
final class Fingerprints {
  private final MessageDigest digest;

  private Fingerprints() {
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException problem) {
      throw new IllegalStateException("Every Java has SHA-256; this one lacks it.", problem);
    }
  }

  /** Those of all rows of a kind: key to fingerprint, in the order of the keys. */
  static Map<String, String> all(Handle h, Kept kept) {
    return new Fingerprints().of(h, kept, "", Map.of());
  }

  /** That of one row; {@link org.comparanda.daybook.Change#GONE} where there is none. */
  static String one(Handle h, Kept kept, Object key) {
    return new Fingerprints()
        .of(h, kept, " where %s = :key", Map.of("key", key))
        .getOrDefault(String.valueOf(key), org.comparanda.daybook.Change.GONE);
  }

  /** Those of the rows after the one and up to the other, counted from 1 in the kind's table. */
  static Map<String, String> ofRows(Handle h, Kept kept, long after, long upTo) {
    return new Fingerprints()
        .of(
            h,
            kept,
            " where %s in (select "
                + kept.key()
                + " from "
                + kept.table()
                + " where rowid > :after and rowid <= :upto)",
            Map.of("after", after, "upto", upTo));
  }

  private Map<String, String> of(Handle h, Kept kept, String where, Map<String, Object> bound) {
    Map<String, byte[]> chained = new LinkedHashMap<>();
    rows(
        h,
        kept.table() + where.formatted(kept.key()) + " order by " + kept.key(),
        bound,
        (row, columns) ->
            chained.put(row.getString(kept.key()), hash(row, columns, kept.apart(), new byte[0])));
    for (Kept.Part part : kept.parts()) {
      rows(
          h,
          part.table() + where.formatted(part.pointer()) + " order by " + part.order(),
          bound,
          (row, columns) -> {
            String key = row.getString(part.pointer());
            byte[] before = chained.get(key);
            if (before != null) {
              chained.put(key, hash(row, columns, Set.of(), before));
            }
          });
    }
    Map<String, String> printed = new LinkedHashMap<>();
    chained.forEach((key, bytes) -> printed.put(key, HexFormat.of().formatHex(bytes)));
    return printed;
  }

  /** Takes one row. */
  private interface RowTaker {
    void take(ResultSet row, List<String> columns) throws SQLException;
  }

  private static void rows(Handle h, String from, Map<String, Object> bound, RowTaker taker) {
    try (Query query = h.createQuery("select * from " + from)) {
      query
          .bindMap(bound)
          .scanResultSet(
              (rows, context) -> {
                ResultSet row = rows.get();
                List<String> columns = columns(row.getMetaData());
                while (row.next()) {
                  taker.take(row, columns);
                }
                return from;
              });
    }
  }

  /** By name. */
  private static List<String> columns(ResultSetMetaData form) throws SQLException {
    List<String> columns = new ArrayList<>();
    for (int i = 1; i <= form.getColumnCount(); i++) {
      columns.add(form.getColumnName(i));
    }
    Collections.sort(columns);
    return columns;
  }

  private byte[] hash(ResultSet row, List<String> columns, Set<String> apart, byte[] before)
      throws SQLException {
    digest.update(before);
    for (String column : columns) {
      String value = row.getString(column);
      if (value != null && !apart.contains(column)) {
        put(column, value);
      }
    }
    return digest.digest();
  }

  /** Lengths first, so that no two rows run into one text. */
  private void put(String name, String value) {
    for (String text : new String[] {name, value}) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
      digest.update(bytes);
    }
  }

  /**
   * The subjects of everything that the book keeps, with their fingerprints.
   *
   * @param done is told after each kind which part is done, 0 to 1
   */
  static Map<String, String> everything(Handle h, DoubleConsumer done) {
    Map<String, String> subjects = new HashMap<>();
    int kinds = 0;
    for (Kept kept : Kept.ALL) {
      all(h, kept).forEach((key, print) -> subjects.put(kept.subject(key), print));
      kinds++;
      done.accept(kinds / (double) Kept.ALL.size());
    }
    return subjects;
  }
}

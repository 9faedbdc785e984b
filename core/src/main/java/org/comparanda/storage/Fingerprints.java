package org.comparanda.storage;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
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

  private Map<String, String> of(Handle h, Kept kept, String where, Map<String, Object> bound) {
    Map<String, byte[]> chained = new LinkedHashMap<>();
    rows(
        h,
        kept.table() + where.formatted(kept.key()) + " order by " + kept.key(),
        bound,
        row -> chained.put(row.getString(kept.key()), hash(row, kept.apart(), new byte[0])));
    for (Kept.Part part : kept.parts()) {
      rows(
          h,
          part.table() + where.formatted(part.pointer()) + " order by " + part.order(),
          bound,
          row ->
              chained.computeIfPresent(
                  row.getString(part.pointer()), (key, before) -> hash(row, Set.of(), before)));
    }
    Map<String, String> printed = new LinkedHashMap<>();
    chained.forEach((key, bytes) -> printed.put(key, HexFormat.of().formatHex(bytes)));
    return printed;
  }

  /** Takes one row. */
  private interface RowTaker {
    void take(ResultSet row) throws SQLException;
  }

  private static void rows(Handle h, String from, Map<String, Object> bound, RowTaker taker) {
    try (Query query = h.createQuery("select * from " + from)) {
      query
          .bindMap(bound)
          .scanResultSet(
              (rows, context) -> {
                ResultSet row = rows.get();
                while (row.next()) {
                  taker.take(row);
                }
                return from;
              });
    }
  }

  private byte[] hash(ResultSet row, Set<String> apart, byte[] before) {
    try {
      digest.update(before);
      Map<String, String> columns = new TreeMap<>();
      ResultSetMetaData form = row.getMetaData();
      for (int i = 1; i <= form.getColumnCount(); i++) {
        String value = row.getString(i);
        if (value != null && !apart.contains(form.getColumnName(i))) {
          columns.put(form.getColumnName(i), value);
        }
      }
      columns.forEach(this::put);
      return digest.digest();
    } catch (SQLException problem) {
      throw new IllegalStateException("A row could not be read.", problem);
    }
  }

  /** Lengths first, so that no two rows run into one text. */
  private void put(String name, String value) {
    for (String text : new String[] {name, value}) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
      digest.update(bytes);
    }
  }

  /** The subjects of everything that the book keeps, with their fingerprints. */
  static Map<String, String> everything(Handle h) {
    Map<String, String> subjects = new HashMap<>();
    for (Kept kept : Kept.ALL) {
      all(h, kept).forEach((key, print) -> subjects.put(kept.subject(key), print));
    }
    return subjects;
  }
}

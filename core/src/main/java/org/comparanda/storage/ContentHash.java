package org.comparanda.storage;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HexFormat;
import java.util.List;
import org.jdbi.v3.core.Handle;

/**
 * Hash of all rows of all tables, each in the order of its key; streams, so size does not matter.
 */
final class ContentHash {
  /** How tables are called that the file makes of the others by itself: they hold nothing more. */
  static final String MADE_BY_THE_FILE = "search_";

  /** Every other table with its order; a row stands after those it refers to. */
  static final List<String> TABLES_AND_KEYS =
      List.of(
          "person order by id",
          "animal order by id",
          "shelf_bone order by animal_id, position",
          "shelf_reading order by animal_id, position, code",
          "shelf_correction order by number",
          "animal_register order by animal_id",
          "skeleton_bone order by id",
          "house_taxon order by name",
          "shelf_change order by version",
          "tray order by id",
          "tray_bone order by id",
          "reading order by id",
          "bone_call order by id",
          "draft order by bench",
          "caliper_card order by name",
          "day_book order by bench, number",
          "accepted_finding order by number",
          "arrival order by number",
          "arrival_interest order by number",
          "table_mapping order by name",
          "imported_table order by content",
          "old_card order by number",
          "old_card_decision order by number",
          "number_rule order by tray_id",
          "number_given order by series, number",
          "association_bone order by bone_id",
          "refit order by bone_id",
          "keying_batch order by bench",
          "keying_pair order by bench",
          "lot order by id",
          "beside_call order by call_id",
          "kept_answer order by id",
          "element_call order by id",
          "scrap order by id",
          "stop_record order by id",
          "right_given order by id",
          "house_rule order by id",
          "second_look_draw order by position",
          "photo order by id");

  private ContentHash() {}

  static String of(Handle handle) {
    MessageDigest digest = sha256();
    for (String table : TABLES_AND_KEYS) {
      put(digest, table);
      handle
          .createQuery("select * from " + table)
          .scanResultSet(
              (rows, context) -> {
                ResultSet row = rows.get();
                while (row.next()) {
                  putRow(digest, row);
                }
                return digest;
              });
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static void putRow(MessageDigest digest, ResultSet row) throws SQLException {
    for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
      String value = row.getString(column);
      put(digest, value == null ? "absent" : "is " + value);
    }
  }

  /** Length first, so that no two rows run into the same text. */
  private static void put(MessageDigest digest, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
    digest.update(bytes);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException problem) {
      throw new IllegalStateException("Every Java has SHA-256; this one lacks it.", problem);
    }
  }
}

package org.comparanda.storage;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.tray.Search;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** Looks for words in the joined texts of each row, by the patterns that both databases know. */
record SqlSearch(Database database) implements Search {
  /** One kind with the query that gives key and text. */
  private record Searched(Kind kind, String query) {}

  private static final List<Searched> ALL =
      List.of(
          new Searched(
              Kind.BONE,
              "select b.id as hit_key, b.id || ' · ' || lower(b.side) || ' ' || b.element || ' · '"
                  + " || t.name || ' · ' || t.lot || ' · ' || b.remarks || ' '"
                  + " || coalesce(b.goes_to, '') as hit_text from tray_bone b"
                  + " join tray t on t.id = b.tray_id"),
          new Searched(
              Kind.CALL,
              "select c.bone_id as hit_key, c.bone_id || ' · ' || coalesce(c.as_written, c.taxon)"
                  + " || ' ' || lower(c.qualifier) || ' · ' || c.person_id || ' ' || p.name || ' · '"
                  + " || substr(c.at, 1, 10) || ' · ' || c.basis || ' ' || coalesce(c.why, '')"
                  + " || ' ' || coalesce(c.compared_with, '') as hit_text from bone_call c"
                  + " join person p on p.id = c.person_id"),
          new Searched(
              Kind.TRAY,
              "select id as hit_key, name || ' · ' || id || ' · ' || lot || ' · ' || provenance"
                  + " || ' · ' || hazards || ' ' || coalesce(priority_reason, '') || ' '"
                  + " || coalesce(requested_by, '') as hit_text from tray"),
          new Searched(
              Kind.LOT, "select id as hit_key, id || ' · ' || remarks as hit_text from lot"),
          new Searched(
              Kind.ANIMAL,
              "select id as hit_key, id || ' · ' || coalesce(taxon, '') || ' · '"
                  + " || coalesce(drawer, '') || ' · ' || sex || ' ' || age_class || ' ' || origin"
                  + " || ' · ' || remarks as hit_text from animal"));

  @Override
  public List<Hit> find(String words, int most) {
    List<String> asked =
        List.of(words.strip().split("\\s+")).stream().filter(w -> !w.isEmpty()).toList();
    if (asked.isEmpty()) {
      return List.of();
    }
    return database.read(
        h -> {
          List<Hit> hits = new ArrayList<>();
          for (Searched searched : ALL) {
            hits.addAll(find(h, searched, asked, most - hits.size()));
          }
          return hits;
        });
  }

  private static List<Hit> find(Handle h, Searched searched, List<String> words, int most) {
    StringBuilder where = new StringBuilder();
    for (int i = 0; i < words.size(); i++) {
      where.append(i == 0 ? " where " : " and ").append("lower(hit_text) like :word").append(i);
      where.append(" escape '!'");
    }
    try (Query query =
        h.createQuery(
            "select hit_key, hit_text from ("
                + searched.query()
                + ") found"
                + where
                + " order by hit_key limit :most")) {
      for (int i = 0; i < words.size(); i++) {
        query.bind("word" + i, "%" + plain(words.get(i)) + "%");
      }
      return query
          .bind("most", most)
          .map(
              (row, context) ->
                  new Hit(
                      searched.kind(),
                      row.getString("hit_key"),
                      row.getString("hit_text").strip().replaceAll("( ·)+$", "")))
          .list();
    }
  }

  /** The word, A to Z in small letters as the database does it, its wildcards taken as letters. */
  private static String plain(String word) {
    StringBuilder small = new StringBuilder();
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      if (c == '!' || c == '%' || c == '_') {
        small.append('!');
      }
      small.append(c >= 'A' && c <= 'Z' ? (char) (c + 32) : c);
    }
    return small.toString();
  }
}

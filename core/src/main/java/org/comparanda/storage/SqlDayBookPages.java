package org.comparanda.storage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.comparanda.daybook.Change;
import org.comparanda.daybook.DayBook;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.daybook.DayBookFilter;
import org.comparanda.daybook.DayBookPage;
import org.comparanda.daybook.DayBookPages;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jspecify.annotations.Nullable;

/** The Day Book in the collection's file, page by page. */
record SqlDayBookPages(Database database) implements DayBookPages {
  /** Behind the fingerprint, which is no text to be looked for. */
  private static final String SAID = "substr(content, instr(content, char(10)) + 1)";

  /** To the second: the rest of the text is of different lengths. */
  private static final String NEWEST_FIRST = " order by substr(at, 1, 19) desc, bench, number desc";

  @Override
  public DayBookPage page(DayBookFilter filter, long from, int most) {
    Where where = new Where(filter);
    return database.read(
        h -> {
          List<DayBookEntry> entries =
              where
                  .bound(
                      h,
                      "select * from day_book"
                          + where.text()
                          + NEWEST_FIRST
                          + " limit :most offset :from")
                  .bind("most", most)
                  .bind("from", from)
                  .map(DayBookRows::entry)
                  .list();
          long all =
              where
                  .bound(h, "select count(*) from day_book" + where.text())
                  .mapTo(Long.class)
                  .one();
          return new DayBookPage(lines(h, entries), all);
        });
  }

  /** Who did what: as the entry says, else as its row does. */
  private static List<DayBookPage.Line> lines(Handle h, List<DayBookEntry> entries) {
    Map<String, DayBookPage.Line> rows = new HashMap<>();
    for (Kept kept : Kept.ALL) {
      Set<String> keys = new HashSet<>();
      for (DayBookEntry entry : entries) {
        Kept.of(entry.subject())
            .filter(k -> k.equals(kept) && !k.made().equals(Kept.Made.SILENT))
            .ifPresent(k -> keys.add(k.keyIn(entry.subject())));
      }
      if (!keys.isEmpty()) {
        rows.putAll(said(h, kept, keys, entries));
      }
    }
    List<DayBookPage.Line> lines = new ArrayList<>();
    for (DayBookEntry entry : entries) {
      Change change = Change.read(entry.content());
      DayBookPage.Line row =
          rows.getOrDefault(entry.subject(), new DayBookPage.Line(entry, "", ""));
      lines.add(
          new DayBookPage.Line(
              entry,
              change.by().isEmpty() ? row.by() : change.by(),
              row.words().isEmpty() ? change.words() : row.words()));
    }
    return lines;
  }

  private static Map<String, DayBookPage.Line> said(
      Handle h, Kept kept, Set<String> keys, List<DayBookEntry> entries) {
    Map<String, DayBookPage.Line> rows = new HashMap<>();
    h.createQuery(
            "select %1$s as row_key, %2$s as maker, %3$s as says from %4$s where %1$s in (<keys>)"
                .formatted(kept.key(), kept.made().person(), kept.made().says(), kept.table()))
        .bindList("keys", List.copyOf(keys))
        .mapToMap()
        .forEach(
            row ->
                rows.put(
                    kept.subject(text(row.get("row_key"))),
                    new DayBookPage.Line(
                        entries.get(0), text(row.get("maker")), text(row.get("says")))));
    return rows;
  }

  private static String text(@Nullable Object cell) {
    return cell == null ? "" : cell.toString();
  }

  @Override
  public List<String> kinds() {
    return Kept.ALL.stream().map(Kept::word).sorted().toList();
  }

  @Override
  public Set<String> blanked() {
    return database.read(
        h ->
            h
                .createQuery(
                    "select id from person where name = '' and exists (select 1 from day_book where"
                        + " subject = 'person ' || person.id and content like '%' || char(10) ||"
                        + " 'named')")
                .mapTo(String.class)
                .stream()
                .collect(Collectors.toSet()));
  }

  @Override
  public Map<String, String> rowNow(String subject) {
    Optional<Kept> kept = Kept.of(subject);
    if (kept.isEmpty()) {
      return Map.of();
    }
    return database.read(
        h -> {
          Map<String, String> row = new LinkedHashMap<>();
          h.createQuery(
                  "select * from %s where %s = :key"
                      .formatted(kept.get().table(), kept.get().key()))
              .bind("key", kept.get().keyIn(subject))
              .mapToMap()
              .findFirst()
              .ifPresent(
                  found ->
                      found.forEach(
                          (column, value) -> {
                            if (value != null && !kept.get().apart().contains(column)) {
                              row.put(column, String.valueOf(value));
                            }
                          }));
          return row;
        });
  }

  /** What is asked for, as a condition. */
  private record Where(DayBookFilter filter) {
    String text() {
      StringBuilder where = new StringBuilder(" where bench <> :joining");
      if (!filter.kind().isEmpty()) {
        where.append(" and subject like :kind escape '!'");
        for (int i = 0; i < longer().size(); i++) {
          where.append(" and subject not like :other").append(i).append(" escape '!'");
        }
      }
      if (!filter.text().isBlank()) {
        where.append(" and (lower(subject) like :text escape '!' or lower(").append(SAID);
        where.append(") like :text escape '!' or subject in (");
        where.append(subjects(kept -> "lower(" + kept.made().says() + ") like :text escape '!'"));
        where.append("))");
      }
      if (!filter.person().isEmpty()) {
        where.append(" and (content like '%' || char(10) || :by || char(10) || '%' escape '!'");
        where.append(" or (content like '%' || char(10) || char(10) || '%' and subject in (");
        where.append(subjects(kept -> kept.made().person() + " = :person"));
        where.append(")))");
      }
      return where.toString();
    }

    /** Asks for the subjects of the rows, of every kind that says something, which fit. */
    private static String subjects(Function<Kept, String> fits) {
      return Kept.ALL.stream()
          .filter(kept -> !kept.made().equals(Kept.Made.SILENT))
          .map(
              kept ->
                  "select '%s ' || %s from %s where %s"
                      .formatted(kept.word(), kept.key(), kept.table(), fits.apply(kept)))
          .collect(Collectors.joining(" union all "));
    }

    /** Other kinds whose words begin with the word of this one: "number rule" beside "number". */
    private List<String> longer() {
      return Kept.ALL.stream()
          .map(Kept::word)
          .filter(word -> word.startsWith(filter.kind() + " "))
          .toList();
    }

    Query bound(Handle h, String sql) {
      Query query = h.createQuery(sql).bind("joining", DayBook.JOINING);
      if (!filter.kind().isEmpty()) {
        query.bind("kind", plain(filter.kind()) + " %");
        for (int i = 0; i < longer().size(); i++) {
          query.bind("other" + i, plain(longer().get(i)) + " %");
        }
      }
      if (!filter.text().isBlank()) {
        query.bind("text", "%" + plain(filter.text().strip().toLowerCase(Locale.ROOT)) + "%");
      }
      if (!filter.person().isEmpty()) {
        query.bind("by", plain(filter.person())).bind("person", filter.person());
      }
      return query;
    }

    private static String plain(String text) {
      return text.replace("!", "!!").replace("%", "!%").replace("_", "!_");
    }
  }
}

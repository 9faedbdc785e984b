package org.comparanda.storage;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.SetDown;
import org.jdbi.v3.core.Handle;

/**
 * The animals of one long table, set down in a file beside the collection before they are moved in:
 * the same tables as the collection's own, filled some thousand animals at a time, each time for
 * good. Row numbers are the places in the table.
 */
final class AsideFile implements AutoCloseable {
  /** So many animals are set down, or compared, at a time. */
  static final int CHUNK = 5_000;

  /** What the collection has of an animal; the later ones point at the earlier. */
  static final List<String> TABLES =
      List.of("animal", "shelf_bone", "shelf_reading", "shelf_correction", "animal_register");

  private static final String ENDING = ".import";
  private static final int LETTERS = 16;

  private final Path place;
  private final Database database;

  private AsideFile(Path place, Database database) {
    this.place = place;
    this.database = database;
  }

  static Path place(Path collection, String content) {
    return collection.resolveSibling(
        collection.getFileName()
            + "."
            + content.substring(0, Math.min(LETTERS, content.length()))
            + ENDING);
  }

  /** Opens what was set down in tables of this form, or begins anew. */
  static AsideFile open(Path place, List<String> form) {
    Optional<AsideFile> there = existing(place);
    if (there.isPresent() && there.get().form().equals(form)) {
      return there.get();
    }
    there.ifPresent(AsideFile::close);
    remove(place);
    makeEmpty(place);
    AsideFile made = new AsideFile(place, database(place));
    made.database.writeUnsearched(
        h -> {
          form.forEach(h::execute);
          h.execute("create table print (id text not null primary key, print text not null)");
          return h.execute(
              "create table set_down (upto bigint not null primary key, of_all bigint not null,"
                  + " at text not null, file_name text not null)");
        });
    return made;
  }

  /** Readable by its owner alone, as a collection is. */
  private static void makeEmpty(Path place) {
    try {
      Files.move(
          Files.createTempFile(
              place.resolveSibling(""), String.valueOf(place.getFileName()), ENDING),
          place);
    } catch (IOException problem) {
      throw CollectionProblem.notWritable(place);
    }
  }

  /** What stands there, if it is whole: a half-made or damaged file is as good as none. */
  static Optional<AsideFile> existing(Path place) {
    if (!Files.exists(place)) {
      return Optional.empty();
    }
    try {
      AsideFile there = new AsideFile(place, database(place));
      if (there.isMade()) {
        return Optional.of(there);
      }
      there.close();
    } catch (CollectionProblem damaged) {
      if (damaged.kind() == CollectionProblem.Kind.LOCKED) {
        throw damaged;
      }
    }
    return Optional.empty();
  }

  private static Database database(Path place) {
    try {
      return new Database(place);
    } catch (SQLException problem) {
      throw Database.told(place, problem).orElseGet(() -> CollectionProblem.notWritable(place));
    }
  }

  private boolean isMade() {
    return database.read(
        h ->
            h.createQuery("select count(*) from sqlite_master where name = 'set_down'")
                    .mapTo(Integer.class)
                    .one()
                > 0);
  }

  private List<String> form() {
    return database.read(AsideFile::form);
  }

  /** How the tables of an animal are made. */
  static List<String> form(Handle h) {
    return TABLES.stream()
        .map(
            table ->
                h.createQuery("select sql from sqlite_master where type = 'table' and name = :name")
                    .bind("name", table)
                    .mapTo(String.class)
                    .one())
        .toList();
  }

  /** What is set down; nothing where no chunk is. */
  Optional<SetDown> setDown() {
    return database.read(
        h ->
            h.createQuery("select * from set_down order by upto desc limit 1")
                .map(
                    (row, context) ->
                        new SetDown(
                            row.getString("file_name"),
                            Instant.parse(row.getString("at")),
                            row.getLong("upto"),
                            row.getLong("of_all")))
                .findOne());
  }

  /** Whether all that is set down is equal to the beginning of the cards of a file. */
  boolean agreesWith(List<AnimalCard> cards, String file) {
    long upTo = setDown().filter(d -> d.file().equals(file)).map(SetDown::animals).orElse(0L);
    if (upTo == 0 || upTo > cards.size()) {
      return false;
    }
    return database.read(
        h -> {
          Map<String, RegisterRows.Row> known = RegisterRows.all(h);
          for (int from = 0; from < upTo; from += CHUNK) {
            List<AnimalCard> chunk = cards.subList(from, (int) Math.min(from + CHUNK, upTo));
            if (!cards(h, known, from, from + chunk.size()).equals(byNumber(chunk))) {
              return false;
            }
          }
          return true;
        });
  }

  private static Map<String, AnimalCard> byNumber(List<AnimalCard> cards) {
    Map<String, AnimalCard> byNumber = new HashMap<>();
    cards.forEach(card -> byNumber.put(card.id().value(), card));
    return byNumber;
  }

  private static Map<String, AnimalCard> cards(
      Handle h, Map<String, RegisterRows.Row> known, int from, int to) {
    return byNumber(
        ShelfRowReader.rows(h, from, to).stream()
            .map(a -> RegisterRows.card(a, Optional.ofNullable(known.get(a.id().value()))))
            .toList());
  }

  /** Sets down some more, for good. Errors: {@link CollectionProblem} if somebody else does so. */
  void add(List<AnimalCard> chunk, SetDown now) {
    database.writeUnsearched(
        h -> {
          long before =
              h.createQuery("select coalesce(max(upto), 0) from set_down").mapTo(Long.class).one();
          if (before != now.animals() - chunk.size()) {
            throw CollectionProblem.locked(place);
          }
          try (ShelfRowWriter rows = new ShelfRowWriter(h, now.file())) {
            chunk.forEach(rows::add);
          }
          prints(h, Fingerprints.ofRows(h, Kept.ANIMAL, before, now.animals()));
          return h.execute(
              "insert into set_down (upto, of_all, at, file_name) values (?, ?, ?, ?)",
              now.animals(),
              now.of(),
              now.at().toString(),
              now.file());
        });
  }

  /** Forgets all that is set down. */
  void empty() {
    database.writeUnsearched(
        h -> {
          h.execute("delete from set_down");
          h.execute("delete from print");
          for (int i = TABLES.size() - 1; i >= 0; i--) {
            h.execute("delete from " + TABLES.get(i));
          }
          return place;
        });
  }

  private static void prints(Handle h, Map<String, String> prints) {
    try (PreparedStatement insert =
        h.getConnection().prepareStatement("insert into print (id, print) values (?, ?)")) {
      for (Map.Entry<String, String> print : prints.entrySet()) {
        insert.setString(1, print.getKey());
        insert.setString(2, print.getValue());
        insert.executeUpdate();
      }
    } catch (SQLException problem) {
      throw new IllegalStateException("A row could not be written.", problem);
    }
  }

  /**
   * Moves all into the collection, whose handle has this file as {@code aside}.
   *
   * @return what the Day Book is to keep of each animal, by its number, in their order
   */
  static Map<String, String> moveIn(Handle h) {
    h.createQuery("select a.id from aside.animal a join main.animal m on m.id = a.id limit 1")
        .mapTo(String.class)
        .findOne()
        .ifPresent(
            number -> {
              throw ShelfRowWriter.onTheShelf(number);
            });
    for (String table : TABLES) {
      h.execute("insert into main." + table + " select * from aside." + table + " order by 1, 2");
    }
    Map<String, String> prints = new LinkedHashMap<>();
    h.createQuery("select id, print from aside.print order by id")
        .map((row, context) -> Map.entry(row.getString("id"), row.getString("print")))
        .forEach(print -> prints.put(print.getKey(), print.getValue()));
    return prints;
  }

  /** Takes away what was set down beside this collection and not gone on with since. */
  static void removeOlder(Path collection, Instant than) {
    var name = collection.getFileName() + ".*" + ENDING;
    var old = new HashSet<Path>();
    try (DirectoryStream<Path> asides =
        Files.newDirectoryStream(collection.resolveSibling(""), glob(name))) {
      for (Path aside : asides) {
        if (Files.getLastModifiedTime(aside).toInstant().isBefore(than)) {
          old.add(aside);
        }
      }
    } catch (IOException unreadable) {
      throw CollectionProblem.notReadable(collection);
    }
    old.forEach(AsideFile::remove);
  }

  private static String glob(String name) {
    return name.replace("[", "\\[").replace("{", "\\{").replace("?", "\\?");
  }

  static void remove(Path place) {
    try {
      for (String more : List.of("", "-wal", "-shm")) {
        Files.deleteIfExists(place.resolveSibling(place.getFileName() + more));
      }
    } catch (IOException problem) {
      throw CollectionProblem.notWritable(place);
    }
  }

  @Override
  public void close() {
    database.close();
  }
}

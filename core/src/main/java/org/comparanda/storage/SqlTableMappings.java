package org.comparanda.storage;

import java.util.List;
import java.util.Optional;
import org.comparanda.reference.TableMappings;

/** Saved mappings in the collection's file. */
record SqlTableMappings(Database database, DayBookRows dayBook) implements TableMappings {
  @Override
  public List<String> names() {
    return database.read(
        h ->
            h.createQuery("select name from table_mapping order by name")
                .mapTo(String.class)
                .list());
  }

  @Override
  public Optional<String> text(String name) {
    return database.read(
        h ->
            h.createQuery("select content from table_mapping where name = :name")
                .bind("name", name)
                .mapTo(String.class)
                .findOne());
  }

  @Override
  public void save(String name, String text) {
    database.write(
        h -> {
          h.createUpdate(
                  "insert into table_mapping (name, content) values (:name, :content)"
                      + " on conflict (name) do update set content = excluded.content")
              .bind("name", name)
              .bind("content", text)
              .execute();
          dayBook.wrote(h, Kept.MAPPING, name, "");
          return name;
        });
  }

  @Override
  public void remove(String name) {
    database.write(
        h -> {
          int removed =
              h.createUpdate("delete from table_mapping where name = :name")
                  .bind("name", name)
                  .execute();
          if (removed > 0) {
            dayBook.wrote(h, Kept.MAPPING, name, "removed");
          }
          return name;
        });
  }
}

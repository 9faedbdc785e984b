package org.comparanda.storage;

import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.People;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** Names of people in the collection's file. */
record SqlPeople(Database database, DayBookRows dayBook) implements People {
  private static final RowMapper<Person> PERSON =
      (row, context) -> new Person(new PersonId(row.getString("id")), row.getString("name"));

  @Override
  public List<Person> all() {
    return database.read(SqlPeople::all);
  }

  static List<Person> all(Handle h) {
    return h.createQuery("select id, name from person order by id").map(PERSON).list();
  }

  @Override
  public Optional<Person> person(PersonId id) {
    return database.read(
        h ->
            h.createQuery("select id, name from person where id = :id")
                .bind("id", id.value())
                .map(PERSON)
                .findOne());
  }

  @Override
  public void save(Person person) {
    database.write(
        h -> {
          h.createUpdate(
                  "insert into person (id, name) values (:id, :name)"
                      + " on conflict (id) do update set name = excluded.name")
              .bind("id", person.id().value())
              .bind("name", person.name())
              .execute();
          dayBook.wrote(
              h, Kept.PERSON, person.id().value(), person.name().isEmpty() ? "no name" : "named");
          return person;
        });
  }

  /** Makes sure that a row may name this person. */
  static void known(Handle handle, DayBookRows dayBook, PersonId id) {
    int added =
        handle
            .createUpdate(
                "insert into person (id, name) values (:id, '') on conflict (id) do nothing")
            .bind("id", id.value())
            .execute();
    if (added == 1) {
      dayBook.wrote(handle, Kept.PERSON, id.value(), "no name");
    }
  }

  /** Whether the person stands here with a name. */
  static boolean named(Handle handle, PersonId id) {
    return handle
        .createQuery("select name from person where id = :id")
        .bind("id", id.value())
        .mapTo(String.class)
        .findOne()
        .filter(name -> !name.isBlank())
        .isPresent();
  }
}

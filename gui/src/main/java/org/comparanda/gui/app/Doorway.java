package org.comparanda.gui.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CaliperCards;
import org.comparanda.gui.capture.CaliperViewModel;
import org.comparanda.gui.capture.Memory;
import org.comparanda.gui.welcome.Doors;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.statistics.Outcome;
import org.comparanda.storage.Collection;
import org.comparanda.storage.CollectionProblem;
import org.comparanda.tables.ReferenceTables;

/** The way into a collection: the one that lay open last, or the one that a person chooses. */
final class Doorway implements Doors {
  private final Path dataFolder;
  private final ReferenceTables tables;
  private final Clock clock;
  private final Memory memory;
  private Optional<Collection> opened = Optional.empty();

  Doorway(Path dataFolder, ReferenceTables tables, Clock clock, Memory memory) {
    this.dataFolder = dataFolder;
    this.tables = tables;
    this.clock = clock;
    this.memory = memory;
  }

  /** The collection that is open. */
  Optional<Collection> collection() {
    return opened;
  }

  /**
   * Opens what lay open last, where this computer remembers it and the person; not possible on a
   * first start, or where the file can't be opened now.
   */
  Outcome<CaliperCards> asBefore() {
    Optional<Path> last =
        memory
            .recall(RememberedThings.COLLECTION)
            .map(Path::of)
            .filter(file -> memory.recall(RememberedThings.PERSON).isPresent())
            .filter(Files::exists);
    return last.map(this::open).orElseGet(() -> Outcome.none("", ""));
  }

  @Override
  public Outcome<CaliperCards> demo() {
    return through(() -> DemoRoom.open(dataFolder, tables, clock));
  }

  @Override
  public Outcome<CaliperCards> create(Path file) {
    Path named =
        file.toString().endsWith(Collection.ENDING)
            ? file
            : file.resolveSibling(file.getFileName() + Collection.ENDING);
    return through(() -> Collection.create(named, clock));
  }

  @Override
  public Outcome<CaliperCards> open(Path file) {
    return through(() -> Collection.open(file, clock));
  }

  @Override
  public void takeInHand(CaliperCard card) {
    memory.remember(CaliperViewModel.REMEMBERED, card.name());
  }

  private Outcome<CaliperCards> through(Supplier<Collection> door) {
    try {
      opened.ifPresent(Collection::close);
      opened = Optional.empty();
      Collection collection = door.get();
      opened = Optional.of(collection);
      memory.remember(RememberedThings.COLLECTION, collection.file().toString());
      return Outcome.of(collection.caliperCards());
    } catch (CollectionProblem problem) {
      return Outcome.none(String.valueOf(problem.getMessage()), "");
    }
  }

  /** Remembers who sits here, and makes the person known to the collection. */
  void sits(String name) {
    opened.ifPresent(
        collection -> {
          Person person =
              collection.people().all().stream()
                  .filter(p -> p.name().equalsIgnoreCase(name))
                  .findFirst()
                  .orElseGet(() -> new Person(freeId(collection, name), name));
          collection.people().save(person);
          memory.remember(RememberedThings.PERSON, person.id().value());
        });
  }

  private static PersonId freeId(Collection collection, String name) {
    String plain =
        name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    String stem = plain.isEmpty() ? "person" : plain;
    PersonId id = new PersonId(stem);
    for (int i = 2; collection.people().person(id).isPresent(); i++) {
      id = new PersonId(stem + "-" + i);
    }
    return id;
  }

  void close() {
    opened.ifPresent(Collection::close);
  }
}

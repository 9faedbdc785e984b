package org.comparanda.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.comparanda.dossier.Dossier;
import org.comparanda.dossier.HeldBack;
import org.comparanda.dossier.Openness;
import org.comparanda.measurement.People;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which bones of which collection go out, and whether their places do. */
final class ExportedBones {
  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  @Option(names = "--lot", split = ",", paramLabel = "LOT", description = "Only these lots.")
  private List<String> lots = List.of();

  @Option(
      names = "--places-opened-by",
      paramLabel = "PERSON",
      description =
          "Let exact places out, on this person's word. The person must be named in the collection.")
  private @Nullable String opener;

  Collection open(Terminal terminal) {
    Collection opened = Collection.open(collection, terminal.clock());
    opened.caution().ifPresent(terminal::note);
    return opened;
  }

  Path file() {
    return collection;
  }

  HeldBack bones(Collection opened) {
    List<Dossier> all = Dossier.ofLots(lots, opened.trays(), opened.readings());
    if (all.isEmpty()) {
      throw new CannotDo(
          "No bone is on a tray "
              + (lots.isEmpty() ? "of this collection" : "of " + String.join(", ", lots))
              + ". Nothing was written.");
    }
    return HeldBack.of(all, openness(opened.people()));
  }

  Openness openness(People people) {
    if (opener == null) {
      return Openness.PLACES_HELD_BACK;
    }
    boolean named =
        people.person(new PersonId(opener)).filter(p -> !p.name().isBlank()).isPresent();
    if (!named) {
      throw new CannotDo(
          "\""
              + opener
              + "\" is nobody named in this collection, so exact places stay held back. Nothing was"
              + " written. Give the id of a person who may open them, or leave the option out.");
    }
    return Openness.PLACES_OPENED;
  }

  static Function<PersonId, String> names(People people) {
    return id -> name(people.person(id)).orElse(id.value());
  }

  private static Optional<String> name(Optional<Person> person) {
    return person.map(Person::name).filter(name -> !name.isBlank());
  }
}

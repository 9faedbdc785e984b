package org.comparanda.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.comparanda.dossier.Dossier;
import org.comparanda.dossier.HeldBack;
import org.comparanda.dossier.Openness;
import org.comparanda.house.Right;
import org.comparanda.house.Rights;
import org.comparanda.measurement.People;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Lot;
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
      description = "Let exact places out, on this person's word, who needs that right.")
  private @Nullable String opener;

  @Option(
      names = "--restricted-opened-by",
      paramLabel = "PERSON",
      description =
          "Let restricted bones and animals out, on this person's word, who needs that right.")
  private @Nullable String restrictedOpener;

  Collection open(Terminal terminal) {
    Collection opened = Collection.open(collection, terminal.clock());
    opened.caution().ifPresent(terminal::note);
    return opened;
  }

  Path file() {
    return collection;
  }

  /** The bones that go out. Errors: {@link CannotDo} where none is on a tray. */
  HeldBack bones(Collection opened) {
    List<Dossier> all = onTrays(opened);
    if (all.isEmpty()) {
      throw noBone();
    }
    return HeldBack.of(all, openness(opened));
  }

  /** The same, also where no bone is on a tray and no lot was named: then there are none. */
  HeldBack bonesIfAny(Collection opened) {
    List<Dossier> all = onTrays(opened);
    if (all.isEmpty() && !lots.isEmpty()) {
      throw noBone();
    }
    return HeldBack.of(all, openness(opened));
  }

  private List<Dossier> onTrays(Collection opened) {
    return Dossier.ofLots(lots, opened.trays(), opened.readings());
  }

  private CannotDo noBone() {
    return new CannotDo(
        "No bone is on a tray "
            + (lots.isEmpty() ? "of this collection" : "of " + String.join(", ", lots))
            + ". Nothing was written.");
  }

  /** What is opened, on whose word. Errors: {@link CannotDo} if the person has not the right. */
  private Openness openness(Collection opened) {
    Rights rights = opened.grants().rights();
    return new Openness(
        asked(rights, opener, Right.OPEN_PLACES, "exact places stay held back"),
        asked(rights, restrictedOpener, Right.OPEN_RESTRICTED, "restricted bones stay held back"),
        opened.lots().all().stream().collect(Collectors.toMap(Lot::id, Lot::places)));
  }

  private static Optional<PersonId> asked(
      Rights rights, @Nullable String person, Right right, String otherwise) {
    return Optional.ofNullable(person)
        .map(PersonId::new)
        .map(who -> CannotDo.orElse(rights.asked(who, right, otherwise + "; nothing was written")));
  }

  static Function<PersonId, String> names(People people) {
    return id -> name(people.person(id)).orElse(id.value());
  }

  private static Optional<String> name(Optional<Person> person) {
    return person.map(Person::name).filter(name -> !name.isBlank());
  }
}

package org.comparanda.storage;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Progress;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BoneMove;
import org.comparanda.register.BonePlace;
import org.comparanda.register.Change;
import org.comparanda.register.ChangeNote;
import org.comparanda.register.Changes;
import org.comparanda.register.Merge;
import org.comparanda.register.Register;
import org.comparanda.register.SkeletonBone;
import org.comparanda.register.Standing;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.Stop;
import org.jdbi.v3.core.Handle;

/** The register in the collection's file; each change and its Day Book entry in one transaction. */
record SqlRegister(Database database, ShelfVersions versions, DayBookRows dayBook)
    implements Register {
  private static final int ASK_EVERY = 1_000;

  @Override
  public List<AnimalCard> all() {
    return database.read(
        h -> {
          Map<String, RegisterRows.Row> known = RegisterRows.all(h);
          return ShelfRowReader.everyAnimal(h).stream()
              .map(a -> RegisterRows.card(a, Optional.ofNullable(known.get(a.id().value()))))
              .toList();
        });
  }

  @Override
  public Optional<AnimalCard> card(AnimalId id) {
    return database.read(h -> card(h, id));
  }

  static Optional<AnimalCard> card(Handle h, AnimalId id) {
    return ShelfRowReader.animal(h, id).map(a -> RegisterRows.card(a, RegisterRows.one(h, id)));
  }

  /** Adds all of them or none: see {@link org.comparanda.reference.ReferenceAnimals#add}. */
  long addAll(Iterator<AnimalCard> cards, String origin, Progress progress) {
    return database.write(h -> orNothing(h, addAll(h, cards, origin, progress)));
  }

  /** Nothing was added: nothing is stored. */
  static long orNothing(Handle h, long stored) {
    if (stored == 0) {
      h.rollback();
    }
    return stored;
  }

  long addAll(Handle h, Iterator<AnimalCard> cards, String origin, Progress progress) {
    long stored = 0;
    Set<String> added = new HashSet<>();
    try (ShelfRowWriter rows = new ShelfRowWriter(h, origin)) {
      while (cards.hasNext()) {
        if (stored % ASK_EVERY == 0 && !progress.goOn(stored)) {
          return 0;
        }
        AnimalCard card = cards.next();
        rows.add(card);
        added.add(card.id().value());
        stored++;
      }
    }
    if (stored == 0 || !progress.goOn(stored)) {
      return 0;
    }
    dayBook.wroteAll(h, Kept.ANIMAL, added, "");
    return grown(h, stored, origin);
  }

  /** Counts the shelf's version on, after its animals stand in the Day Book. */
  long grown(Handle h, long animals, String origin) {
    long version = versions.next(h, animals, origin);
    dayBook.wrote(h, Kept.SHELF, version, animals + " animals from \"" + origin + "\"");
    return animals;
  }

  @Override
  public Outcome<AnimalCard> add(AnimalCard card, ChangeNote note) {
    return database.write(
        h -> {
          Optional<AnimalCard> there = card(h, card.id());
          if (there.isPresent()) {
            return Outcome.none(
                "Catalogue number \"%s\" was given already. Nothing was stored."
                    .formatted(card.id()),
                "Give the animal a number of its own, or edit the one that is there.");
          }
          Animal bare = card.animal().withBones(List.of());
          try (ShelfRowWriter rows = new ShelfRowWriter(h, origin(note))) {
            rows.add(AnimalCard.of(bare));
          }
          List<Change> said = Changes.between(AnimalCard.blank(card.id()), card);
          record(h, AnimalCard.of(bare), card, said, note, "added");
          return Outcome.of(card);
        });
  }

  @Override
  public Outcome<List<Change>> change(AnimalCard before, AnimalCard after, ChangeNote note) {
    return database.write(
        h ->
            same(h, before)
                .then(
                    now ->
                        after.animal().bones().equals(now.animal().bones())
                            ? Outcome.of(now)
                            : Aside.open(now))
                .then(
                    now ->
                        Outcome.of(
                            now.equals(after)
                                ? List.<Change>of()
                                : record(h, now, after, note, "changed"))));
  }

  @Override
  public Outcome<List<Change>> move(AnimalCard seen, BoneMove move, ChangeNote note) {
    return database.write(
        h -> {
          List<SkeletonBone> measured =
              SqlSkeletons.of(h, seen.id()).stream()
                  .filter(bone -> !move.after(bone.place()).equals(bone.place()))
                  .toList();
          boolean there =
              measured.stream().anyMatch(bone -> bone.place().equals(move.from()))
                  || !move.apply(seen).equals(seen);
          return same(h, seen)
              .then(Aside::open)
              .then(
                  now ->
                      there
                          ? Outcome.of(moved(h, now, measured, move, note))
                          : Outcome.none(
                              seen.id() + " has no " + move.from().words() + ". Nothing was moved.",
                              "Look at the bones on its card."));
        });
  }

  private List<Change> moved(
      Handle h, AnimalCard now, List<SkeletonBone> measured, BoneMove move, ChangeNote note) {
    SqlPeople.known(h, dayBook, note.who());
    for (SkeletonBone bone : measured) {
      BonePlace to = move.after(bone.place());
      String words = new Change("bone", bone.place().words(), to.words()).line();
      SqlSkeletons.save(h, dayBook.by(note.who()), bone.at(to), words + "; why: " + note.why());
    }
    AnimalCard after = move.apply(now);
    return after.equals(now) ? List.of() : record(h, now, after, note, "moved a bone of");
  }

  /** What stands there now, if it is what was looked at. */
  private static Outcome<AnimalCard> same(Handle h, AnimalCard seen) {
    Optional<AnimalCard> now = card(h, seen.id());
    if (now.isEmpty()) {
      return missing(seen.id());
    }
    Optional<AnimalId> into = now.get().standing().mergedInto();
    if (into.isPresent()) {
      return Outcome.none(
          seen.id() + " is merged into " + into.get() + ". Nothing was stored.",
          "Change " + into.get() + "; this record stays as it was.");
    }
    return now.get().equals(seen)
        ? Outcome.of(seen)
        : Outcome.none(
            seen.id() + " was changed meanwhile by somebody else. Nothing was stored.",
            "Open it again and look at what it says now.");
  }

  private static <T> Outcome<T> missing(AnimalId id) {
    return Outcome.none(
        "There is no animal \"" + id + "\". Nothing was stored.", "Check the catalogue number.");
  }

  @Override
  public Outcome<Merge> merge(AnimalId kept, AnimalId other, ChangeNote note) {
    return database.write(
        h ->
            skeleton(h, kept)
                .then(
                    first ->
                        skeleton(h, other)
                            .then(
                                second -> {
                                  Outcome<Merge> merge = Merge.of(first, second);
                                  merge
                                      .value()
                                      .ifPresent(
                                          m -> merge(h, m, first.card(), second.card(), note));
                                  return merge;
                                })));
  }

  @Override
  public Outcome<Merge> wouldMerge(AnimalId kept, AnimalId other) {
    return database.read(
        h ->
            skeleton(h, kept)
                .then(first -> skeleton(h, other).then(second -> Merge.of(first, second))));
  }

  private static Outcome<Merge.Skeleton> skeleton(Handle h, AnimalId id) {
    return card(h, id)
        .map(card -> Outcome.of(new Merge.Skeleton(card, SqlSkeletons.of(h, id))))
        .orElseGet(() -> missing(id));
  }

  private void merge(Handle h, Merge merge, AnimalCard kept, AnimalCard other, ChangeNote note) {
    AnimalCard gone = other.withStanding(new Standing.MergedInto(kept.id()));
    record(h, other, gone, note, "merged");
    record(h, kept, merge.result(), note, "took in " + other.id());
    String moved =
        new Change("animal", other.id().value(), kept.id().value()).line() + "; " + note.why();
    merge.measured().forEach(bone -> SqlSkeletons.save(h, dayBook.by(note.who()), bone, moved));
    List<String> bones =
        h.createQuery("select id from tray_bone where animal_id = :other order by id")
            .bind("other", other.id().value())
            .mapTo(String.class)
            .list();
    h.createUpdate("update tray_bone set animal_id = :kept where animal_id = :other")
        .bind("kept", kept.id().value())
        .bind("other", other.id().value())
        .execute();
    bones.forEach(bone -> dayBook.by(note.who()).wrote(h, Kept.BONE, bone, moved));
  }

  @Override
  public Outcome<AnimalCard> retire(AnimalId id, ChangeNote note) {
    return stand(id, new Standing.Retired(), note);
  }

  @Override
  public Outcome<AnimalCard> bringBack(AnimalId id, ChangeNote note) {
    return stand(id, new Standing.Kept(), note);
  }

  private Outcome<AnimalCard> stand(AnimalId id, Standing standing, ChangeNote note) {
    return database.write(
        h -> {
          Optional<AnimalCard> now = card(h, id);
          if (now.isEmpty()) {
            return missing(id);
          }
          if (now.get().standing().setAside()) {
            return Aside.open(now.get());
          }
          if (now.get().standing().mergedInto().isPresent()
              || now.get().standing().equals(standing)) {
            return Outcome.none(
                id + " is " + Changes.words(now.get().standing()) + ". Nothing was changed.",
                "Look at its card.");
          }
          AnimalCard after = now.get().withStanding(standing);
          record(h, now.get(), after, note, "changed");
          return Outcome.of(after);
        });
  }

  /** Sets an animal aside as possibly human, or lets it stand as before. */
  void setAside(Handle h, AnimalId id, Stop.Kind kind, ChangeNote note) {
    AnimalCard now = card(h, id).orElseThrow();
    AnimalCard after = Aside.after(now, kind);
    if (!after.equals(now)) {
      record(h, now, after, note, kind == Stop.Kind.SET_ASIDE ? "set aside" : "opened again");
    }
  }

  @Override
  public List<DayBookEntry> history(AnimalId id) {
    return database.read(h -> DayBookRows.about(h, Kept.ANIMAL.subject(id)));
  }

  private List<Change> record(
      Handle h, AnimalCard before, AnimalCard after, ChangeNote note, String verb) {
    return record(h, before, after, Changes.between(before, after), note, verb);
  }

  /** Writes the card, with what is to be said of it. */
  private List<Change> record(
      Handle h,
      AnimalCard before,
      AnimalCard after,
      List<Change> changes,
      ChangeNote note,
      String verb) {
    SqlPeople.known(h, dayBook, note.who());
    RegisterRows.write(h, after);
    new ShelfRowEdit(h, origin(note)).edit(before.animal(), after.animal());
    String what = verb + " " + after.id();
    List<String> words = new ArrayList<>(List.of(verb));
    changes.forEach(change -> words.add(change.line()));
    words.add("why: " + note.why());
    dayBook.by(note.who()).wrote(h, Kept.ANIMAL, after.id().value(), String.join("; ", words));
    dayBook.by(note.who()).wrote(h, Kept.SHELF, versions.next(h, 1, what), what);
    return changes;
  }

  private static String origin(ChangeNote note) {
    return "register, by " + note.who().value() + ": " + note.why();
  }
}

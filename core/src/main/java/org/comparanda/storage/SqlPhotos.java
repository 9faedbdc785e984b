package org.comparanda.storage;

import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.photo.Photo;
import org.comparanda.photo.PhotoSubject;
import org.comparanda.photo.Photos;
import org.comparanda.photo.Picture;
import org.comparanda.photo.PictureForm;
import org.comparanda.reference.AnimalId;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.TrayBone;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Pictures: rows in the collection's file, the pictures themselves in the folder beside it. */
record SqlPhotos(Database database, DayBookRows dayBook, Clock clock, PhotoFolder folder)
    implements Photos {
  private static final String BONE = "BONE";
  private static final String ANIMAL = "ANIMAL";

  @Override
  public List<Photo> all() {
    return database.read(
        h -> h.createQuery("select * from photo order by id").map(SqlPhotos::photo).list());
  }

  @Override
  public List<Photo> of(PhotoSubject subject) {
    return database.read(h -> of(h, subject));
  }

  private static List<Photo> of(Handle h, PhotoSubject subject) {
    return h.createQuery(
            "select * from photo where subject_kind = :kind and subject_id = :id order by id")
        .bind("kind", kind(subject))
        .bind("id", id(subject))
        .map(SqlPhotos::photo)
        .list();
  }

  @Override
  public Outcome<Photo> attach(
      PhotoSubject subject, String name, byte[] bytes, Optional<PersonId> person) {
    return Picture.read(bytes).then(picture -> attach(subject, name, picture, person));
  }

  private Outcome<Photo> attach(
      PhotoSubject subject, String name, Picture picture, Optional<PersonId> person) {
    Optional<String> refused = database.read(h -> refusal(h, subject));
    if (refused.isPresent()) {
      return Outcome.none(refused.get(), "Nothing was stored.");
    }
    String hash = picture.hash();
    folder.store(
        hash, picture.form(), picture.bytes()); // the file first: a row never points at nothing
    return Outcome.of(database.write(h -> row(h, subject, name, picture, hash, person)));
  }

  private Photo row(
      Handle h,
      PhotoSubject subject,
      String name,
      Picture picture,
      String hash,
      Optional<PersonId> person) {
    Optional<Photo> same =
        of(h, subject).stream().filter(photo -> photo.hash().equals(hash)).findFirst();
    if (same.isPresent()) {
      return same.get();
    }
    long id = h.createQuery("select coalesce(max(id), 0) + 1 from photo").mapTo(Long.class).one();
    h.createUpdate(
            "insert into photo (id, subject_kind, subject_id, hash, form, width, height, name,"
                + " person_id, at) values (:id, :kind, :subject, :hash, :form, :width, :height,"
                + " :name, :person, :at)")
        .bind("id", id)
        .bind("kind", kind(subject))
        .bind("subject", id(subject))
        .bind("hash", hash)
        .bind("form", picture.form().name())
        .bind("width", picture.width())
        .bind("height", picture.height())
        .bind("name", name)
        .bind("person", person.map(PersonId::value))
        .bind("at", clock.instant().toString())
        .execute();
    dayBook.wrote(h, Kept.PHOTO, id, "picture of " + id(subject));
    return h.createQuery("select * from photo where id = :id")
        .bind("id", id)
        .map(SqlPhotos::photo)
        .one();
  }

  /** Why this subject takes no picture. */
  private static Optional<String> refusal(Handle h, PhotoSubject subject) {
    if (subject instanceof PhotoSubject.OfAnimal animal) {
      return SqlRegister.card(h, animal.animal())
          .map(
              card ->
                  card.standing().setAside()
                      ? Optional.of(mayBeHuman(subject))
                      : Optional.<String>empty())
          .orElseGet(() -> Optional.of("There is no animal \"" + animal.animal() + "\"."));
    }
    Optional<String> standing =
        h.createQuery("select standing from tray_bone where id = :id")
            .bind("id", id(subject))
            .mapTo(String.class)
            .findOne();
    if (standing.isEmpty()) {
      return Optional.of("There is no bone \"" + id(subject) + "\" on a tray.");
    }
    return standing.get().equals(TrayBone.Standing.STOPPED.name())
        ? Optional.of(mayBeHuman(subject))
        : Optional.empty();
  }

  private static String mayBeHuman(PhotoSubject subject) {
    return "\"" + id(subject) + "\" may be human: it is not photographed.";
  }

  @Override
  public Path file(Photo photo) {
    return folder.place(photo.hash(), photo.form());
  }

  @Override
  public Path thumbnail(Photo photo) {
    return folder.thumbnail(photo.hash());
  }

  private static String kind(PhotoSubject subject) {
    return subject instanceof PhotoSubject.OfBone ? BONE : ANIMAL;
  }

  private static String id(PhotoSubject subject) {
    if (subject instanceof PhotoSubject.OfBone bone) {
      return bone.bone().value();
    }
    return ((PhotoSubject.OfAnimal) subject).animal().value();
  }

  private static Photo photo(ResultSet row, StatementContext context) throws SQLException {
    String subject = row.getString("subject_id");
    return new Photo(
        row.getLong("id"),
        row.getString("subject_kind").equals(BONE)
            ? PhotoSubject.of(new BoneId(subject))
            : PhotoSubject.of(new AnimalId(subject)),
        row.getString("hash"),
        PictureForm.valueOf(row.getString("form")),
        row.getInt("width"),
        row.getInt("height"),
        row.getString("name"),
        Optional.ofNullable(row.getString("person_id")).map(PersonId::new),
        Instant.parse(row.getString("at")));
  }
}

package org.comparanda.gui.photos;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.PersonId;
import org.comparanda.photo.Photo;
import org.comparanda.photo.PhotoSubject;
import org.comparanda.photo.Photos;
import org.comparanda.photo.Picture;
import org.comparanda.statistics.Outcome;

/** The pictures of one bone or animal. */
public final class PhotosViewModel {
  private final Photos photos;
  private final Thumbnails thumbnails;
  private final Executor work;
  private final Executor ui;
  private final Words words;
  private final ObservableList<Shown> shown = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<PhotoSubject>> subject =
      new SimpleObjectProperty<>(Optional.empty());
  private final StringProperty message = new SimpleStringProperty("");
  private Optional<PersonId> person = Optional.empty();

  /** A picture with its small copy; without one where its file is gone. */
  public record Shown(Photo photo, Optional<Path> small) {}

  /**
   * @param work runs what reads and writes files
   * @param ui runs what touches properties
   */
  public PhotosViewModel(Photos photos, Executor work, Executor ui, Words words) {
    this.photos = photos;
    thumbnails = new Thumbnails(photos);
    this.work = work;
    this.ui = ui;
    this.words = words;
  }

  /** In the order they were attached. */
  public ObservableList<Shown> shown() {
    return shown;
  }

  /** What is being looked at; pictures can be added only then. */
  public ObjectProperty<Optional<PhotoSubject>> subjectProperty() {
    return subject;
  }

  /** What became of the last picture; mostly empty. */
  public StringProperty messageProperty() {
    return message;
  }

  /** Shows the pictures of another bone or animal, or none. */
  public void show(Optional<PhotoSubject> next, Optional<PersonId> who) {
    subject.set(next);
    person = who;
    message.set("");
    shown.clear();
    next.ifPresent(
        of ->
            work.execute(
                () -> {
                  List<Shown> read = read(of);
                  ui.execute(() -> take(of, read));
                }));
  }

  private List<Shown> read(PhotoSubject of) {
    return photos.of(of).stream().map(p -> new Shown(p, thumbnails.of(p))).toList();
  }

  private void take(PhotoSubject of, List<Shown> read) {
    if (subject.get().equals(Optional.of(of))) {
      shown.setAll(read);
    }
  }

  /** Attaches files; each is stored or refused for itself. */
  public void add(List<Path> files) {
    files.forEach(file -> add(String.valueOf(file.getFileName()), () -> bytes(file)));
  }

  /** Attaches a picture that was pasted. */
  public void add(String name, byte[] bytes) {
    byte[] own = bytes.clone();
    add(name, () -> own);
  }

  /** Where bytes come from. */
  private interface Source {
    byte[] bytes();
  }

  private void add(String name, Source source) {
    subject
        .get()
        .ifPresent(
            of ->
                work.execute(
                    () -> {
                      Outcome<Photo> outcome = photos.attach(of, name, source.bytes(), person);
                      List<Shown> read = read(of);
                      ui.execute(() -> arrived(of, read, name, outcome));
                    }));
  }

  private void arrived(PhotoSubject of, List<Shown> read, String name, Outcome<Photo> outcome) {
    take(of, read);
    message.set(
        outcome.fold(
            photo -> words.get("photo.stored", name),
            none ->
                words.get("photo.refused", name, words.said(none.reason() + " " + none.remedy()))));
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.size(file) > Picture.MOST_BYTES ? new byte[0] : Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

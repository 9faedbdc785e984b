package org.comparanda.gui.shelf.keeping;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.layout.VBox;
import org.comparanda.gui.photos.PhotoStrip;
import org.comparanda.gui.photos.PhotosViewModel;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.PersonId;
import org.comparanda.photo.PhotoSubject;
import org.comparanda.register.AnimalCard;

/** The pictures of the animal whose card is open; by file, dropped or pasted. */
final class PhotosCard extends VBox {
  private final CardViewModel model;
  private final PhotosViewModel photos;

  PhotosCard(CardViewModel model, PhotosViewModel photos, Supplier<List<Path>> choose) {
    this.model = model;
    this.photos = photos;
    getStyleClass().addAll("card", "animal-photos");
    getChildren()
        .addAll(
            Written.label(model.room().words().get("photos"), "strong"),
            new PhotoStrip(photos, Words.of("photos", model.room().locale()), choose));
    managedProperty().bind(visibleProperty());
    model.cardProperty().addListener((o, was, is) -> show(is));
    model.signature().whoProperty().addListener((o, was, is) -> show(model.cardProperty().get()));
    show(model.cardProperty().get());
  }

  private void show(Optional<AnimalCard> card) {
    setVisible(card.isPresent());
    photos.show(
        card.map(c -> PhotoSubject.of(c.id())),
        Optional.of(model.signature().whoProperty().get().strip())
            .filter(who -> !who.isEmpty())
            .map(PersonId::new));
  }
}

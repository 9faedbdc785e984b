package org.comparanda.gui.photos;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/**
 * The system's own dialog for pictures.
 *
 * @param owner the window that it lies over
 */
public record PictureDialog(Supplier<Window> owner) implements Supplier<List<Path>> {
  @Override
  public List<Path> get() {
    FileChooser chooser = new FileChooser();
    chooser
        .getExtensionFilters()
        .setAll(
            new FileChooser.ExtensionFilter("JPEG, PNG", "*.jpg", "*.jpeg", "*.png", "*.JPG"),
            new FileChooser.ExtensionFilter("*", "*"));
    return Optional.ofNullable(chooser.showOpenMultipleDialog(owner.get())).stream()
        .flatMap(List::stream)
        .map(File::toPath)
        .toList();
  }
}

package org.comparanda.gui.app;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** The system's own dialog for which table is to be read. */
final class OpenDialog implements Supplier<Optional<Path>> {
  @Override
  public Optional<Path> get() {
    FileChooser chooser = new FileChooser();
    chooser
        .getExtensionFilters()
        .setAll(
            new FileChooser.ExtensionFilter("CSV", "*.csv", "*.tsv", "*.txt"),
            new FileChooser.ExtensionFilter("*", "*"));
    Optional<Window> window = Window.getWindows().stream().filter(Window::isFocused).findFirst();
    File chosen = chooser.showOpenDialog(window.orElse(null));
    return Optional.ofNullable(chosen).map(File::toPath);
  }
}

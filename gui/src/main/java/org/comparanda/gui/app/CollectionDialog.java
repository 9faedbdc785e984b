package org.comparanda.gui.app;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.comparanda.storage.Collection;

/** The system's own dialogs for the file of a collection. */
record CollectionDialog(Kind kind, String newName) implements Supplier<Optional<Path>> {
  /** Whether the file is there yet. */
  enum Kind {
    NEW,
    THERE
  }

  @Override
  public Optional<Path> get() {
    FileChooser chooser = new FileChooser();
    chooser
        .getExtensionFilters()
        .setAll(new FileChooser.ExtensionFilter("Comparanda", "*" + Collection.ENDING));
    Window window = Window.getWindows().stream().filter(Window::isFocused).findFirst().orElse(null);
    File chosen;
    if (kind == Kind.NEW) {
      chooser.setInitialFileName(newName + Collection.ENDING);
      chosen = chooser.showSaveDialog(window);
    } else {
      chosen = chooser.showOpenDialog(window);
    }
    return Optional.ofNullable(chosen).map(File::toPath);
  }
}

package org.comparanda.gui.app;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.comparanda.gui.control.FilePlace;

/** The system's own dialog for where a file goes. */
final class SaveDialog implements FilePlace {
  @Override
  public Optional<Path> choose(String name) {
    FileChooser chooser = new FileChooser();
    chooser.setInitialFileName(name);
    Optional<Window> window = Window.getWindows().stream().filter(Window::isFocused).findFirst();
    File chosen = chooser.showSaveDialog(window.orElse(null));
    return Optional.ofNullable(chosen).map(File::toPath);
  }
}

package org.comparanda.gui.app;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** The system's own dialog for which file is to be read. */
final class OpenDialog implements Supplier<Optional<Path>> {
  private final FileChooser.ExtensionFilter wanted;

  /** For files of a kind, by their endings. */
  OpenDialog(String kind, String... endings) {
    wanted = new FileChooser.ExtensionFilter(kind, endings);
  }

  static OpenDialog ofTables() {
    return new OpenDialog("CSV, XLSX", "*.csv", "*.xlsx", "*.tsv", "*.txt");
  }

  @Override
  public Optional<Path> get() {
    FileChooser chooser = new FileChooser();
    chooser.getExtensionFilters().setAll(wanted, new FileChooser.ExtensionFilter("*", "*"));
    Optional<Window> window = Window.getWindows().stream().filter(Window::isFocused).findFirst();
    File chosen = chooser.showOpenDialog(window.orElse(null));
    return Optional.ofNullable(chosen).map(File::toPath);
  }
}

package org.comparanda.gui.app;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Properties;
import org.comparanda.slips.Paper;

/**
 * Keeps the look of the window in a small file of the data folder, {@code look.properties}, so that
 * it comes back at the next start. What the file says wrongly or not at all stays as it is.
 */
final class RememberedLook {
  private static final String FILE = "look.properties";
  private static final String THEME = "theme";
  private static final String TEXT = "text";
  private static final String MOTION = "motion";
  private static final String PAPER = "paper";

  private final Path folder;
  private final Path file;

  RememberedLook(Path folder) {
    this.folder = folder;
    file = folder.resolve(FILE);
  }

  /**
   * Gives a look what was remembered, and remembers it from now on.
   *
   * <p>Errors: {@link UncheckedIOException} if the file can't be read or written.
   */
  void follow(Look look) {
    restore(look);
    look.themeProperty().addListener((o, was, is) -> write(look));
    look.textPercentProperty().addListener((o, was, is) -> write(look));
    look.motionProperty().addListener((o, was, is) -> write(look));
    look.paperProperty().addListener((o, was, is) -> write(look));
  }

  private void restore(Look look) {
    Properties kept = read();
    Arrays.stream(Theme.values())
        .filter(theme -> theme.name().equals(kept.getProperty(THEME, "")))
        .forEach(look.themeProperty()::set);
    String percent = kept.getProperty(TEXT, "");
    if (percent.matches("1[0-9][0-9]|200")) {
      look.textPercentProperty().set(Integer.parseInt(percent));
    }
    if (kept.getProperty(MOTION, "").equals("false")) {
      look.motionProperty().set(false);
    }
    Arrays.stream(Paper.values())
        .filter(paper -> paper.name().equals(kept.getProperty(PAPER, "")))
        .forEach(look.paperProperty()::set);
  }

  private Properties read() {
    Properties kept = new Properties();
    if (Files.exists(file)) {
      try (Reader reader = Files.newBufferedReader(file)) {
        kept.load(reader);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return kept;
  }

  private void write(Look look) {
    Properties now = new Properties();
    now.setProperty(THEME, look.themeProperty().get().name());
    now.setProperty(TEXT, Integer.toString(look.textPercentProperty().get()));
    now.setProperty(MOTION, Boolean.toString(look.motionProperty().get()));
    now.setProperty(PAPER, look.paperProperty().get().name());
    try {
      Files.createDirectories(folder);
      try (Writer writer = Files.newBufferedWriter(file)) {
        now.store(writer, "How the window looks");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

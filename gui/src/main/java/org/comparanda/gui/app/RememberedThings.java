package org.comparanda.gui.app;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import org.comparanda.gui.capture.Memory;

/**
 * Small things kept in {@code remembered.properties} of the data folder: who sat here last, which
 * collection lay open, which caliper, which hints were read. Errors: {@link UncheckedIOException}
 * if the file can't be read or written.
 */
final class RememberedThings implements Memory {
  static final String PERSON = "person";
  static final String COLLECTION = "collection";

  private final Path file;

  RememberedThings(Path folder) {
    file = folder.resolve("remembered.properties");
  }

  @Override
  public Optional<String> recall(String key) {
    return Optional.ofNullable(read().getProperty(key)).filter(value -> !value.isBlank());
  }

  @Override
  public void remember(String key, String value) {
    Properties kept = read();
    kept.setProperty(key, value);
    try {
      Files.createDirectories(file.toAbsolutePath().resolveSibling(""));
      try (Writer writer = Files.newBufferedWriter(file)) {
        kept.store(writer, "What this computer remembers");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
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
}

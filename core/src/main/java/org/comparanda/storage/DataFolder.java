package org.comparanda.storage;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where the person's data lie: {@code $XDG_DATA_HOME/comparanda} (or {@code
 * ~/.local/share/comparanda}) on Linux, {@code %APPDATA%\Comparanda} on Windows, {@code
 * ~/Library/Application Support/Comparanda} on a Mac. The system property {@code comparanda.data}
 * overrides all.
 */
public final class DataFolder {
  public static final String PROPERTY = "comparanda.data";

  private DataFolder() {}

  /** The folder for these system properties and environment. It need not exist. */
  public static Path of(Map<String, String> properties, Map<String, String> environment) {
    Path home = Path.of(properties.getOrDefault("user.home", "."));
    String system = properties.getOrDefault("os.name", "").toLowerCase(Locale.ROOT);
    return Optional.ofNullable(properties.get(PROPERTY))
        .map(Path::of)
        .orElseGet(() -> ofSystem(system, home, environment));
  }

  private static Path ofSystem(String system, Path home, Map<String, String> environment) {
    if (system.startsWith("windows")) {
      return set(environment, "APPDATA")
          .map(Path::of)
          .orElse(home.resolve("AppData").resolve("Roaming"))
          .resolve("Comparanda");
    }
    if (system.startsWith("mac")) {
      return home.resolve("Library").resolve("Application Support").resolve("Comparanda");
    }
    return set(environment, "XDG_DATA_HOME")
        .map(Path::of)
        .filter(Path::isAbsolute)
        .orElse(home.resolve(".local").resolve("share"))
        .resolve("comparanda");
  }

  private static Optional<String> set(Map<String, String> environment, String name) {
    return Optional.ofNullable(environment.get(name)).filter(value -> !value.isBlank());
  }
}

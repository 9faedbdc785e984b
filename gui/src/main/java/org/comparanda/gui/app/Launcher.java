package org.comparanda.gui.app;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.application.Application;
import org.comparanda.gui.text.Words;

/**
 * Main class of the desktop program. Not an Application itself, so that it may be started plainly.
 */
public final class Launcher {
  private Launcher() {}

  /** Opens the window, or says in one line that there is no display. */
  public static void main(String[] args) {
    if (Display.present(systemProperties(), System.getenv())) {
      Application.launch(Desktop.class, args);
    } else {
      System.err.println(Words.of("app", Locale.getDefault()).get("display.none"));
    }
  }

  static Map<String, String> systemProperties() {
    return System.getProperties().stringPropertyNames().stream()
        .collect(Collectors.toMap(name -> name, name -> System.getProperty(name, "")));
  }
}

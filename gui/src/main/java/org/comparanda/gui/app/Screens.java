package org.comparanda.gui.app;

import java.util.List;
import org.comparanda.gui.bench.BenchView;
import org.comparanda.gui.text.Words;

/** The screens of the rail, in its order. A new screen is one line here. */
public final class Screens {
  private Screens() {}

  /** All screens that exist. */
  public static List<Screen> of(Workplace place) {
    return List.of(new Screen("bench", () -> new BenchView(Words.of("bench", place.locale()))));
  }
}

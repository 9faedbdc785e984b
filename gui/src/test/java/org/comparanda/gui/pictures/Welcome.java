package org.comparanda.gui.pictures;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Scene;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CaliperCards;
import org.comparanda.gui.text.Words;
import org.comparanda.gui.welcome.Doors;
import org.comparanda.gui.welcome.WelcomeView;
import org.comparanda.gui.welcome.WelcomeViewModel;
import org.comparanda.statistics.Outcome;
import org.comparanda.storage.Collection;

/** The first start, whose every door leads into the demo collection. */
final class Welcome {
  private Welcome() {}

  static Scene scene(Collection collection, Locale language, int width, int height) {
    Words words = Words.of("welcome", language);
    Words caliper = Words.of("caliper", language);
    WelcomeViewModel model =
        new WelcomeViewModel(
            new Into(collection), DemoCollection.CLOCK, words, caliper, name -> {});
    WelcomeView view =
        new WelcomeView(model, words, caliper, () -> 0L, Optional::empty, Optional::empty);
    return new Scene(view, width, height);
  }

  private record Into(Collection collection) implements Doors {
    @Override
    public Outcome<CaliperCards> demo() {
      return Outcome.of(collection.caliperCards());
    }

    @Override
    public Outcome<CaliperCards> create(Path file) {
      return demo();
    }

    @Override
    public Outcome<CaliperCards> open(Path file) {
      return demo();
    }

    @Override
    public void takeInHand(CaliperCard card) {
      throw new IllegalStateException("A picture of the lesson stores no card.");
    }
  }
}

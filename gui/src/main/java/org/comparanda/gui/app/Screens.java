package org.comparanda.gui.app;

import java.util.List;
import java.util.Optional;
import org.comparanda.gui.bench.BenchPlace;
import org.comparanda.gui.bench.BenchView;
import org.comparanda.gui.bench.BenchViewModel;
import org.comparanda.gui.shelf.ShelfRoom;
import org.comparanda.gui.shelf.ShelfView;
import org.comparanda.gui.shelf.ShelfViewModel;
import org.comparanda.gui.sizedesk.Room;
import org.comparanda.gui.sizedesk.SizeDeskView;
import org.comparanda.gui.sizedesk.SizeDeskViewModel;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.SizeDesk;

/** The screens of the rail, in its order. A new screen is one line here. */
public final class Screens {
  private Screens() {}

  /** All screens that exist. */
  public static List<Screen> of(Workplace place) {
    Words shelfWords = Words.of("shelf", place.locale());
    ShelfViewModel shelf =
        new ShelfViewModel(
            new ShelfRoom(
                place.collection().animals(),
                place.tables().protocol(),
                place.tables().taxa(),
                shelfWords,
                place.locale()),
            place.work(),
            place.ui());
    return List.of(
        new Screen("bench", () -> bench(place)),
        new Screen("shelf", () -> new ShelfView(shelf, shelfWords, note(place), new OpenDialog())),
        new Screen("sizedesk", () -> sizeDesk(place, shelf)));
  }

  private static String note(Workplace place) {
    return Words.of("app", place.locale()).get("demo.note");
  }

  private static SizeDeskView sizeDesk(Workplace place, ShelfViewModel shelf) {
    Words words = Words.of("sizedesk", place.locale());
    Room room =
        new Room(
            () -> place.collection().animals().shelf(),
            place.tables().protocol(),
            place.tables().taxa(),
            words,
            place.locale(),
            words.get("demo.sentence"),
            version());
    SizeDeskViewModel model = new SizeDeskViewModel(room, place.work(), place.ui());
    SizeDeskView view = new SizeDeskView(model, words, note(place), new SaveDialog());
    view.setOnAnimal(
        animal -> {
          shelf.open(animal);
          if (view.getScene().getRoot() instanceof AppFrame frame) {
            frame.open("shelf");
          }
        });
    return view;
  }

  /** As the jar says it; a program run from loose classes has none. */
  private static String version() {
    return Optional.ofNullable(SizeDesk.class.getPackage().getImplementationVersion())
        .orElse("(unreleased)");
  }

  private static BenchView bench(Workplace place) {
    Words words = Words.of("bench", place.locale());
    Numbers numbers = new Numbers(place.locale());
    BenchPlace bench =
        new BenchPlace(
            place.work(),
            place.ui(),
            place.clock(),
            words,
            numbers,
            place.tables().protocol(),
            place.tables().outlines(),
            place.tables().taxa(),
            place.collection().animals(),
            place.collection().trays(),
            place.collection().readings(),
            place.collection().people());
    BenchView view = new BenchView(new BenchViewModel(bench), words, numbers, System::nanoTime);
    view.fallingLine().motionProperty().bind(place.look().motionProperty());
    return view;
  }
}

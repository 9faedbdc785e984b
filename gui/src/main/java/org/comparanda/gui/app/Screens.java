package org.comparanda.gui.app;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import org.comparanda.capture.LaggingDrafts;
import org.comparanda.gui.bench.BenchPlace;
import org.comparanda.gui.bench.BenchView;
import org.comparanda.gui.bench.BenchViewModel;
import org.comparanda.gui.bench.Books;
import org.comparanda.gui.daybook.DayBookRoom;
import org.comparanda.gui.daybook.DayBookView;
import org.comparanda.gui.daybook.DayBookViewModel;
import org.comparanda.gui.oldcards.CardsRoom;
import org.comparanda.gui.oldcards.OldCardsView;
import org.comparanda.gui.oldcards.OldCardsViewModel;
import org.comparanda.gui.pile.PileRoom;
import org.comparanda.gui.pile.PileView;
import org.comparanda.gui.pile.PileViewModel;
import org.comparanda.gui.shelf.ShelfRoom;
import org.comparanda.gui.shelf.ShelfViewModel;
import org.comparanda.gui.sizedesk.FileDialogs;
import org.comparanda.gui.sizedesk.Room;
import org.comparanda.gui.sizedesk.SizeDeskView;
import org.comparanda.gui.sizedesk.SizeDeskViewModel;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.oldcards.CardParser;
import org.comparanda.reference.AnimalId;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.tables.CardWordTable;

/** The screens of the rail, in its order. A new screen is one line here. */
public final class Screens {
  /** Half-typed text may lag 200 ms behind; the disk needs some of that. */
  static final long DRAFT_LAG_MS = 120;

  private Screens() {}

  /** All screens that exist. */
  public static List<Screen> of(Workplace place) {
    Words shelfWords = Words.of("shelf", place.locale());
    ShelfViewModel shelf =
        new ShelfViewModel(
            new ShelfRoom(
                place.collection().animals(),
                new TableDesk(place),
                () -> place.collection().register().all(),
                place.tables().protocol(),
                place.taxa(),
                shelfWords,
                place.locale()),
            place.work(),
            place.ui());
    OldCardsViewModel cards = oldCards(place);
    PileViewModel pile = pile(place);
    Found found = new Found(shelf, cards, pile);
    return List.of(
        new Screen("bench", () -> bench(place, shelf)),
        new Screen("tray", () -> found.from(new TrayScreen(place).view(note(place)))),
        new Screen("secondlook", () -> new SecondLookScreen(place).view(note(place))),
        new Screen("shelf", () -> Keeping.shelf(place, shelf, shelfWords, note(place))),
        new Screen("sizedesk", () -> sizeDesk(place, shelf)),
        new Screen("oldcards", () -> view(cards, place)),
        new Screen("pile", () -> view(pile, place)),
        new Screen("daybook", () -> dayBook(place)),
        new Screen("houserules", () -> new HouseRulesScreen(place).view(note(place))));
  }

  private static OldCardsViewModel oldCards(Workplace place) {
    Words words = Words.of("oldcards", place.locale());
    CardsRoom room =
        new CardsRoom(
            place.collection().oldCards(),
            place.collection().trays(),
            place
                .taxa()
                .following(tree -> new CardParser(CardWordTable.shipped(place.inEnglish(), tree))),
            place.tables().protocol(),
            words,
            place.clock());
    return new OldCardsViewModel(room, place.work(), place.ui());
  }

  private static OldCardsView view(OldCardsViewModel model, Workplace place) {
    return new OldCardsView(
        model,
        Words.of("oldcards", place.locale()),
        note(place),
        new OpenDialog("TXT", "*.txt", "*.csv"));
  }

  private static DayBookView dayBook(Workplace place) {
    DayBookRoom room =
        new DayBookRoom(
            place.collection().dayBookPages(),
            place.collection()::dayBookHead,
            place.collection()::verifyDayBook,
            place.collection().people(),
            Words.of("daybook", place.locale()),
            place.locale(),
            place.clock());
    return new DayBookView(new DayBookViewModel(room, place.work(), place.ui()), note(place));
  }

  private static PileViewModel pile(Workplace place) {
    Words words = Words.of("pile", place.locale());
    PileRoom room =
        new PileRoom(
            place.collection().pile(),
            () -> place.collection().animals().shelf(),
            place.taxa(),
            new PilePrint(place),
            words,
            place.locale(),
            place.clock());
    return new PileViewModel(room, place.work(), place.ui());
  }

  private static PileView view(PileViewModel model, Workplace place) {
    return new PileView(
        model,
        Words.of("pile", place.locale()),
        place.locale(),
        note(place),
        new SaveDialog(),
        place.look().paperProperty());
  }

  private static String note(Workplace place) {
    return Simulated.of(place.collection()) == Simulated.SIMULATED
        ? Words.of("app", place.locale()).get("demo.note")
        : "";
  }

  private static SizeDeskView sizeDesk(Workplace place, ShelfViewModel shelf) {
    Words words = Words.of("sizedesk", place.locale());
    Room room =
        new Room(
            () -> place.collection().animals().shelf(),
            place.tables(),
            place.taxa(),
            words,
            place.locale(),
            words.get("demo.sentence"),
            version());
    SizeDeskViewModel model = new SizeDeskViewModel(room, place.work(), place.ui());
    SizeDeskView view =
        new SizeDeskView(
            model,
            words,
            place.locale(),
            note(place),
            new FileDialogs(
                new SaveDialog(),
                new OpenDialog("Newick", "*.nwk", "*.tre", "*.tree", "*.txt"),
                new OpenDialog("JSON", "*.json")));
    view.setOnAnimal(animal -> show(animal, shelf, view));
    return view;
  }

  /** Opens an animal's card on the Shelf, from whatever screen it was chosen on. */
  static void show(AnimalId animal, ShelfViewModel shelf, Node from) {
    shelf.open(animal);
    turnTo("shelf", from);
  }

  /** Opens another screen of the window that this stands in. */
  static void turnTo(String screen, Node from) {
    if (from.getScene().getRoot() instanceof AppFrame frame) {
      frame.open(screen);
    }
  }

  /** As the jar says it; a program run from loose classes has none. */
  static String version() {
    return Optional.ofNullable(SizeDesk.class.getPackage().getImplementationVersion())
        .orElse("(unreleased)");
  }

  private static BenchView bench(Workplace place, ShelfViewModel shelf) {
    Words words = Words.of("bench", place.locale());
    Numbers numbers = new Numbers(place.locale());
    BenchPlace bench =
        new BenchPlace(
            place.work(),
            place.idle(),
            place.ui(),
            place.clock(),
            words,
            numbers,
            place.tables().protocol(),
            place.tables().outlines(),
            place.taxa(),
            place.collection().animals(),
            place.collection().trays(),
            place.collection().readings(),
            place.collection().people(),
            new LaggingDrafts(
                place.collection().drafts(),
                CompletableFuture.delayedExecutor(DRAFT_LAG_MS, TimeUnit.MILLISECONDS)),
            place.collection().caliperCards(),
            new Books(
                place.collection().numbering(),
                place.collection().keying(),
                place.collection().associations(),
                place.collection().refits(),
                place.collection().photos(),
                place.collection().keptAnswers(),
                place.collection().stops(),
                place.collection().houseRules()),
            place.memory(),
            new SlipFolder(place));
    BenchView view = new BenchView(new BenchViewModel(bench), words, numbers, System::nanoTime);
    view.fallingLine().motionProperty().bind(place.look().motionProperty());
    view.setOnAnimal(animal -> show(animal, shelf, view));
    view.setOnSave(new SaveDialog(), note(place));
    view.setWhichBone(place.tables().whichBone());
    return view;
  }
}

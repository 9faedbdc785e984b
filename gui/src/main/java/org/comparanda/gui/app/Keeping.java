package org.comparanda.gui.app;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.comparanda.capture.LaggingDrafts;
import org.comparanda.gui.capture.ReadingPlace;
import org.comparanda.gui.photos.PhotosViewModel;
import org.comparanda.gui.photos.PictureDialog;
import org.comparanda.gui.shelf.ShelfPages;
import org.comparanda.gui.shelf.ShelfView;
import org.comparanda.gui.shelf.ShelfViewModel;
import org.comparanda.gui.shelf.keeping.CardPage;
import org.comparanda.gui.shelf.keeping.CardViewModel;
import org.comparanda.gui.shelf.keeping.FindingsPage;
import org.comparanda.gui.shelf.keeping.FindingsViewModel;
import org.comparanda.gui.shelf.keeping.KeeperRoom;
import org.comparanda.gui.shelf.keeping.MoveViewModel;
import org.comparanda.gui.shelf.keeping.Signature;
import org.comparanda.gui.shelf.keeping.StockPage;
import org.comparanda.gui.shelf.keeping.StockViewModel;
import org.comparanda.gui.shelf.keeping.TaxaPage;
import org.comparanda.gui.shelf.keeping.TaxaViewModel;
import org.comparanda.gui.shelf.keeping.WantedPage;
import org.comparanda.gui.shelf.keeping.WantedViewModel;
import org.comparanda.gui.shelf.skeleton.SkeletonPage;
import org.comparanda.gui.shelf.skeleton.SkeletonRoom;
import org.comparanda.gui.shelf.skeleton.SkeletonViewModel;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.slips.Slips;

/** Wires the Shelf with the keeper's pages. */
final class Keeping {
  private Keeping() {}

  static ShelfView shelf(Workplace place, ShelfViewModel shelf, Words words, String note) {
    KeeperRoom room =
        new KeeperRoom(
            place.collection().animals(),
            place.collection().register(),
            place.collection().acceptedFindings(),
            place.collection().readings(),
            place.tables().protocol(),
            place.taxa(),
            () -> place.collection().houseRules().inForce().comparison(),
            place.clock(),
            Words.of("keeper", place.locale()),
            place.locale());
    Signature signature = new Signature();
    CardViewModel card =
        new CardViewModel(room, signature, place.work(), place.ui(), shelf::refresh);
    FindingsViewModel findings =
        new FindingsViewModel(
            room, signature, place.work(), place.beside(), place.ui(), shelf::refresh);
    StockViewModel stock = new StockViewModel(room, place.beside(), place.ui());
    SkeletonViewModel skeleton =
        new SkeletonViewModel(
            skeletonRoom(place, room), signature, place.work(), place.ui(), shelf::refresh);
    MoveViewModel moves =
        new MoveViewModel(room, signature, place.work(), place.ui(), skeleton::moved);
    MoveViewModel ofCard =
        new MoveViewModel(room, signature, place.work(), place.ui(), now -> card.changed());
    PhotosViewModel photos =
        new PhotosViewModel(
            place.collection().photos(),
            place.work(),
            place.ui(),
            Words.of("photos", place.locale()));
    place.memory().recall("person").ifPresent(signature.whoProperty()::set);
    TaxaViewModel taxa =
        new TaxaViewModel(
            room,
            place.collection().names(),
            place.tables().taxa(),
            signature,
            place.work(),
            place.ui(),
            () ->
                place
                    .work()
                    .execute(
                        () -> {
                          place.taxa().again();
                          place.ui().execute(shelf::refresh);
                        }));
    WantedViewModel wanted = new WantedViewModel(room, place.beside(), place.ui());
    ShelfView[] view = new ShelfView[1];
    ShelfPages pages =
        new ShelfPages(
            List.of("findings", "stock", "wanted", "taxa"),
            Map.of(
                "skeleton",
                    () ->
                        new SkeletonPage(
                            skeleton,
                            moves,
                            System::nanoTime,
                            () -> view[0].show(ShelfPages.ANIMALS)),
                "taxa",
                    () ->
                        new TaxaPage(
                            taxa,
                            OpenDialog.ofTables(),
                            () -> new SaveDialog().choose("names.csv")),
                "card",
                    () ->
                        new CardPage(
                            card,
                            ofCard,
                            photos,
                            new PictureDialog(() -> view[0].getScene().getWindow()),
                            () -> view[0].show(ShelfPages.ANIMALS)),
                "findings", () -> new FindingsPage(findings, id -> view[0].open(id)),
                "stock",
                    () -> new StockPage(stock, (taxon, element) -> view[0].list(taxon, element)),
                "wanted",
                    () ->
                        new WantedPage(
                            wanted, list -> print(list, place), place.look().paperProperty())),
            card::open,
            skeleton::open,
            card::openNew,
            skeleton::unfinished);
    view[0] = new ShelfView(shelf, words, note, OpenDialog.ofTables(), pages);
    return view[0];
  }

  private static SkeletonRoom skeletonRoom(Workplace place, KeeperRoom room) {
    return new SkeletonRoom(
        room,
        new ReadingPlace(
            "shelf 1",
            place.clock(),
            Words.of("bench", place.locale()),
            new Numbers(place.locale()),
            place.tables().protocol(),
            place.collection().readings(),
            new LaggingDrafts(
                place.collection().drafts(),
                CompletableFuture.delayedExecutor(Screens.DRAFT_LAG_MS, TimeUnit.MILLISECONDS)),
            place.collection().caliperCards(),
            place.memory()),
        place.collection().skeletons(),
        place.collection().houseRules(),
        place.collection().stops(),
        place.tables().outlines(),
        new SlipFolder(place)::keyCard);
  }

  /** Asks where, and writes the list as it is shown; what went wrong is said on the page. */
  private static void print(WantedViewModel wanted, Workplace place) {
    Optional<Path> file = new SaveDialog().choose("wanted.pdf");
    file.ifPresent(
        where ->
            wanted.print(
                entries -> {
                  try (OutputStream out = Files.newOutputStream(where)) {
                    return new Slips(PageFacts.of(place)).wanted(out, entries);
                  }
                }));
  }
}

package org.comparanda.gui.shelf;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import org.comparanda.reference.AnimalId;

/**
 * The keeper's pages beside the animals.
 *
 * @param tabs key of each page that has a tab, in their order
 * @param pages view of each page by its key, made when it is first shown
 * @param edit opens an animal's card to be edited, on the page {@code card}
 * @param measure opens an animal to be measured, on the page {@code skeleton}
 * @param add opens an empty card, on the page {@code card}
 * @param unfinished the animal whose measuring was left in the middle
 */
public record ShelfPages(
    List<String> tabs,
    Map<String, Supplier<Region>> pages,
    Consumer<AnimalId> edit,
    Consumer<AnimalId> measure,
    Runnable add,
    Supplier<Optional<AnimalId>> unfinished) {
  /** The page of the animals themselves. */
  public static final String ANIMALS = "animals";

  public ShelfPages {
    tabs = List.copyOf(tabs);
    pages = Map.copyOf(pages);
  }

  /** No page but the animals. */
  public static ShelfPages none() {
    return new ShelfPages(
        List.of(), Map.of(), animal -> {}, animal -> {}, () -> {}, Optional::empty);
  }
}

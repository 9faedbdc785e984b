package org.comparanda.gui.shelf.skeleton;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.comparanda.gui.capture.ReadingPlace;
import org.comparanda.gui.shelf.keeping.KeeperRoom;
import org.comparanda.gui.text.Words;
import org.comparanda.house.HouseRules;
import org.comparanda.measurement.Outline;
import org.comparanda.register.Skeletons;

/**
 * What measuring a skeleton works with.
 *
 * @param keeper the Shelf itself
 * @param reading what measuring a bone needs, with the words of the Bench
 * @param keyCard writes the page with all keys and says where it lies
 */
public record SkeletonRoom(
    KeeperRoom keeper,
    ReadingPlace reading,
    Skeletons skeletons,
    HouseRules rules,
    List<Outline> outlines,
    Supplier<Path> keyCard) {
  public SkeletonRoom {
    outlines = List.copyOf(outlines);
  }

  /** The keeper's words. */
  Words words() {
    return keeper.words();
  }
}

package org.comparanda.gui.shelf.skeleton;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.comparanda.gui.capture.ReadingPlace;
import org.comparanda.gui.shelf.keeping.KeeperRoom;
import org.comparanda.gui.text.Words;
import org.comparanda.house.HouseRules;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.Outline;
import org.comparanda.register.Skeletons;
import org.comparanda.tray.Stops;

/**
 * What measuring a skeleton works with.
 *
 * @param keeper the Shelf itself
 * @param reading what measuring a bone needs, with the words of the Bench
 * @param stops bones set aside as possibly human
 * @param keyCard writes the page with all keys and says where it lies
 */
public record SkeletonRoom(
    KeeperRoom keeper,
    ReadingPlace reading,
    Skeletons skeletons,
    HouseRules rules,
    Stops stops,
    List<Outline> outlines,
    Supplier<Path> keyCard) {
  public SkeletonRoom {
    outlines = List.copyOf(outlines);
  }

  /** Whom the house calls when a bone may be human; what to do first while it says nobody. */
  String contactCard() {
    boolean set = rules.all().stream().anyMatch(r -> r.name() == RuleName.CONTACT_CARD);
    return set ? rules.now(RuleName.CONTACT_CARD) : reading.words().get("stop.contact");
  }

  /** The keeper's words. */
  Words words() {
    return keeper.words();
  }
}

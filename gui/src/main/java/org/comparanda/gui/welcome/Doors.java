package org.comparanda.gui.welcome;

import java.nio.file.Path;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CaliperCards;
import org.comparanda.statistics.Outcome;

/** The ways into a collection; each gives the calipers of the collection that it opened. */
public interface Doors {
  /** The invented demo collection of this computer. */
  Outcome<CaliperCards> demo();

  /** An empty collection in a file that isn't there yet. */
  Outcome<CaliperCards> create(Path file);

  /** A collection that is there. */
  Outcome<CaliperCards> open(Path file);

  /** The caliper that was just learned lies in the person's hand. */
  void takeInHand(CaliperCard card);
}

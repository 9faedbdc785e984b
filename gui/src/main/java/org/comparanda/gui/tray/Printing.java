package org.comparanda.gui.tray;

import java.util.Optional;
import org.comparanda.tray.Tray;

/** Prints what belongs to a lot or tray; asks where the file goes. */
public interface Printing {
  /** What can be printed. */
  enum Slip {
    LABELS,
    CARD,
    CALLS
  }

  /** What was written, in words; empty if the person thought better of it. */
  Optional<String> print(Slip slip, Tray tray);
}

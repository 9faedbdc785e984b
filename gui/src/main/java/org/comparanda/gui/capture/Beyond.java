package org.comparanda.gui.capture;

import org.comparanda.capture.Errand;

/** What a key may ask for that is not about readings of this bone alone. */
public interface Beyond {
  /** The values changed; what follows from them is to be reckoned anew. */
  void changed();

  /** Something was recorded, or taken back; another bone may be due. */
  void recorded();

  /** Something is to be taken back: whether it was no reading and is taken back already. */
  boolean undoneElsewhere();

  void recordCall();

  void run(Errand errand);

  void listErrands();

  void answer(String text);

  void stop();
}

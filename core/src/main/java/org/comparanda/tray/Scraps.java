package org.comparanda.tray;

import java.util.List;

/** Repository of scrap; only ever added to. */
public interface Scraps {
  List<Scrap> of(TrayId tray);

  /** Appends and returns it with its id. */
  Scrap append(Scrap scrap);
}

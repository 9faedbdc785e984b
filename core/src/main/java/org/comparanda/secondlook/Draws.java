package org.comparanda.secondlook;

import java.util.List;

/** Repository of draws; only ever added to. */
public interface Draws {
  /** All of them, by position. */
  List<Draw> all();

  /** Appends all of them or none; positions go on where the last one ended. */
  void append(List<Draw> draws);
}

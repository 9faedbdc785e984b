package org.comparanda.gui.sizedesk;

import java.util.List;

/** The numbers of one line, in the order of {@link LineNumbers#HEADINGS}. */
public record NumberRow(String line, List<String> values) {
  public NumberRow {
    values = List.copyOf(values);
  }
}

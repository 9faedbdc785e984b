package org.comparanda.gui.shelf;

import java.util.List;
import org.comparanda.exchange.table.TablePreview;

/**
 * What is asked before a table with words of its own is read.
 *
 * @param preview its first rows, with a guess for each column
 * @param saved names of mappings that may fit
 */
public record MappingQuestion(TablePreview preview, List<String> saved) {
  public MappingQuestion {
    saved = List.copyOf(saved);
  }
}

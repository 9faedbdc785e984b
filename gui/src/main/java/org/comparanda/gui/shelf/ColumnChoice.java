package org.comparanda.gui.shelf;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.measurement.LengthUnit;

/**
 * What a person says of one column.
 *
 * @param header as it stands in the table
 * @param role what it is; empty leaves it aside
 * @param unit the unit of its lengths, where it is said
 */
public record ColumnChoice(String header, Optional<String> role, Optional<LengthUnit> unit) {
  /** How a table is read, with what is said of its columns. */
  static TableOptions said(
      TableOptions options, List<ColumnChoice> choices, TableOptions.Unknown unknown) {
    Map<String, String> as = new LinkedHashMap<>();
    Set<String> aside = new LinkedHashSet<>();
    TableOptions said = options;
    for (ColumnChoice choice : choices) {
      choice
          .role()
          .ifPresentOrElse(role -> as.put(role, choice.header()), () -> aside.add(choice.header()));
      if (choice.role().isPresent() && choice.unit().isPresent()) {
        said = said.withUnit(choice.role().get(), choice.unit().get());
      }
    }
    return said.withAs(as).withAside(aside).withUnknown(unknown);
  }
}

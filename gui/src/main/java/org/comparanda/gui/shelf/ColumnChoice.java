package org.comparanda.gui.shelf;

import java.util.Optional;
import org.comparanda.measurement.LengthUnit;

/**
 * What a person says of one column.
 *
 * @param header as it stands in the table
 * @param role what it is; empty leaves it aside
 * @param unit the unit of its lengths, where it is said
 */
public record ColumnChoice(String header, Optional<String> role, Optional<LengthUnit> unit) {}

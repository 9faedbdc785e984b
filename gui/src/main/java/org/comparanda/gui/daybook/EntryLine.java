package org.comparanda.gui.daybook;

import org.comparanda.daybook.DayBookEntry;

/**
 * An entry in the table.
 *
 * @param who the person; says so where the name was blanked, empty where nobody is known
 * @param what the kind in words and the key of the row
 * @param said what was done, as written
 */
public record EntryLine(DayBookEntry entry, String when, String who, String what, String said) {}

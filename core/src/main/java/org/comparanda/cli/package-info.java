/**
 * The command line: one class a command; parses, calls, prints. Exit codes: 0 fine; 1 done, with
 * problems found; 2 could not be done.
 */
@NullMarked
package org.comparanda.cli;

import org.jspecify.annotations.NullMarked;

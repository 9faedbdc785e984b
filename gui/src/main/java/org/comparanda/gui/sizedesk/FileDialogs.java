package org.comparanda.gui.sizedesk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import org.comparanda.gui.control.FilePlace;

/**
 * How a person is asked for files. A dialog thought better of gives nothing.
 *
 * @param save where a file goes
 * @param tree which tree in Newick notation is read
 * @param equations which file of equations is read
 */
public record FileDialogs(
    FilePlace save, Supplier<Optional<Path>> tree, Supplier<Optional<Path>> equations) {}

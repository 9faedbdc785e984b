package org.comparanda.cli;

import picocli.CommandLine.Command;

/** The shelf: groups its commands. */
@Command(
    name = "shelf",
    description = "The comparative animals of a collection.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class ShelfCommand {}

package org.comparanda.cli;

import picocli.CommandLine.Command;

/** The names of taxa: groups its commands. */
@Command(
    name = "taxa",
    description = "The names of taxa that a collection knows. Nothing is looked up over the net.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class TaxaCommand {}

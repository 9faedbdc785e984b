package org.comparanda.cli;

import picocli.CommandLine.Command;

/** Groups: People of the collection: list, name, blank. */
@Command(
    name = "people",
    description = "People of the collection: list, name, blank.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class PeopleCommand {}

package org.comparanda.cli;

import picocli.CommandLine.Command;

/** Groups: Rules of the house: list, set. */
@Command(
    name = "rules",
    description = "Rules of the house: list, set.",
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class RulesCommand {}
